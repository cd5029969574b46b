package linewalk.importer.valve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import linewalk.drawing.Point;
import linewalk.importer.page.Segment;

/**
 * Level or upright pieces that continue one another, seen as one rule.
 *
 * @param atPt across its direction
 * @param fromPt along its direction
 */
record Ruling(double atPt, double fromPt, double toPt) {

    boolean spans(double fromPt, double toPt, double tolPt) {
        return this.fromPt <= fromPt + tolPt && this.toPt >= toPt - tolPt;
    }

    static List<Ruling> level(List<Ink> ink, double tolPt) {
        return rules(ink, Lie.LEVEL, tolPt);
    }

    static List<Ruling> upright(List<Ink> ink, double tolPt) {
        return rules(ink, Lie.UPRIGHT, tolPt);
    }

    private static List<Ruling> rules(List<Ink> ink, Lie lie, double tolPt) {
        List<Ruling> pieces = new ArrayList<>();
        for (Ink k : ink) {
            if (!k.solid() || k.curved() || k.round()) {
                continue;
            }
            for (Segment s : k.segments()) {
                Point a = lie.local(s.a());
                Point b = lie.local(s.b());
                if (Math.abs(a.yPt() - b.yPt()) <= 0.02 * Math.abs(a.xPt() - b.xPt()) + 0.02) {
                    pieces.add(new Ruling(
                            (a.yPt() + b.yPt()) / 2, Math.min(a.xPt(), b.xPt()), Math.max(a.xPt(), b.xPt())));
                }
            }
        }
        return merge(pieces, tolPt);
    }

    private static List<Ruling> merge(List<Ruling> pieces, double tolPt) {
        pieces.sort(Comparator.comparingDouble(Ruling::fromPt));
        List<Ruling> out = new ArrayList<>();
        for (Ruling p : pieces) {
            int same = -1;
            for (int i = 0; i < out.size(); i++) {
                if (Math.abs(out.get(i).atPt - p.atPt) <= tolPt / 2 && p.fromPt <= out.get(i).toPt + tolPt) {
                    same = i;
                }
            }
            if (same < 0) {
                out.add(p);
            } else {
                Ruling o = out.get(same);
                out.set(same, new Ruling(o.atPt, o.fromPt, Math.max(o.toPt, p.toPt)));
            }
        }
        return out;
    }
}
