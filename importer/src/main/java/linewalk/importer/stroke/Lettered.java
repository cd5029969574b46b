package linewalk.importer.stroke;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import linewalk.importer.lettering.Cell;
import linewalk.importer.page.Segment;

/** Drafts of rows to rows of signs: what stands over each other is one sign, seen as if letters did not lean. */
final class Lettered {

    private static final int BINS = 61;
    private static final double STEEPEST = 0.6;

    /** A piece this long, in heights, tells how letters lean. */
    private static final double STEM = 0.4;

    private Lettered() {}

    /** How far the page's letters lean to the right, as a share of their height: the most usual stem. */
    static double lean(List<Baselines.Draft> rows) {
        double[] weight = new double[BINS];
        for (Baselines.Draft r : rows) {
            for (Placed p : r.parts()) {
                for (Piece piece : p.pieces()) {
                    for (Segment s : piece.segments()) {
                        weigh(s, r, weight);
                    }
                }
            }
        }
        int best = BINS / 2;
        for (int i = 1; i < BINS - 1; i++) {
            if (around(weight, i) > around(weight, best)) {
                best = i;
            }
        }
        double sum = 0;
        double total = 0;
        for (int i = Math.max(0, best - 1); i <= Math.min(BINS - 1, best + 1); i++) {
            sum += weight[i] * lean(i);
            total += weight[i];
        }
        return total == 0 ? 0 : sum / total;
    }

    private static double around(double[] weight, int i) {
        return weight[i - 1] + weight[i] + weight[i + 1];
    }

    private static double lean(int bin) {
        return (bin - BINS / 2) * 2 * STEEPEST / (BINS - 1);
    }

    private static void weigh(Segment s, Baselines.Draft r, double[] weight) {
        double du = r.turn().along(s.b()) - r.turn().along(s.a());
        double dv = r.turn().down(s.b()) - r.turn().down(s.a());
        if (Math.abs(dv) < STEM * r.heightPt()) {
            return;
        }
        int bin = (int) Math.round(-du / dv / (2 * STEEPEST) * (BINS - 1)) + BINS / 2;
        if (bin >= 0 && bin < BINS) {
            weight[bin] += Math.abs(dv) / r.heightPt();
        }
    }

    static Row row(Baselines.Draft draft, double lean, Cell cell) {
        List<Placed> upright = new ArrayList<>(draft.parts().stream()
                .map(p -> p.upright(draft.turn(), lean, draft.baselinePt()))
                .toList());
        upright.sort(Comparator.comparingDouble(Placed::u0));
        List<Placed> signs = new ArrayList<>();
        for (Placed p : upright) {
            int last = signs.size() - 1;
            if (last >= 0 && over(signs.get(last), p, draft.heightPt())) {
                signs.set(last, signs.get(last).with(p));
            } else {
                signs.add(p);
            }
        }
        return new Row(draft.turn(), signs, draft.heightPt(), draft.baselinePt(), lean, cell);
    }

    /** The parts of an i, a colon, a percent sign. */
    private static boolean over(Placed a, Placed b, double heightPt) {
        double common = Math.min(a.u1(), b.u1()) - Math.max(a.u0(), b.u0());
        double narrower = Math.min(a.widthPt(), b.widthPt());
        double apart = Math.abs(a.u0() + a.u1() - b.u0() - b.u1()) / 2;
        return common > 0.6 * narrower || (common > -0.04 * heightPt && apart < 0.12 * heightPt);
    }
}
