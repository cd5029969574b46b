package linewalk.linker;

import linewalk.drawing.Component;
import linewalk.drawing.Passage;
import linewalk.drawing.Port;
import linewalk.drawing.Position;

/**
 * One way through a component.
 *
 * @param position in which it is open, or null where the component has none
 * @param shift the position where it is not the one the machine is in, else null
 * @param cost its resistance, see {@link Cost}
 * @param unread it is only guessed that oil passes
 */
record Pass(
        Component component,
        Port in,
        Port out,
        Passage passage,
        Position position,
        Position shift,
        long cost,
        boolean unread) {}
