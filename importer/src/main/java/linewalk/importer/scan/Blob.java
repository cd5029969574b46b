package linewalk.importer.scan;

/** Ink that hangs together, in pixels; x1 and y1 are just outside. */
record Blob(int x0, int y0, int x1, int y1, int ink, int[] runs) {

    int width() {
        return x1 - x0;
    }

    int height() {
        return y1 - y0;
    }

    int longer() {
        return Math.max(width(), height());
    }

    int shorter() {
        return Math.min(width(), height());
    }

    double middleX() {
        return (x0 + x1) / 2.0;
    }

    double middleY() {
        return (y0 + y1) / 2.0;
    }

    /** Share of the box that is ink. */
    double solid() {
        return (double) ink / (width() * (double) height());
    }
}
