package linewalk.renderer.iso;

/**
 * Where the line of a port meets a body.
 *
 * @param at along the side, in modules from the body's top left corner
 * @param duty pilot and drain lines are dashed
 * @param reach how far its line goes on inside the body, in modules: a dashed line is drawn in one
 */
record Dock(PortUse use, Side side, double at, Duty duty, double reach) {

    Dock(PortUse use, Side side, double at) {
        this(use, side, at, Duty.of(use), 0);
    }

    static Dock top(PortUse use, double at) {
        return new Dock(use, Side.TOP, at, Duty.WORKING, 0);
    }

    static Dock bottom(PortUse use, double at) {
        return new Dock(use, Side.BOTTOM, at, Duty.WORKING, 0);
    }

    Dock reaching(double modules) {
        return new Dock(use, side, at, duty, modules);
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
