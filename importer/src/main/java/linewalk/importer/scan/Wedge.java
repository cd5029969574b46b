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
        least = settled(best, least);
        if (least >= WRONG * Hull.area(best) + EDGE_PX * Hull.length(best)) {
            return null;
        }
        turn(best, least);
        return best;
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
    private int settled(List<double[]> t, int wrong) {
        int least = wrong;
        for (int last = least + 1; least < last; ) {
            last = least;
            least = moved(t, steps(), least);
        }
        return least;
    }

    /** Turns sides about their middles while that agrees better. */
    private void turn(List<double[]> t, int wrong) {
        int least = wrong;
        for (int last = least + 1; least < last; ) {
            last = least;
            least = settled(t, moved(t, turns(t), least));
        }
    }

    /** Takes the moves after which triangle and shape disagree less. */
    private int moved(List<double[]> t, List<double[][]> moves, int wrong) {
        int least = wrong;
        for (double[][] move : moves) {
            shift(t, move, 1);
            int now = wrong(t, least);
            if (now < least) {
                least = now;
            } else {
                shift(t, move, -1);
            }
        }
        return least;
    }

    private static void shift(List<double[]> t, double[][] move, int sign) {
        for (int i = 0; i < 3; i++) {
            t.get(i)[0] += sign * move[i][0];
            t.get(i)[1] += sign * move[i][1];
        }
    }

    /** By how much each corner moves: one alone. */
    private static List<double[][]> steps() {
        List<double[][]> moves = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            for (double[] step : new double[][] {{STEP_PX, 0}, {-STEP_PX, 0}, {0, STEP_PX}, {0, -STEP_PX}}) {
                double[][] one = new double[3][2];
                one[i] = step;
                moves.add(one);
            }
        }
        return moves;
    }

    /** Two ends of a side along the other two, one forth and one back. */
    private static List<double[][]> turns(List<double[]> t) {
        List<double[][]> moves = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            double[] tip = t.get(i);
            for (int sign = -1; sign <= 1; sign += 2) {
                double[][] turn = new double[3][2];
                turn[(i + 1) % 3] = towards(t.get((i + 1) % 3), tip, sign * STEP_PX);
                turn[(i + 2) % 3] = towards(t.get((i + 2) % 3), tip, -sign * STEP_PX);
                moves.add(turn);
            }
        }
        return moves;
    }

    private static double[] towards(double[] from, double[] to, double px) {
        double d = Math.max(1, Math.hypot(to[0] - from[0], to[1] - from[1]));
        return new double[] {px * (to[0] - from[0]) / d, px * (to[1] - from[1]) / d};
    }

    /** Pixels on which triangle and shape disagree; {@code most} or more where there are that many. */
    private int wrong(List<double[]> t, int most) {
        int wrong = isInside(t) ? 0 : most;
        for (int y = 0; y < opened.height && wrong < most; y++) {
            double[] row = row(t, opened.y0 + y + 0.5);
            for (int x = 0; x < opened.width; x++) {
                double px = opened.x0 + x + 0.5;
                boolean in = px > row[0] && px < row[1];
                boolean off = in ? !ink.get(opened.x0 + x, opened.y0 + y) : region[y * opened.width + x];
                wrong += off ? 1 : 0;
            }
        }
        return wrong;
    }

    private boolean isInside(List<double[]> t) {
        for (double[] p : t) {
            boolean inside = p[0] > opened.x0
                    && p[1] > opened.y0
                    && p[0] < opened.x0 + opened.width
                    && p[1] < opened.y0 + opened.height;
            if (!inside) {
                return false;
            }
        }
        return true;
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
