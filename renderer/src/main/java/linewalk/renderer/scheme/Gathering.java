package linewalk.renderer.scheme;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** Sets parts on pages in the order of the scheme, each on the first page that has room beside those that stand there. */
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
        return new Gathering(pieces, page).pages(parts.stream().sorted(IN_ORDER).toList());
    }

    private List<List<BitSet>> pages(List<BitSet> parts) {
        List<List<BitSet>> pages = new ArrayList<>();
        for (BitSet part : parts) {
            pages.stream()
                    .filter(p -> fits(part, p))
                    .findFirst()
                    .ifPresentOrElse(p -> p.add(part), () -> pages.add(new ArrayList<>(List.of(part))));
        }
        return pages;
    }

    private boolean fits(BitSet part, List<BitSet> beside) {
        List<Size> all = Stream.concat(beside.stream(), Stream.of(part))
                .flatMap(p -> pieces.apply(p).stream())
                .toList();
        return Shelves.size(all, page.widthPt()).isWithin(page);
    }
}
