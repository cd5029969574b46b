package linewalk.renderer.scheme;

import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * Divides a scheme into parts for columns of one width. What each width costs is told from expected sizes; then widths are
 * tried with layouts, the most promising first, as long as one may yet come to less than was reached.
 */
final class Planning {

    private static final int MOST_COLUMNS = 3;
    private static final double BETWEEN_COLUMNS_PT = 16;
    /** Each piece is one more place where the eye must look for a letter: worth so many pages. */
    private static final double PIECE_PAGES = 0.25;
    /**
     * How far what a width comes to may be expected too high. On 200 random circuits nothing took 570 pages, a part 561, and
     * all widths tried 558.
     */
    private static final double UNSURE_PAGES = PIECE_PAGES;

    /** One thread for each core: a caller's own cannot take over what another has put off. */
    private static final ForkJoinPool THREADS = new ForkJoinPool();

    private record Plan(Size column, List<BitSet> parts, double cost) {}

    private final Numbered scheme;
    private final Size page;
    private final Expected expected;
    private final Function<BitSet, List<Size>> laidOut;

    /** @param laidOut the sizes of a part's pieces, asked for by several threads at once */
    Planning(Numbered scheme, Size page, Expected expected, Function<BitSet, List<Size>> laidOut) {
        this.scheme = scheme;
        this.page = page;
        this.expected = expected;
        this.laidOut = laidOut;
    }

    /** In columns of the width at which they are best read. */
    List<BitSet> parts() {
        return THREADS.invoke(ForkJoinTask.adapt(this::best)).parts;
    }

    private Plan best() {
        List<Plan> plans = IntStream.rangeClosed(1, MOST_COLUMNS)
                .parallel()
                .mapToObj(this::expected)
                .sorted(Comparator.comparingDouble(Plan::cost))
                .toList();
        Plan best = laidOut(plans.get(0));
        for (Plan next : plans.subList(1, plans.size())) {
            if (next.cost <= best.cost + UNSURE_PAGES) {
                Plan made = laidOut(next);
                best = made.cost < best.cost ? made : best;
            }
        }
        return best;
    }

    private Plan expected(int columns) {
        double widthPt = (page.widthPt() - (columns - 1) * BETWEEN_COLUMNS_PT) / columns;
        return plan(new Size(widthPt, page.heightPt()), expected::pieces);
    }

    private Plan laidOut(Plan plan) {
        return plan(plan.column, laidOut);
    }

    private Plan plan(Size column, Function<BitSet, List<Size>> pieces) {
        Fitting fits = new Fitting(column, expected, pieces);
        List<BitSet> parts = Joining.of(Division.of(scheme, column, fits), scheme, column, pieces, fits);
        int apart = parts.stream().mapToInt(p -> pieces.apply(p).size()).sum();
        return new Plan(column, parts, Gathering.of(parts, pieces, page).size() + PIECE_PAGES * apart);
    }
}
