package linewalk.importer.ocr;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** Which letters of a read line belong to which signs of its row: in order, each to the sign that it lies on. */
public final class OnSigns {

    /**
     * A letter left over, or a sign without one, in heights of a capital. Places may be off by a letter for several in a
     * row, so this is dear.
     */
    private static final double SKIP = 2;

    /** Letters that touch are one sign: so many at most. */
    private static final int MOST = 3;

    private static final double TWICE = 0.5;

    private static final double MANY = 1e9;

    private final List<Place> signs;
    private final List<ReadLetter> letters;
    private final double heightPx;
    private final double usualPx;
    private final double[][] cost;

    /** Where a sign stands in the crop. */
    public record Place(double x0Px, double x1Px) {

        double middle() {
            return (x0Px + x1Px) / 2;
        }

        double widthPx() {
            return x1Px - x0Px;
        }
    }

    private OnSigns(List<Place> signs, List<ReadLetter> letters, double heightPx) {
        this.signs = signs;
        this.letters = letters;
        this.heightPx = heightPx;
        usualPx = signs.stream()
                .mapToDouble(Place::widthPx)
                .sorted()
                .skip(signs.size() / 2)
                .findFirst()
                .orElse(0);
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
                    cost[i][j] = MANY;
                    for (int k = 0; k <= MOST; k++) {
                        cost[i][j] = Math.min(cost[i][j], cost(i, j, k));
                    }
                    cost[i][j] = Math.min(cost[i][j], j == 0 ? MANY : cost[i][j - 1] + SKIP);
                }
            }
        }
        ReadLetter[] out = new ReadLetter[n];
        int i = n;
        int j = m;
        while (i > 0) {
            int k = 0;
            while (k <= MOST && cost[i][j] != cost(i, j, k)) {
                k++;
            }
            if (k > MOST) {
                j--;
            } else {
                i--;
                j -= k;
                out[i] = k == 0 ? null : joined(letters.subList(j, j + k));
            }
        }
        return Arrays.asList(out);
    }

    /** The last of i signs holds the last k of j letters. */
    private double cost(int i, int j, int k) {
        if (i == 0 || k > j || k > 1 && signs.get(i - 1).widthPx() < (k - 0.5) * usualPx) {
            return MANY;
        }
        return cost[i - 1][j - k] + (k == 0 ? SKIP : apart(signs.get(i - 1), letters.subList(j - k, j)));
    }

    private static ReadLetter joined(List<ReadLetter> letters) {
        if (letters.size() == 1) {
            return letters.get(0);
        }
        String text = letters.stream().map(ReadLetter::text).collect(Collectors.joining());
        double likelihood = letters.stream().mapToDouble(ReadLetter::likelihood).reduce(1, (x, y) -> x * y);
        ReadLetter a = letters.get(0);
        ReadLetter b = letters.get(letters.size() - 1);
        List<ReadLetter.Option> options = new ArrayList<>();
        options.add(new ReadLetter.Option(text, likelihood));
        // the reader may have said one letter twice
        letters.stream()
                .map(l -> new ReadLetter.Option(l.text(), Math.min(likelihood, TWICE * l.likelihood())))
                .filter(o -> options.stream().noneMatch(p -> p.text().equals(o.text())))
                .forEach(options::add);
        return new ReadLetter(a.x0Px(), a.y0Px(), b.x1Px(), b.y1Px(), a.afterBlank(), options);
    }

    private double apart(Place sign, List<ReadLetter> read) {
        double middle = (read.get(0).x0Px() + read.get(read.size() - 1).x1Px()) / 2.0;
        return Math.abs(sign.middle() - middle) / heightPx;
    }
}
