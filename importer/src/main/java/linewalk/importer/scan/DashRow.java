package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.List;

/**
 * A dashed line, in registered pixels.
 *
 * @param dashes in order
 * @param gapPx the usual one
 * @param width of its pen, in pixels
 * @param chain long and short pieces alternate
 */
record DashRow(List<Line> dashes, Straight straight, double gapPx, boolean chain, double width) {

    /** Length of its usual dash: the first and the last may be cut short. */
    double onPx() {
        double[] spans = dashes.stream().mapToDouble(Line::span).sorted().toArray();
        return chain ? spans[spans.length - 1] : spans[(3 * spans.length) / 4];
    }

    DashRow(List<Line> dashes, Straight straight, double gapPx, boolean chain) {
        this(dashes, straight, gapPx, chain, middle(dashes));
    }

    private static double middle(List<Line> dashes) {
        double[] widths = dashes.stream().mapToDouble(l -> l.width).sorted().toArray();
        return widths[widths.length / 2];
    }

    /** A row so short that it could be anything, but for its likeness to this one. */
    boolean like(DashRow few) {
        return chain == few.chain
                && Math.abs(few.width() - width()) < 0.25 * width() + 0.5
                && few.onPx() < 1.25 * onPx() + 3
                && few.onPx() > (chain ? 0.3 : 0.5) * onPx()
                && Math.abs(few.gapPx - gapPx) < 0.3 * gapPx + 2;
    }

    /** Both rows as one, which runs on through what lies between them. */
    DashRow with(DashRow o) {
        List<Line> all = new ArrayList<>(dashes);
        all.addAll(o.dashes);
        DashRow longer = dashes.size() >= o.dashes.size() ? this : o;
        return new DashRow(all, longer.straight, longer.gapPx, longer.chain);
    }

    /** One of its two ends; the far one lies further along. */
    double end(boolean far) {
        double best = far ? -Double.MAX_VALUE : Double.MAX_VALUE;
        for (Line l : dashes) {
            for (boolean side : new boolean[] {false, true}) {
                double[] e = l.end(side);
                double t = straight.along(e[0], e[1]);
                best = far ? Math.max(best, t) : Math.min(best, t);
            }
        }
        return best;
    }

    double[] at(double t) {
        return new double[] {straight.x() + t * straight.dx(), straight.y() + t * straight.dy()};
    }
}
