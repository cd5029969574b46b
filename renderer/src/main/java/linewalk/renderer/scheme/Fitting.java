package linewalk.renderer.scheme;

import java.util.BitSet;
import java.util.List;
import java.util.concurrent.ForkJoinTask;
import java.util.function.Function;

/** Whether parts fit a column. Only what may fit is laid out. */
final class Fitting {

    /** Of 40,000 layouts of random circuits one in 200 became narrower than so many times what was expected, */
    private static final double LEAST_WIDTH = 0.9;
    /** and one in 200 lower. */
    private static final double LEAST_HEIGHT = 0.98;

    private final Size column;
    private final Expected expected;
    private final Function<BitSet, List<Size>> pieces;

    /** @param pieces the sizes of a part's pieces, laid out */
    Fitting(Size column, Expected expected, Function<BitSet, List<Size>> pieces) {
        this.column = column;
        this.expected = expected;
        this.pieces = pieces;
    }

    boolean test(BitSet part) {
        return may(part) && Shelves.size(pieces.apply(part), column.widthPt()).isWithin(column);
    }

    boolean may(BitSet part) {
        Size size = expected.size(part, column.widthPt());
        return size.widthPt() * LEAST_WIDTH <= column.widthPt() && size.heightPt() * LEAST_HEIGHT <= column.heightPt();
    }

    /** The fuller one is laid out first: where it does not fit, the other need not be, unless a thread has time for it. */
    boolean both(BitSet one, BitSet two) {
        if (!may(one) || !may(two)) {
            return false;
        }
        boolean oneIsFuller = filled(one) > filled(two);
        ForkJoinTask<Boolean> other =
                ForkJoinTask.adapt(() -> test(oneIsFuller ? two : one)).fork();
        if (test(oneIsFuller ? one : two)) {
            return other.join();
        }
        other.cancel(false);
        return false;
    }

    /** How much of the column's width or height a part is expected to take, whichever is more. */
    private double filled(BitSet part) {
        Size size = expected.size(part, column.widthPt());
        return Math.max(size.widthPt() / column.widthPt(), size.heightPt() / column.heightPt());
    }
}
