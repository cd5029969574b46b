package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.List;

/** Where two stretches end at one another, thinning rounds the corner off: both are led on to where they cross. */
final class Corners {

    /** How far apart the ends may be, and how far they are led on, in widths of the pen. */
    private static final double APART = 1.5;

    private static final double ON = 2;

    /** Sine of the least angle between them. */
    private static final double TURN = 0.25;

    private static final double ONE_PX = 1;

    private final List<Outlines.Ring> rings;
    private final Gauge gauge;
    private final Upright upright;

    Corners(List<Outlines.Ring> rings, Gauge gauge, Upright upright) {
        this.rings = rings;
        this.gauge = gauge;
        this.upright = upright;
    }

    List<Stretch> sharp(List<Stretch> stretches) {
        List<Stretch> out = new ArrayList<>(stretches);
        for (int i = 0; i < out.size(); i++) {
            for (boolean first : new boolean[] {true, false}) {
                Stretch s = first ? out.get(i).turned() : out.get(i);
                List<Integer> here = endingAt(out, i, s);
                if (here.size() == 1 && !atRing(s)) {
                    meet(out, i, s, here.get(0));
                } else if (here.size() > 1) {
                    joined(s, here.stream().map(j -> nearer(out.get(j), s)).toList(), out, i);
                }
            }
        }
        return out;
    }

    /** It ends at a closed shape. */
    private boolean atRing(Stretch s) {
        double apart = APART * s.widthPx();
        for (Outlines.Ring r : rings) {
            for (Stretch side : r.sides()) {
                double along = side.along(s.x1(), s.y1());
                if (side.aside(s.x1(), s.y1()) < apart && along > -apart && along < side.length() + apart) {
                    return true;
                }
            }
        }
        return false;
    }

    private void meet(List<Stretch> out, int i, Stretch s, int j) {
        Stretch o = nearer(out.get(j), s);
        double[] x = s.crossing(o);
        double most = led(s, o) + 2;
        if (x != null && sine(s, o) > TURN && beyond(s, x, most) && beyond(o, x, most) && inked(s, o)) {
            out.set(i, endingAt(x, s, out.get(i)));
            out.set(j, endingAt(x, o, out.get(j)));
        }
    }

    /** No paper lies between their ends: a cap and the seat under it come close, but never meet. */
    private boolean inked(Stretch s, Stretch o) {
        return gauge.ink(upright, (s.x1() + o.x1()) / 2, (s.y1() + o.y1()) / 2);
    }

    /** Two lines that come together at a sharp angle are one to the thinning from where their inks touch. */
    private static double led(Stretch s, Stretch o) {
        double width = Math.max(s.widthPx(), o.widthPx());
        double sharp = Math.sqrt((1 - cosine(s, o)) / 2);
        return Math.max(ON * width, (width + ONE_PX) / (2 * sharp));
    }

    /** Where others meet in one place that lies on this one too, it ends there. */
    private static void joined(Stretch s, List<Stretch> others, List<Stretch> out, int i) {
        Stretch first = others.get(0);
        double[] x = {first.x1(), first.y1()};
        boolean one = others.stream().allMatch(o -> Math.hypot(o.x1() - x[0], o.y1() - x[1]) < ONE_PX);
        if (one && s.aside(x[0], x[1]) < ONE_PX && beyond(s, x, ON * s.widthPx())) {
            out.set(i, endingAt(x, s, out.get(i)));
        }
    }

    /** The same way round as it was drawn. */
    private static Stretch endingAt(double[] x, Stretch s, Stretch drawn) {
        Stretch longer = new Stretch(s.x0(), s.y0(), x[0], x[1], s.widthPx());
        return s.equals(drawn) ? longer : longer.turned();
    }

    /** The others that end where this one ends; none where one runs on through there. */
    private static List<Integer> endingAt(List<Stretch> all, int self, Stretch s) {
        List<Integer> found = new ArrayList<>();
        for (int j = 0; j < all.size(); j++) {
            Stretch o = all.get(j);
            double apart = APART * Math.max(s.widthPx(), o.widthPx()) + 1;
            double along = o.along(s.x1(), s.y1());
            if (j != self && o.aside(s.x1(), s.y1()) < apart && along > -apart && along < o.length() + apart) {
                Stretch end = nearer(o, s);
                if (Math.hypot(end.x1() - s.x1(), end.y1() - s.y1()) >= apart) {
                    return List.of();
                }
                found.add(j);
            }
        }
        return found;
    }

    /** Turned so that its end is the one nearer to the other's. */
    private static Stretch nearer(Stretch o, Stretch s) {
        double start = Math.hypot(o.x0() - s.x1(), o.y0() - s.y1());
        double end = Math.hypot(o.x1() - s.x1(), o.y1() - s.y1());
        return start < end ? o.turned() : o;
    }

    /** The crossing lies at the end, or a little further on. */
    private static boolean beyond(Stretch s, double[] x, double most) {
        double on = s.along(x[0], x[1]) - s.length();
        return on > -most && on < most && s.length() + on > most;
    }

    private static double sine(Stretch a, Stretch b) {
        return Math.sqrt(Math.max(0, 1 - cosine(a, b) * cosine(a, b)));
    }

    /** Of the angle between their ways to the corner. */
    private static double cosine(Stretch a, Stretch b) {
        return ((a.x1() - a.x0()) * (b.x1() - b.x0()) + (a.y1() - a.y0()) * (b.y1() - b.y0()))
                / (a.length() * b.length());
    }
}
