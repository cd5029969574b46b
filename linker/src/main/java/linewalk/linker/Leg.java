package linewalk.linker;

import linewalk.drawing.Component;
import linewalk.drawing.End;
import linewalk.drawing.Line;
import linewalk.drawing.Passage;
import linewalk.drawing.Port;
import linewalk.drawing.Position;
import linewalk.drawing.Reference;

/** One piece of a trace. Legs follow one another: each starts where the one before stopped. */
public sealed interface Leg {

    /**
     * Through a component, or its start or end.
     *
     * @param in null where the trace starts
     * @param out null where the trace ends
     * @param passage null at start and end, through an actuator, and where a part with two ports passes untold
     * @param shift the position that the valve must be moved to, or null where it need not
     */
    record Through(Component component, Port in, Port out, Passage passage, Position shift) implements Leg {}

    /** Along a line from one of its ends to another. */
    record Along(Line line, End from, End to) implements Leg {}

    /** From a reference to its mate on another sheet (or another place of the same one). */
    record Across(Reference from, Reference to) implements Leg {}
}
