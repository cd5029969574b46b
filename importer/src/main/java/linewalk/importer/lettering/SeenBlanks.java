package linewalk.importer.lettering;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Gaps between signs and whether the letter reader saw a blank there: from which gap on do words end? */
public final class SeenBlanks {

    private static final int ENOUGH = 20;

    private record Seen(double gap, boolean blank) {}

    private final List<Seen> seen = new ArrayList<>();

    /** @param gap in heights of a capital */
    public void note(double gap, boolean blank) {
        seen.add(new Seen(gap, blank));
    }

    /** The limit that agrees with most; of several the one nearest to {@code usual}. */
    public double limit(double usual) {
        long blanks = seen.stream().filter(Seen::blank).count();
        if (blanks < ENOUGH || seen.size() - blanks < ENOUGH) {
            return usual;
        }
        seen.sort(Comparator.comparingDouble(Seen::gap));
        double best = usual;
        long least = Long.MAX_VALUE;
        long wrong = seen.size() - blanks;
        for (int i = 0; i + 1 < seen.size(); i++) {
            wrong += seen.get(i).blank() ? 1 : -1;
            double limit = (seen.get(i).gap() + seen.get(i + 1).gap()) / 2;
            if (wrong < least || wrong == least && Math.abs(limit - usual) < Math.abs(best - usual)) {
                least = wrong;
                best = limit;
            }
        }
        return best;
    }
}
