package linewalk.renderer.iso;

/** What cleans, cools or warms the oil: a diamond on the line. */
final class Conditioners {

    private Conditioners() {}

    static Plan filter(Drafting d) {
        return InLine.plain(2.25).plan(d, new Body(4.5, 5, p -> {
            diamond(p, 2.25);
            p.dashes(0.25, 2.5, 4.25, 2.5);
        }));
    }

    /** Coarse: a mesh of two dashed lines. */
    static Plan strainer(Drafting d) {
        return InLine.plain(2.25).plan(d, new Body(4.5, 5, p -> {
            diamond(p, 2.25);
            p.dashes(1.25, 1.5, 3.25, 3.5);
            p.dashes(3.25, 1.5, 1.25, 3.5);
        }));
    }

    /** Arrows show the warmth that leaves. */
    static Plan cooler(Drafting d) {
        return InLine.plain(3.5).plan(d, new Body(7, 5, p -> {
            diamond(p, 3.5);
            p.arrow(2.9, 2.5, 0.1, 2.5);
            p.arrow(4.1, 2.5, 6.9, 2.5);
        }));
    }

    static Plan heater(Drafting d) {
        return InLine.plain(3.5).plan(d, new Body(7, 5, p -> {
            diamond(p, 3.5);
            p.arrow(0.1, 2.5, 2.9, 2.5);
            p.arrow(6.9, 2.5, 4.1, 2.5);
        }));
    }

    private static void diamond(Pen p, double x) {
        p.outline(x, 0.5, x + 2, 2.5, x, 4.5, x - 2, 2.5);
        p.lines(x, 0, x, 0.5);
        p.lines(x, 4.5, x, 5);
    }
}
