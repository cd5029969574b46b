package linewalk.renderer.scheme;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Sets parts on pages, each on the first page that has room beside those that stand there: taken in the order of the
 * scheme, or the largest, tallest or widest first where that takes fewer pages.
 */
final class Gathering {

    private static final Comparator<BitSet> IN_ORDER = Comparator.comparingInt(p -> p.nextSetBit(0));

    private final Function<BitSet, List<Size>> pieces;
    private final Size page;

    private Gathering(Function<BitSet, List<Size>> pieces, Size page) {
        this.pieces = pieces;
        this.page = page;
    }

    /**
     * @param pieces the sizes of a part's pieces
     * @return parts by pages, both in the order of the scheme
     */
    static List<List<BitSet>> of(List<BitSet> parts, Function<BitSet, List<Size>> pieces, Size page) {
        Gathering gathering = new Gathering(pieces, page);
        Comparator<BitSet> largest = Comparator.comparingDouble(p -> -gathering.areaPt(p));
        Comparator<BitSet> tallest =
                Comparator.comparingDouble(p -> -gathering.size(p).heightPt());
        Comparator<BitSet> widest =
                Comparator.comparingDouble(p -> -gathering.size(p).widthPt());
        return Stream.of(IN_ORDER, largest, tallest, widest)
                .map(order -> order.thenComparing(IN_ORDER))
                .map(order -> gathering.pages(parts.stream().sorted(order).toList()))
                .min(Comparator.comparingInt(List::size))
                .orElseThrow();
    }

    private List<List<BitSet>> pages(List<BitSet> parts) {
        List<List<BitSet>> pages = new ArrayList<>();
        for (BitSet part : parts) {
            pages.stream()
                    .filter(p -> fits(part, p))
                    .findFirst()
                    .ifPresentOrElse(p -> p.add(part), () -> pages.add(new ArrayList<>(List.of(part))));
        }
        pages.forEach(p -> p.sort(IN_ORDER));
        pages.sort(Comparator.comparing(p -> p.get(0), IN_ORDER));
        return pages;
    }

    private boolean fits(BitSet part, List<BitSet> beside) {
        List<Size> all = Stream.concat(beside.stream(), Stream.of(part))
                .flatMap(p -> pieces.apply(p).stream())
                .toList();
        return Shelves.size(all, page.widthPt()).isWithin(page);
    }

    private Size size(BitSet part) {
        return Shelves.size(pieces.apply(part), page.widthPt());
    }

    private double areaPt(BitSet part) {
        return pieces.apply(part).stream()
                .mapToDouble(s -> s.widthPt() * s.heightPt())
                .sum();
    }
}
