package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.List;

/**
 * The triangle that agrees best with a filled shape: what it holds of paper, and what of the shape it leaves out, is least.
 * Where a line meets the shape its hull has a bump, so its longest sides alone may lie askew.
 */
final class Wedge {

    /** More sides than this make no triangle. */
    private static final int MOST_SIDES = 12;

    /** Paper inside and ink outside, as a share of the area and in pixels along the sides. */
    private static final double WRONG = 0.14;

    private static final double EDGE_PX = 0.3;

    private static final double STEP_PX = 0.5;

    private final Bits ink;
    private final Opened opened;
    private final boolean[] region;

    Wedge(Bits ink, Opened opened, boolean[] region) {
        this.ink = ink;
        this.opened = opened;
        this.region = region;
    }

    /**
     * Its corners in pixels of the page; null where no triangle agrees.
     *
     * @param ring the shape's hull, with few corners
     */
    List<double[]> fitted(List<double[]> ring) {
        List<Straight> sides = ring.size() > MOST_SIDES ? List.of() : sides(ring);
        List<double[]> best = null;
        int least = Integer.MAX_VALUE;
        for (int i = 0; i < sides.size(); i++) {
            for (int j = i + 1; j < sides.size(); j++) {
                for (int k = j + 1; k < sides.size(); k++) {
                    List<double[]> t = between(sides.get(i), sides.get(j), sides.get(k));
                    boolean small = t != null && Hull.area(t) < 2 * Hull.area(ring);
                    int wrong = small ? wrong(t, least) : Integer.MAX_VALUE;
                    if (wrong < least) {
                        least = wrong;
                        best = t;
                    }
                }
            }
        }
        if (best == null) {
            return null;
        }
        settle(best, least);
        return wrong(best, Integer.MAX_VALUE) < WRONG * Hull.area(best) + EDGE_PX * Hull.length(best) ? best : null;
    }

    /** Those of the ring, and those that pass over one corner: a bump. */
    private static List<Straight> sides(List<double[]> ring) {
        List<Straight> out = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            for (int over = 1; over <= 2; over++) {
                double[] a = ring.get(i);
                double[] b = ring.get((i + over) % ring.size());
                double d = Math.hypot(b[0] - a[0], b[1] - a[1]);
                out.add(new Straight(a[0], a[1], (b[0] - a[0]) / d, (b[1] - a[1]) / d));
            }
        }
        return out;
    }

    private static List<double[]> between(Straight a, Straight b, Straight c) {
        double[] ab = a.crossing(b);
        double[] bc = b.crossing(c);
        double[] ca = c.crossing(a);
        return ab == null || bc == null || ca == null ? null : new ArrayList<>(List.of(ab, bc, ca));
    }

    /** Moves one corner at a time while that agrees better. */
    private void settle(List<double[]> t, int wrong) {
        int least = wrong;
        for (boolean better = true; better; ) {
            better = false;
            for (double[] corner : t) {
                for (double[] step : new double[][] {{STEP_PX, 0}, {-STEP_PX, 0}, {0, STEP_PX}, {0, -STEP_PX}}) {
                    corner[0] += step[0];
                    corner[1] += step[1];
                    int now = wrong(t, least);
                    if (now < least) {
                        least = now;
                        better = true;
                    } else {
                        corner[0] -= step[0];
                        corner[1] -= step[1];
                    }
                }
            }
        }
    }

    /** Pixels on which triangle and shape disagree; {@code most} or more where there are that many. */
    private int wrong(List<double[]> t, int most) {
        int wrong = 0;
        for (int y = 0; y < opened.height && wrong < most; y++) {
            double[] row = row(t, opened.y0 + y + 0.5);
            for (int x = 0; x < opened.width; x++) {
                double px = opened.x0 + x + 0.5;
                boolean in = px > row[0] && px < row[1];
                boolean off = in ? !ink.get(opened.x0 + x, opened.y0 + y) : region[y * opened.width + x];
                wrong += off ? 1 : 0;
            }
        }
        double[] box = {opened.x0, opened.y0, opened.x0 + opened.width, opened.y0 + opened.height};
        boolean inside = t.stream().allMatch(p -> p[0] > box[0] && p[1] > box[1] && p[0] < box[2] && p[1] < box[3]);
        return inside ? wrong : most;
    }

    /** Where a level line enters the triangle and leaves it. */
    private static double[] row(List<double[]> t, double y) {
        double from = Double.MAX_VALUE;
        double to = -Double.MAX_VALUE;
        for (int i = 0; i < 3; i++) {
            double[] a = t.get(i);
            double[] b = t.get((i + 1) % 3);
            if ((a[1] > y) != (b[1] > y)) {
                double x = a[0] + (y - a[1]) * (b[0] - a[0]) / (b[1] - a[1]);
                from = Math.min(from, x);
                to = Math.max(to, x);
            }
        }
        return new double[] {from, to};
    }
}
