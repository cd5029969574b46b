package linewalk.importer.lettering;

import java.util.ArrayList;
import java.util.List;

/**
 * The room that a letter takes up, in heights of a capital. In lettering of fixed pitch an I has as much as an M, so white
 * beside it is no blank, and a blank is as wide as a letter.
 *
 * @param width of a full letter; 0 where every letter has only the room it needs
 * @param pitch from letter to letter; 0 likewise
 */
public record Cell(double width, double pitch) {

    public static final Cell NONE = new Cell(0, 0);

    /** Pairs that must be there. */
    private static final int ENOUGH = 20;

    private static final double FULL = 0.85;

    /**
     * From the middle of a letter to the next one's differs by less, at half of all pairs, whatever the letters. Measured
     * on scans: at most 0.025 in lettering of fixed pitch, from 0.04 (figures of one width) to 0.17 in other lettering.
     */
    private static final double REGULAR = 0.033;

    /** Pairs with a sign narrower than this share of a full letter tell most; of these nearly all stand at the pitch. */
    private static final double NARROW = 0.6;

    private static final double NEARLY_ALL = 0.85;

    /**
     * Where letters of a pair are so much wider or narrower than usual, in heights, gap and pitch say two things. Of these
     * pairs at least 0.66 or at most 0.34 stood at the pitch.
     */
    private static final double TELLING = 0.1;

    private static final double MOST = 0.55;

    private static final int FEW = 8;

    /** Lettering in which so many pairs are full letters draws out its I and its 1. Measured: 0.82 to 0.95, else at most 0.62. */
    private static final double FILLED = 0.75;

    /** Signs do not stand in the very middle of their cells. */
    private static final double SLACK = 0.15;

    /** From where to where a sign reaches along its row, in any unit. */
    public record Span(double from, double to) {

        public double width() {
            return to - from;
        }

        double middle() {
            return (from + to) / 2;
        }
    }

    /** Two neighbours of one word or two, in heights of their row. */
    private record Pair(double left, double right, double middles) {

        static Pair of(Span a, Span b, double height) {
            return new Pair(a.width() / height, b.width() / height, (b.middle() - a.middle()) / height);
        }

        double gap() {
            return middles - (left + right) / 2;
        }

        double narrower() {
            return Math.min(left, right);
        }
    }

    /** Collects neighbours, row by row, and tells what room their letters have. */
    public static final class Measure {
        private final List<Pair> pairs = new ArrayList<>();

        /** @param height of the row's capitals, in the unit of its signs */
        public void add(List<Span> row, double height) {
            for (int i = 0; i + 1 < row.size(); i++) {
                pairs.add(Pair.of(row.get(i), row.get(i + 1), height));
            }
        }

        public Cell cell() {
            return Cell.of(pairs);
        }
    }

    private static Cell of(List<Pair> pairs) {
        if (pairs.size() < ENOUGH) {
            return NONE;
        }
        double full = median(pairs.stream()
                .flatMap(p -> List.of(p.left(), p.right()).stream())
                .toList());
        List<Pair> plain =
                pairs.stream().filter(p -> p.narrower() > FULL * full).toList();
        if (plain.isEmpty()) {
            return NONE;
        }
        double pitch = median(plain.stream().map(Pair::middles).toList());
        double gap = median(plain.stream().map(Pair::gap).toList());
        List<Pair> near = pairs.stream().filter(p -> p.middles() < 1.5 * pitch).toList();
        double off =
                median(near.stream().map(p -> Math.abs(p.middles() - pitch)).toList());
        List<Pair> narrow =
                near.stream().filter(p -> p.narrower() < NARROW * full).toList();
        List<Pair> telling = near.stream()
                .filter(p -> Math.abs(pitch - gap - (p.left() + p.right()) / 2) > TELLING)
                .toList();
        boolean filled = plain.size() > FILLED * pairs.size();
        boolean fixed = narrow.size() >= FEW
                ? atPitch(narrow, pitch, gap) >= NEARLY_ALL
                : filled || telling.size() >= FEW && atPitch(telling, pitch, gap) >= MOST;
        return off < REGULAR && fixed ? new Cell(full, pitch) : NONE;
    }

    /** Share of pairs whose middles are better told by the pitch than by the gap. */
    private static double atPitch(List<Pair> pairs, double pitch, double gap) {
        long at = pairs.stream()
                .filter(p -> Math.abs(p.middles() - pitch) < Math.abs(p.gap() - gap))
                .count();
        return (double) at / pairs.size();
    }

    private static double median(List<Double> values) {
        return values.stream().sorted().skip(values.size() / 2).findFirst().orElseThrow();
    }

    public boolean fixed() {
        return pitch > 0;
    }

    /** White between two neighbours' cells, as a share of the height. */
    public double gap(Span a, Span b, double height) {
        double room = width * height;
        double middles = b.middle() - a.middle();
        return (middles - Math.max(a.width(), room) / 2 - Math.max(b.width(), room) / 2) / height;
    }

    /** From which gap on a word ends, between the gap of letters and that of words. */
    public double blank() {
        return 1.5 * pitch - width;
    }

    /** How far apart words of one row stand at most, of lettering that shows no pitch so far as {@code usual}. */
    public double reach(double usual) {
        return Math.max(usual, 2 * pitch - width + SLACK);
    }
}
