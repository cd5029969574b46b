package linewalk.renderer.card;

import linewalk.drawing.Component;
import linewalk.drawing.Line;

/** How a print calls parts; its job card calls them the same. */
public interface Naming {

    /** "check valve 0V1". */
    String called(Component c);

    String description(Component c);

    /** Empty where neither drawing nor parts list tells one. */
    String setting(Component c);

    /** A dash where the set has given no item number. */
    String item(Component c);

    /** A line's number; null where it has none of its own. */
    String number(Line l);
}
