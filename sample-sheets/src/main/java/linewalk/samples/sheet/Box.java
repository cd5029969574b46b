package linewalk.samples.sheet;

import linewalk.samples.symbol.Spot;

/** An upright rectangle in points of the page as displayed, origin top left. */
public record Box(double x0Pt, double y0Pt, double x1Pt, double y1Pt) {
    public boolean overlaps(Box other) {
        return x0Pt < other.x1Pt && other.x0Pt < x1Pt && y0Pt < other.y1Pt && other.y0Pt < y1Pt;
    }

    public Spot centre() {
        return new Spot((x0Pt + x1Pt) / 2, (y0Pt + y1Pt) / 2);
    }

    Box join(Box other) {
        return new Box(
                Math.min(x0Pt, other.x0Pt),
                Math.min(y0Pt, other.y0Pt),
                Math.max(x1Pt, other.x1Pt),
                Math.max(y1Pt, other.y1Pt));
    }

    public Box shrunk(double byPt) {
        return new Box(x0Pt + byPt, y0Pt + byPt, x1Pt - byPt, y1Pt - byPt);
    }
}
