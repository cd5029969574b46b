package linewalk.importer.stroke;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;

/** Signs of one shape, and what they were read as. */
final class ShapeClass {

    /** A reading that no vote was cast for is not wholly impossible. */
    private static final double UNSEEN = 0.02;

    /** A reading of its own with this share of the most usual one's votes is preferred to one that another shape owns. */
    private static final double RIVAL = 0.3;

    /** Logarithm of the odds that one whole vote is worth; by the measured share of right letters, about 0.95. */
    private static final double ODDS = 2;

    private static final double MOST_SURE = 0.998;

    private static final double FAIR = 0.08;
    private static final double ENOUGH = 4;

    private static final int OFTEN = 3;

    final int id;
    final Shape shape;
    private final Map<String, Double> votes = new TreeMap<>();
    private final List<String> candidates = new ArrayList<>();
    private double cast;
    private int seen;
    private boolean inWord;

    ShapeClass(int id, Shape shape) {
        this.id = id;
        this.shape = shape;
    }

    void vote(String read, double weight) {
        String text = shape.cased(read);
        votes.merge(text, weight, Double::sum);
        cast += weight;
    }

    double votesFor(String text) {
        return votes.getOrDefault(text, 0.0);
    }

    Map<String, Double> votes() {
        return votes;
    }

    /** Leaves what this shape may be; {@code free} tells which readings no other shape owns. */
    void settle(Predicate<String> free) {
        candidates.clear();
        String best = best();
        if (best == null) {
            return;
        }
        String own = best(free);
        if (own != null && votesFor(own) >= RIVAL * votesFor(best)) {
            best = own;
        }
        candidates.add(best);
        for (String text : votes.keySet()) {
            if (!text.equals(candidates.get(0)) && free.test(text) && share(text) > FAIR) {
                candidates.add(text);
            }
        }
    }

    private String best(Predicate<String> free) {
        return votes.entrySet().stream()
                .filter(e -> free.test(e.getKey()))
                .max(Map.Entry.<String, Double>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey)
                .orElse(null);
    }

    /** Most voted for first. */
    List<String> candidates() {
        return candidates;
    }

    /** Seen often enough and always the same. */
    boolean sure() {
        return cast >= ENOUGH && candidates.size() == 1 && share(candidates.get(0)) > 0.7;
    }

    /**
     * How likely the reading is by all votes together: every look at the shape is evidence of its own, so the odds against
     * the strongest rival grow with the votes between them.
     */
    double likelihood(String text) {
        double rival = candidates.stream()
                .filter(t -> !t.equals(text))
                .mapToDouble(this::votesFor)
                .max()
                .orElse(Math.min(votesFor(text), cast - votesFor(text)) / 2);
        return MOST_SURE / (1 + Math.exp(-ODDS * (votesFor(text) - rival)));
    }

    /** Between 0 and 1; over all readings with votes it adds up to nearly 1. */
    double share(String text) {
        return (votes.getOrDefault(text, 0.0) + UNSEEN) / (cast + UNSEEN * (votes.size() + 1));
    }

    /** @param joined to another sign, without a blank between */
    void seen(boolean joined) {
        seen++;
        inWord |= joined;
    }

    /** Often seen and never in a word: letters are. */
    boolean strange() {
        return seen >= OFTEN && !inWord;
    }

    String best() {
        return best(text -> true);
    }
}
