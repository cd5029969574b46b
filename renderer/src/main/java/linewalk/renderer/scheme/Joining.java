package linewalk.renderer.scheme;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/** Makes two parts one where both fit in a column: those that share most nets first. */
final class Joining {

    /** Of a column's sides. */
    private static final double TOUCHING = 1.1;

    private record Pair(BitSet one, BitSet two, int nets) {}

    private final Numbered scheme;
    private final Size column;
    private final Function<BitSet, List<Size>> pieces;
    private final Fitting fits;
    private final Set<BitSet> failed = new HashSet<>();

    private Joining(Numbered scheme, Size column, Function<BitSet, List<Size>> pieces, Fitting fits) {
        this.scheme = scheme;
        this.column = column;
        this.pieces = pieces;
        this.fits = fits;
    }

    /** @param pieces the sizes of a part's pieces */
    static List<BitSet> of(
            List<BitSet> parts, Numbered scheme, Size column, Function<BitSet, List<Size>> pieces, Fitting fits) {
        Joining joining = new Joining(scheme, column, pieces, fits);
        List<BitSet> joined = new ArrayList<>(parts);
        while (joining.joinsTwo(joined)) {
            // once more, with the part that was made
        }
        return joined;
    }

    private boolean joinsTwo(List<BitSet> parts) {
        for (Pair p : pairs(parts)) {
            BitSet both = Numbered.union(p.one, p.two);
            if (failed.contains(both)) {
                continue;
            }
            if (Division.columns(scheme, both, column) <= 1 && mayFit(p) && fits.test(both)) {
                parts.set(parts.indexOf(p.one), both);
                parts.remove(p.two);
                return true;
            }
            failed.add(both);
        }
        return false;
    }

    private List<Pair> pairs(List<BitSet> parts) {
        List<BitSet> nets = parts.stream().map(scheme::netsOf).toList();
        List<Pair> pairs = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            for (int j = i + 1; j < parts.size(); j++) {
                BitSet shared = (BitSet) nets.get(i).clone();
                shared.and(nets.get(j));
                pairs.add(new Pair(parts.get(i), parts.get(j), shared.cardinality()));
            }
        }
        pairs.sort(Comparator.comparingInt(p -> -p.nets));
        return pairs;
    }

    /** Two layouts hardly become smaller by being one. */
    private boolean mayFit(Pair p) {
        Size a = Shelves.size(pieces.apply(p.one), column.widthPt());
        Size b = Shelves.size(pieces.apply(p.two), column.widthPt());
        return areaPt(p.one) + areaPt(p.two) <= column.widthPt() * column.heightPt()
                && (a.widthPt() + b.widthPt() <= TOUCHING * column.widthPt()
                        || a.heightPt() + b.heightPt() <= TOUCHING * column.heightPt());
    }

    private double areaPt(BitSet part) {
        return pieces.apply(part).stream()
                .mapToDouble(s -> s.widthPt() * s.heightPt())
                .sum();
    }
}
