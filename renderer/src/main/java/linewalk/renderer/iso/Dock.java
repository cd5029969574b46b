package linewalk.renderer.iso;

/**
 * Where the line of a port meets a body.
 *
 * @param at along the side, in modules from the body's top left corner
 * @param dashed drawn as a pilot or drain line
 * @param reach how far its line goes on inside the body, in modules: a dashed line is drawn in one
 */
record Dock(PortUse use, Side side, double at, boolean dashed, double reach) {

    Dock(PortUse use, Side side, double at, boolean dashed) {
        this(use, side, at, dashed, 0);
    }

    static Dock top(PortUse use, double at) {
        return new Dock(use, Side.TOP, at, false);
    }

    static Dock bottom(PortUse use, double at) {
        return new Dock(use, Side.BOTTOM, at, false);
    }

    Dock reaching(double modules) {
        return new Dock(use, side, at, dashed, modules);
    }

    boolean level() {
        return side == Side.LEFT || side == Side.RIGHT;
    }

    /** Width of the port's letter in modules; none is zero. */
    double letterWidth() {
        return letterWidth(use);
    }

    static double letterWidth(PortUse use) {
        return use.name() == null || use.name().isBlank()
                ? 0
                : Pen.widthOf(use.name().strip());
    }
}
