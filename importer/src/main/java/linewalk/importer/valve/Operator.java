package linewalk.importer.valve;

import linewalk.drawing.Box;
import linewalk.drawing.Position;

/**
 * What stands at one end of a row.
 *
 * @param how null where nothing but a spring is there, or where it is a box of unknown kind
 * @param present something other than a spring or notches is there
 * @param proportional an arrow runs through the solenoid
 * @param box around it, in the row's frame; null where nothing is there
 */
record Operator(Position.How how, boolean present, boolean spring, boolean detent, boolean proportional, Box box) {

    /** What to call it where nothing is printed beside it. */
    String word() {
        return how == null ? "operator" : how.name().toLowerCase(java.util.Locale.ROOT);
    }
}
