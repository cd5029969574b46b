package linewalk.importer.scan;

/** Measures how thick ink is, in pixels of the scan. */
final class Gauge {

    private static final int FAR = 60;
    private static final double STEP = 0.25;

    private final Bits ink;

    Gauge(Bits ink) {
        this.ink = ink;
    }

    /** The shortest way through the ink at a pixel, along rows, columns and diagonals. */
    double thickness(int x, int y) {
        double least = Math.min(through(x, y, 1, 0), through(x, y, 0, 1));
        return Math.min(least, Math.min(through(x, y, 1, 1), through(x, y, 1, -1)) * Math.sqrt(2));
    }

    /** Whether there is ink at a place of the upright page. */
    boolean ink(Upright upright, double x, double y) {
        return ink.get((int) Math.floor(upright.backX(x, y)), (int) Math.floor(upright.backY(x, y)));
    }

    /** As large as the scan, without ink. */
    Bits blank() {
        return new Bits(ink.width, ink.height);
    }

    /** Whether a pixel of the scan has ink. */
    boolean inked(int x, int y) {
        return ink.get(x, y);
    }

    private int through(int x, int y, int dx, int dy) {
        if (!ink.get(x, y)) {
            return 0;
        }
        int n = 1;
        for (int i = 1; i < FAR && ink.get(x + i * dx, y + i * dy); i++) {
            n++;
        }
        for (int i = 1; i < FAR && ink.get(x - i * dx, y - i * dy); i++) {
            n++;
        }
        return n;
    }

    /** From a place (pixel middles at .5) in a direction to where the ink ends; {@code most} if it goes on further. */
    double reach(double x, double y, double dx, double dy, double most) {
        double d = 0;
        while (d < most && ink.get((int) Math.floor(x + d * dx), (int) Math.floor(y + d * dy))) {
            d += STEP;
        }
        return d;
    }

    /** Width across a direction. */
    double across(double x, double y, double dx, double dy) {
        return reach(x, y, -dy, dx, FAR) + reach(x, y, dy, -dx, FAR) - STEP;
    }
}
