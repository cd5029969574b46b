package linewalk.samples.machine;

/** The way a line leaves the drawing at a reference. */
public enum Heading {
    EAST(1, 0),
    WEST(-1, 0),
    NORTH(0, -1),
    SOUTH(0, 1);

    public final int dx;
    public final int dy;

    Heading(int dx, int dy) {
        this.dx = dx;
        this.dy = dy;
    }

    public boolean upright() {
        return dx == 0;
    }

    static Heading of(double dx, double dy) {
        if (Math.abs(dx) > Math.abs(dy)) {
            return dx > 0 ? EAST : WEST;
        }
        return dy > 0 ? SOUTH : NORTH;
    }
}
