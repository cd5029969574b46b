package linewalk.importer.valve;

import linewalk.drawing.Box;

/**
 * Touching squares in their own frame, level and equally wide.
 *
 * @param x0Pt left edge
 * @param pitchPt width of one square
 * @param y0Pt upper long side
 * @param y1Pt lower long side
 */
record Row(double x0Pt, double pitchPt, int squares, double y0Pt, double y1Pt) {

    double heightPt() {
        return y1Pt - y0Pt;
    }

    double x1Pt() {
        return x0Pt + squares * pitchPt;
    }

    Box box() {
        return new Box(x0Pt, y0Pt, x1Pt(), y1Pt);
    }

    Box square(int i) {
        return new Box(x0Pt + i * pitchPt, y0Pt, x0Pt + (i + 1) * pitchPt, y1Pt);
    }

    /** The squares from one to before another. */
    Row part(int from, int to) {
        return new Row(x0Pt + from * pitchPt, pitchPt, to - from, y0Pt, y1Pt);
    }
}
