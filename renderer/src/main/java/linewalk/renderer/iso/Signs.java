package linewalk.renderer.iso;

/** Signs that several symbols share. All lengths in modules. */
final class Signs {

    /** Of a check valve's ball. */
    static final double BALL = 1;
    /** From the ball's centre to the tip of its seat: the seat's sides stand at a right angle and touch the ball. */
    static final double TIP = BALL * Math.sqrt(2);

    private Signs() {}

    /** A ball on its seat; oil runs free upwards. */
    static void check(Pen p, double x, double y) {
        double arm = 1.65;
        p.circle(x, y, BALL);
        p.lines(x - arm, y + TIP - arm, x, y + TIP, x + arm, y + TIP - arm);
    }

    /** The ball with a question mark: which way is free is not told. */
    static void ball(Pen p, double x, double y) {
        p.circle(x, y, BALL);
        p.text("?", x, y);
    }

    /** Level zigzag. */
    static void spring(Pen p, double x0, double x1, double y) {
        zigzag(p, x0, x1, y, false);
    }

    static void uprightSpring(Pen p, double y0, double y1, double x) {
        zigzag(p, y0, y1, x, true);
    }

    private static void zigzag(Pen p, double from, double to, double across, boolean upright) {
        int teeth = upright ? 3 : 4;
        double step = (to - from) / teeth;
        double[] xy = new double[2 * (teeth + 2)];
        for (int i = 0; i < teeth + 2; i++) {
            double along = i == 0 ? from : i == teeth + 1 ? to : from + step * (i - 0.5);
            double off = i == 0 || i == teeth + 1 ? 0 : i % 2 == 1 ? -0.75 : 0.75;
            xy[2 * i] = upright ? across + off : along;
            xy[2 * i + 1] = upright ? along : across + off;
        }
        p.lines(xy);
    }

    /** Level, with the arrow of what can be set. */
    static void adjustableSpring(Pen p, double x, double y) {
        spring(p, x, x + 2.25, y);
        p.arrow(x + 0.2, y + 1.25, x + 2.25, y - 1.6);
    }

    /** A check beside an upright axis, joined to it below and above; free upwards. */
    static void bypass(Pen p, Way free, double axisX, double x, double height) {
        double y = height / 2 - 0.2;
        p.dot(axisX, 0.6);
        p.dot(axisX, height - 0.6);
        p.lines(axisX, 0.6, x, 0.6, x, y - BALL);
        if (free.told()) {
            check(p, x, y);
        } else {
            ball(p, x, y);
        }
        p.lines(x, y + (free.told() ? TIP : BALL), x, height - 0.6, axisX, height - 0.6);
    }

    /** Two arcs that narrow an upright line between them. */
    static void throttle(Pen p, double x, double y) {
        double gap = 0.45;
        double radius = 1.5;
        p.arc(x - gap - radius, y, radius, -50, 100);
        p.arc(x + gap + radius, y, radius, 130, 100);
    }

    /** Small, for a passage inside a square. */
    static void smallThrottle(Pen p, double x, double y) {
        p.arc(x - 1.3, y, 0.9, -55, 110);
        p.arc(x + 1.3, y, 0.9, 125, 110);
    }

    /** A line that ends in a wall. */
    static void shut(Pen p, double x, double y, boolean down) {
        double end = y + (down ? 1.3 : -1.3);
        p.lines(x, y, x, end);
        p.lines(x - 0.65, end, x + 0.65, end);
    }
}
