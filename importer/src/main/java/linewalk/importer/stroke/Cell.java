package linewalk.importer.stroke;

import java.util.ArrayList;
import java.util.List;

/**
 * The room that a letter takes up, in heights of a capital. In lettering of fixed pitch an I has as much as an M, so white
 * beside it is no blank, and a blank is as wide as a letter.
 *
 * @param width of a full letter; 0 where every letter has only the room it needs
 * @param pitch from letter to letter; 0 likewise
 */
record Cell(double width, double pitch) {

    static final Cell NONE = new Cell(0, 0);

    /** Narrower than this share of a full letter, a sign tells which kind of lettering it is. */
    private static final double NARROW = 0.6;

    private static final double FULL = 0.85;

    /** Pairs with a narrow sign that must be there, and the share of them that must stand at the pitch. */
    private static final int ENOUGH = 8;

    private static final double AGREE = 0.9;

    /** Signs do not stand in the very middle of their cells. */
    private static final double SLACK = 0.15;

    /** Two neighbours of one word or two, in heights of their row. */
    private record Pair(double left, double right, double middles) {

        double gap() {
            return middles - (left + right) / 2;
        }

        double narrower() {
            return Math.min(left, right);
        }
    }

    static Cell of(List<Row> rows) {
        List<Pair> pairs = pairs(rows);
        if (pairs.size() < ENOUGH) {
            return NONE;
        }
        double full = Baselines.median(pairs.stream()
                .flatMap(p -> List.of(p.left(), p.right()).stream())
                .toList());
        List<Pair> plain =
                pairs.stream().filter(p -> p.narrower() > FULL * full).toList();
        if (plain.isEmpty()) {
            return NONE;
        }
        double pitch = Baselines.median(plain.stream().map(Pair::middles).toList());
        double gap = Baselines.median(plain.stream().map(Pair::gap).toList());
        List<Pair> telling = pairs.stream()
                .filter(p -> p.narrower() < NARROW * full && p.middles() < 1.5 * pitch)
                .toList();
        long fixed = telling.stream()
                .filter(p -> Math.abs(p.middles() - pitch) < Math.abs(p.gap() - gap))
                .count();
        return telling.size() >= ENOUGH && fixed >= AGREE * telling.size() ? new Cell(full, pitch) : NONE;
    }

    private static List<Pair> pairs(List<Row> rows) {
        List<Pair> out = new ArrayList<>();
        for (Row r : rows) {
            for (int i = 0; i + 1 < r.signs().size(); i++) {
                Placed a = r.signs().get(i);
                Placed b = r.signs().get(i + 1);
                double middles = (b.u0() + b.u1() - a.u0() - a.u1()) / 2;
                out.add(new Pair(a.widthPt() / r.heightPt(), b.widthPt() / r.heightPt(), middles / r.heightPt()));
            }
        }
        return out;
    }

    /** White between two neighbours' cells, as a share of the height. */
    double gap(Placed a, Placed b, double heightPt) {
        double middles = (b.u0() + b.u1() - a.u0() - a.u1()) / 2;
        double roomPt = width * heightPt;
        return (middles - Math.max(a.widthPt(), roomPt) / 2 - Math.max(b.widthPt(), roomPt) / 2) / heightPt;
    }

    /** How far apart words of one row stand at most, of lettering that shows no pitch so far as {@code usual}. */
    double reach(double usual) {
        return Math.max(usual, 2 * pitch - width + SLACK);
    }
}
