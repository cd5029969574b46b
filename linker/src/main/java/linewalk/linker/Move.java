package linewalk.linker;

import linewalk.drawing.Reference;

/**
 * From one end of a line on to another line: through a component, or across to a mate.
 *
 * @param leave the end where the line is left
 * @param enter the end where the next line is entered
 * @param pass null across a pair of mates
 * @param from null through a component
 * @param to null through a component
 * @param cost of the way in between and of the line entered
 */
record Move(Circuit.Spot leave, Circuit.Spot enter, Pass pass, Reference from, Reference to, long cost) {

    String name() {
        return pass == null ? from.id() : pass.component().tag();
    }
}
