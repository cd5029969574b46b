package linewalk.renderer.card;

import linewalk.drawing.Component;

/** How a print calls parts; its job card calls them the same. */
public interface Naming {

    /** "check valve 0V1". */
    String called(Component c);

    String description(Component c);

    /** Empty where neither drawing nor parts list tells one. */
    String setting(Component c);

    /** A dash where the set has given no item number. */
    String item(Component c);
}
