package linewalk.importer.page;

import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Point;

/**
 * A painted outline.
 *
 * @param light painted in white or nearly so: a mask over what lies beneath, no mark
 */
public record Fill(List<Point> outline, boolean curved, boolean light) {

    /** How wide a dot is at most, in tolerances. */
    private static final double DOT_TOL = 12;

    private static final double END_DOT_TOL = 20;

    public Fill {
        outline = List.copyOf(outline);
    }

    public Box box() {
        return Box.around(outline);
    }

    /** A dark disc as small as a dot where lines join. */
    public boolean isDot(double tolPt) {
        return isDisc(DOT_TOL * tolPt);
    }

    /** As large as a dot at a hose's end at most. */
    boolean isEndDot(double tolPt) {
        return isDisc(END_DOT_TOL * tolPt);
    }

    private boolean isDisc(double mostPt) {
        Box b = box();
        boolean round = curved || outline.size() > 6;
        boolean small = b.widthPt() < mostPt && b.heightPt() < mostPt;
        return !light && round && small && Math.abs(b.widthPt() - b.heightPt()) < 0.2 * b.widthPt();
    }
}
