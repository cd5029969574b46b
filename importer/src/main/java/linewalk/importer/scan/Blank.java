package linewalk.importer.scan;

/** Paper and ink of the upright page, in pixels. */
record Blank(Gauge ink, Upright upright) {

    /** Paper along a straight way. */
    double px(Straight way, double from, double to) {
        int n = (int) Math.ceil(Math.abs(to - from));
        int paper = 0;
        for (int i = 0; i < n; i++) {
            double t = from + (to - from) * (i + 0.5) / n;
            paper += ink.ink(upright, way.x() + t * way.dx(), way.y() + t * way.dy()) ? 0 : 1;
        }
        return paper;
    }

    /** Ink at a place or beside it. */
    boolean inked(double[] at) {
        for (int i = -1; i <= 1; i++) {
            for (int k = -1; k <= 1; k++) {
                if (ink.ink(upright, at[0] + i, at[1] + k)) {
                    return true;
                }
            }
        }
        return false;
    }
}
