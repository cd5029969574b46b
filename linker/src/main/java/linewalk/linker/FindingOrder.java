package linewalk.linker;

import java.util.Comparator;
import linewalk.drawing.Finding;

/** The set's own faults first, then page by page from the top left. */
final class FindingOrder {

    static final Comparator<Finding> BY_PLACE = Comparator.comparing(
                    Finding::page, Comparator.nullsFirst(Comparator.naturalOrder()))
            .thenComparing(f -> f.place() == null ? -1 : f.place().yPt())
            .thenComparing(f -> f.place() == null ? -1 : f.place().xPt())
            .thenComparing(Finding::rule)
            .thenComparing(Finding::message);

    private FindingOrder() {}
}
