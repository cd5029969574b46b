package linewalk.importer.page;

import java.util.HashMap;
import java.util.Map;
import linewalk.drawing.Point;

/** Points that all but coincide are one corner. */
public final class Corners {

    private final Map<Long, Point> byCell = new HashMap<>();
    private final double withinPt;

    public Corners(double withinPt) {
        this.withinPt = withinPt;
    }

    /** The corner that stands for p: the first point seen within reach. */
    public Point at(Point p) {
        long gx = (long) Math.floor(p.xPt() / withinPt);
        long gy = (long) Math.floor(p.yPt() / withinPt);
        for (long dx = -1; dx <= 1; dx++) {
            for (long dy = -1; dy <= 1; dy++) {
                Point c = byCell.get(cell(gx + dx, gy + dy));
                if (c != null && c.distancePt(p) < withinPt) {
                    return c;
                }
            }
        }
        byCell.put(cell(gx, gy), p);
        return p;
    }

    private static long cell(long gx, long gy) {
        return gx * 1_000_003 + gy;
    }
}
