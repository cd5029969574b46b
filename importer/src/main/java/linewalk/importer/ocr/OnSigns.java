package linewalk.importer.ocr;

import java.util.Arrays;
import java.util.List;

/** Which letters of a read line belong to which signs of its row: in order, each to the sign that it lies on. */
public final class OnSigns {

    /** A letter left over, or a sign without one, in heights of a capital. */
    private static final double SKIP = 0.6;

    private static final double WIDE = 1.2;

    private final List<Place> signs;
    private final List<ReadLetter> letters;
    private final double heightPx;
    private final double[][] cost;

    /** Where a sign stands in the crop. */
    public record Place(double x0Px, double x1Px) {

        double middle() {
            return (x0Px + x1Px) / 2;
        }
    }

    private OnSigns(List<Place> signs, List<ReadLetter> letters, double heightPx) {
        this.signs = signs;
        this.letters = letters;
        this.heightPx = heightPx;
        cost = new double[signs.size() + 1][letters.size() + 1];
    }

    /**
     * For every sign the letter that lies on it, or null, its readings seen as a drafter's.
     *
     * @param heightPx of a capital
     */
    public static List<ReadLetter> of(List<Place> signs, List<ReadLetter> line, double heightPx) {
        List<ReadLetter> letters = DraftersSigns.of(line);
        // the reader's own places are rough
        return letters.size() == signs.size() ? letters : new OnSigns(signs, letters, heightPx).match();
    }

    private List<ReadLetter> match() {
        int n = signs.size();
        int m = letters.size();
        for (int i = 0; i <= n; i++) {
            for (int j = 0; j <= m; j++) {
                if (i + j > 0) {
                    cost[i][j] = best(i, j);
                }
            }
        }
        ReadLetter[] out = new ReadLetter[n];
        int i = n;
        int j = m;
        while (i > 0 && j > 0) {
            if (cost[i][j] == cost[i - 1][j - 1] + apart(i - 1, j - 1)) {
                out[i - 1] = whole(i - 1, j - 1);
                i--;
                j--;
            } else if (cost[i][j] == cost[i - 1][j] + SKIP) {
                i--;
            } else {
                j--;
            }
        }
        return Arrays.asList(out);
    }

    /** A sign as wide as two letters may be two that touch. */
    private ReadLetter whole(int sign, int at) {
        Place p = signs.get(sign);
        ReadLetter l = letters.get(at);
        if (p.x1Px() - p.x0Px() < WIDE * heightPx) {
            return l;
        }
        StringBuilder text = new StringBuilder();
        double likelihood = 1;
        for (ReadLetter o : letters) {
            if (middle(o) > p.x0Px() && middle(o) < p.x1Px()) {
                text.append(o.text());
                likelihood *= o.likelihood();
            }
        }
        return text.length() < 2
                ? l
                : new ReadLetter(
                        l.x0Px(),
                        l.y0Px(),
                        l.x1Px(),
                        l.y1Px(),
                        l.afterBlank(),
                        List.of(new ReadLetter.Option(text.toString(), likelihood)));
    }

    private double best(int i, int j) {
        double best = Double.MAX_VALUE;
        if (i > 0) {
            best = cost[i - 1][j] + SKIP;
        }
        if (j > 0) {
            best = Math.min(best, cost[i][j - 1] + SKIP);
        }
        if (i > 0 && j > 0) {
            best = Math.min(best, cost[i - 1][j - 1] + apart(i - 1, j - 1));
        }
        return best;
    }

    private double apart(int sign, int letter) {
        return Math.abs(signs.get(sign).middle() - middle(letters.get(letter))) / heightPx;
    }

    private static double middle(ReadLetter l) {
        return (l.x0Px() + l.x1Px()) / 2.0;
    }
}
