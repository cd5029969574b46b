package linewalk.importer.page;

/**
 * How a stroke is interrupted.
 *
 * @param onPt length of the longest drawn piece; 0 where the stroke is solid
 * @param chain drawn pieces of different length alternate (a chain line)
 */
public record Dash(double onPt, boolean chain) {

    public static final Dash SOLID = new Dash(0, false);

    /** Dashes of a chain line are this much longer than its dots. */
    private static final double CHAIN = 1.8;

    private static final double ALIKE = 0.25;

    private static final double SAME = 0.05;

    static Dash of(float[] pattern, double scale) {
        double longest = 0;
        double shortest = Double.MAX_VALUE;
        double gaps = 0;
        // an odd pattern is repeated once, so that drawn and left-out pieces swap (ISO 32000-1, 8.4.3.6)
        int n = pattern.length % 2 == 0 ? pattern.length : pattern.length * 2;
        for (int i = 0; i < n; i++) {
            double piece = pattern[i % pattern.length] * scale;
            if (i % 2 == 0) {
                longest = Math.max(longest, piece);
                shortest = Math.min(shortest, piece);
            } else {
                gaps += piece;
            }
        }
        if (n == 0 || gaps <= 0 || longest <= 0) {
            return SOLID;
        }
        return new Dash(longest, alternate(longest, shortest));
    }

    /** Dashes and dots, not dashes of which some are cut short. */
    static boolean alternate(double longestPt, double shortestPt) {
        return longestPt > CHAIN * shortestPt;
    }

    /** Drawn with the same pattern, as far as single dashes tell: a short leg may show none of a chain line's dots. */
    boolean like(Dash o) {
        double share = chain == o.chain ? ALIKE : SAME;
        return Math.abs(onPt - o.onPt) <= share * Math.max(onPt, o.onPt);
    }

    public boolean solid() {
        return onPt == 0;
    }
}
