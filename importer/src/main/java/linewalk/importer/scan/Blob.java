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

    /** A bar or a bow from one corner of its box to another: hardly any row or column is cut twice or far along. */
    boolean oneStroke() {
        int[] down = new int[width()];
        int[] cuts = new int[width()];
        int[] last = new int[width()];
        int longRows = 0;
        int twice = 0;
        for (int i = 0; i < runs.length; i += 3) {
            longRows += runs[i + 2] - runs[i + 1] > 0.75 * width() ? 1 : 0;
            twice += i > 0 && runs[i] == runs[i - 3] ? 1 : 0;
            for (int x = runs[i + 1] - x0; x < runs[i + 2] - x0; x++) {
                cuts[x] += last[x] == runs[i] ? 0 : 1;
                last[x] = runs[i] + 1;
                down[x]++;
            }
        }
        long longColumns =
                java.util.Arrays.stream(down).filter(d -> d > 0.75 * height()).count();
        long cutTwice = java.util.Arrays.stream(cuts).filter(c -> c > 1).count();
        return twice <= 0.1 * height() && cutTwice <= 0.1 * width() && (longRows == 0 || longColumns == 0);
    }
}
