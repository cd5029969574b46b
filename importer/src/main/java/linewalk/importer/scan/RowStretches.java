package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.List;

/** Where rows of dashes run from and to, each once: two that lie on one another for a while are one, parted at a hop. */
final class RowStretches {

    private static final double ASIDE_PX = 2;

    /** @param onPx of its dashes */
    record One(double[] from, double[] to, double widthPx, double onPx, boolean chain) {

        private Stretch stretch() {
            return new Stretch(from[0], from[1], to[0], to[1], widthPx);
        }

        /** In one straight line, and more than their ends touch. */
        private boolean overlaps(One o) {
            Stretch s = stretch();
            double a = s.along(o.from[0], o.from[1]);
            double b = s.along(o.to[0], o.to[1]);
            return chain == o.chain
                    && s.aside(o.from[0], o.from[1]) < ASIDE_PX
                    && s.aside(o.to[0], o.to[1]) < ASIDE_PX
                    && Math.min(s.length(), Math.max(a, b)) - Math.max(0, Math.min(a, b)) > ASIDE_PX;
        }

        private One with(One o) {
            Stretch s = stretch();
            double a = s.along(o.from[0], o.from[1]);
            double b = s.along(o.to[0], o.to[1]);
            double start = Math.min(0, Math.min(a, b));
            double end = Math.max(s.length(), Math.max(a, b));
            return new One(s.at(start, 0), s.at(end, 0), widthPx, Math.max(onPx, o.onPx), chain);
        }
    }

    private RowStretches() {}

    static List<One> of(List<DashRow> rows, RowEnds ends) {
        List<One> all = new ArrayList<>();
        for (DashRow r : rows) {
            List<double[]> e = ends.of(r);
            add(all, new One(e.get(0), e.get(1), r.width(), r.onPx(), r.chain()));
        }
        return all;
    }

    static void add(List<One> all, One next) {
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).overlaps(next)) {
                One whole = all.remove(i).with(next);
                add(all, whole);
                return;
            }
        }
        all.add(next);
    }
}
