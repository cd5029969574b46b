package linewalk.importer.valve;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.page.Segment;

/** What is drawn inside one square: strokes are cut at its sides, small closed shapes stay whole, the sides are left out. */
final class SquareInk {

    /** A closed shape larger than this is a frame around several things. */
    private static final double LARGE = 0.7;

    /** How far an operator's arrow reaches into the square beside it at most, in its widths. */
    private static final double INTO = 0.2;

    private final Box square;
    private final double tolPt;
    private final List<Ink> inside = new ArrayList<>();
    private boolean splits = true;

    private SquareInk(Box square, double tolPt) {
        this.square = square;
        this.tolPt = tolPt;
    }

    static List<Ink> of(Box square, List<Ink> ink, double tolPt) {
        SquareInk cut = new SquareInk(square, tolPt);
        ink.forEach(cut::add);
        return cut.inside;
    }

    /** The same, without cutting strokes where the pen turns back. */
    static List<Ink> whole(Box region, List<Ink> ink, double tolPt) {
        SquareInk cut = new SquareInk(region, tolPt);
        cut.splits = false;
        ink.forEach(cut::add);
        return cut.inside;
    }

    private void add(Ink ink) {
        Box b = ink.box();
        if (!b.intersects(square)) {
            return;
        }
        double side = Math.min(square.widthPt(), square.heightPt());
        if (ink.closed() && ink.sizePt() < LARGE * side) {
            if (square.contains(b.center()) && !straddles(b)) {
                inside.add(ink);
            }
            return;
        }
        List<Point> run = new ArrayList<>();
        for (Segment s : ink.segments()) {
            Segment part = clipped(s);
            boolean goesOn =
                    part != null && !run.isEmpty() && run.get(run.size() - 1).distancePt(part.a()) < 1e-6;
            if (!goesOn) {
                keep(ink, run);
                run = new ArrayList<>();
            }
            if (part != null) {
                if (run.isEmpty()) {
                    run.add(part.a());
                }
                run.add(part.b());
            }
        }
        keep(ink, run);
    }

    private void keep(Ink ink, List<Point> run) {
        if (run.size() > 1) {
            Ink part = ink.with(run);
            if (part.lengthPt() > 1.2 * tolPt && !reachesIn(ink, part)) {
                inside.addAll(splits ? part.split() : List.of(part));
            }
        }
    }

    /** Across a side that the next square or an operator stands at. */
    private boolean straddles(Box b) {
        return b.x0Pt() < square.x0Pt() - tolPt && b.x1Pt() > square.x0Pt() + tolPt
                || b.x0Pt() < square.x1Pt() - tolPt && b.x1Pt() > square.x1Pt() + tolPt;
    }

    /** What of an operator's arrow reaches a little over the side that it stands at: passages cross none of these. */
    private boolean reachesIn(Ink whole, Ink part) {
        Box b = part.box();
        return splits
                && straddles(whole.box())
                && whole.lengthPt() > 2 * part.lengthPt()
                && b.widthPt() < INTO * square.widthPt()
                && (b.x0Pt() <= square.x0Pt() + tolPt || b.x1Pt() >= square.x1Pt() - tolPt)
                && b.y0Pt() > square.y0Pt() + tolPt
                && b.y1Pt() < square.y1Pt() - tolPt;
    }

    /** Null where nothing of it lies inside, or where it runs along a side. */
    private Segment clipped(Segment s) {
        double dx = s.b().xPt() - s.a().xPt();
        double dy = s.b().yPt() - s.a().yPt();
        double[] t = {0, 1};
        boolean in = cut(-dx, s.a().xPt() - square.x0Pt(), t)
                && cut(dx, square.x1Pt() - s.a().xPt(), t)
                && cut(-dy, s.a().yPt() - square.y0Pt(), t)
                && cut(dy, square.y1Pt() - s.a().yPt(), t);
        if (!in || t[0] >= t[1]) {
            return null;
        }
        Point a = s.a().plus(t[0] * dx, t[0] * dy);
        Point b = s.a().plus(t[1] * dx, t[1] * dy);
        return alongSide(a, b) ? null : new Segment(a, b);
    }

    private static boolean cut(double p, double q, double[] t) {
        if (Math.abs(p) < 1e-12) {
            return q >= 0;
        }
        double r = q / p;
        if (p < 0) {
            t[0] = Math.max(t[0], r);
        } else {
            t[1] = Math.min(t[1], r);
        }
        return t[0] <= t[1];
    }

    private boolean alongSide(Point a, Point b) {
        return nearBoth(a.xPt(), b.xPt(), square.x0Pt())
                || nearBoth(a.xPt(), b.xPt(), square.x1Pt())
                || nearBoth(a.yPt(), b.yPt(), square.y0Pt())
                || nearBoth(a.yPt(), b.yPt(), square.y1Pt());
    }

    private boolean nearBoth(double a, double b, double side) {
        return Math.abs(a - side) <= tolPt && Math.abs(b - side) <= tolPt;
    }
}
