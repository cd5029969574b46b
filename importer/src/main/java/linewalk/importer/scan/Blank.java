package linewalk.importer.scan;

/** Paper along a straight way, in pixels. */
record Blank(Gauge ink, Upright upright) {

    double px(Straight way, double from, double to) {
        int n = (int) Math.ceil(Math.abs(to - from));
        int paper = 0;
        for (int i = 0; i < n; i++) {
            double t = from + (to - from) * (i + 0.5) / n;
            paper += ink.ink(upright, way.x() + t * way.dx(), way.y() + t * way.dy()) ? 0 : 1;
        }
        return paper;
    }
}
