package linewalk.renderer.scheme;

import java.util.BitSet;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Divides a scheme into parts of which each fits a column. */
final class Division {

    /**
     * Share of a page that fields with their margins can cover: lines take the rest. More than 0.4 did not fit in any of
     * 1,268 layouts of random circuits.
     */
    private static final double MOST_COVERED = 0.5;

    private static final double MARGIN_PT = 20;

    /** What covers more than so many columns does not come in two. */
    private static final double TWO_COLUMNS = 1.7;

    private final Numbered scheme;
    private final Fitting fits;
    private final Size column;

    private Division(Numbered scheme, Size column, Fitting fits) {
        this.scheme = scheme;
        this.fits = fits;
        this.column = column;
    }

    static List<BitSet> of(Numbered scheme, Size column, Fitting fits) {
        return new Division(scheme, column, fits).divided(scheme.all());
    }

    /** A part that turned out not to fit, in two or more. */
    static List<BitSet> of(Numbered scheme, Size column, Fitting fits, BitSet part) {
        return new Division(scheme, column, fits).halves(part);
    }

    /** How many columns the fields of a part fill: none that fills more than one fits one. */
    static double columns(Numbered scheme, BitSet part, Size column) {
        double area = part.stream()
                .mapToObj(n -> scheme.node(n).size())
                .mapToDouble(s -> (s.widthPt() + MARGIN_PT) * (s.heightPt() + MARGIN_PT))
                .sum();
        return area / (column.widthPt() * column.heightPt() * MOST_COVERED);
    }

    private double columns(BitSet part) {
        return columns(scheme, part, column);
    }

    private List<BitSet> divided(BitSet part) {
        boolean isWhole = part.cardinality() == 1 || columns(part) <= 1 && fits.test(part);
        return isWhole ? List.of(part) : halves(part);
    }

    /** Both halves are divided at once: neither asks for the other. */
    private List<BitSet> halves(BitSet part) {
        double columns = columns(part);
        int most = Math.max(2, (int) Math.ceil(columns));
        List<Supplier<Bisection.Halves>> ways = scheme.bisection(part).ways((most / 2) / (double) most);
        Bisection.Halves best = ways.stream()
                .limit(columns < TWO_COLUMNS ? ways.size() : 0)
                .map(Supplier::get)
                .filter(w -> fits.both(w.first(), w.second()))
                .findFirst()
                .orElseGet(ways.get(0));
        return Stream.of(best.first(), best.second())
                .parallel()
                .flatMap(half -> divided(half).stream())
                .toList();
    }
}
