package linewalk.importer.stroke;

import java.util.Arrays;
import java.util.List;
import linewalk.importer.ocr.ReadLetter;

/** Which letters of a read line belong to which signs of the row: in order, each to the sign that it lies on. */
final class SignOptions {

    /** A letter left over, or a sign without one, in heights of a capital. */
    private static final double SKIP = 0.6;

    private static final double WIDE = 1.2;

    private SignOptions() {}

    /** For every sign the letter that lies on it, or null. */
    static List<ReadLetter> of(Row row, List<ReadLetter> line) {
        List<ReadLetter> letters = DraftersSigns.of(line);
        int n = row.signs().size();
        int m = letters.size();
        double[][] cost = new double[n + 1][m + 1];
        for (int i = 0; i <= n; i++) {
            for (int j = 0; j <= m; j++) {
                if (i + j > 0) {
                    cost[i][j] = best(row, letters, cost, i, j);
                }
            }
        }
        ReadLetter[] out = new ReadLetter[n];
        int i = n;
        int j = m;
        while (i > 0 && j > 0) {
            if (cost[i][j] == cost[i - 1][j - 1] + apart(row, i - 1, letters.get(j - 1))) {
                out[i - 1] = whole(row, i - 1, letters, j - 1);
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
    private static ReadLetter whole(Row row, int sign, List<ReadLetter> letters, int at) {
        Placed p = row.signs().get(sign);
        if (p.widthPt() < WIDE * row.heightPt()) {
            return letters.get(at);
        }
        StringBuilder text = new StringBuilder();
        double likelihood = 1;
        for (ReadLetter l : letters) {
            double middle = (l.x0Px() + l.x1Px()) / 2.0;
            if (middle > RowPicture.xPx(row, p.u0()) && middle < RowPicture.xPx(row, p.u1())) {
                text.append(l.text());
                likelihood *= l.likelihood();
            }
        }
        ReadLetter l = letters.get(at);
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

    private static double best(Row row, List<ReadLetter> letters, double[][] cost, int i, int j) {
        double best = Double.MAX_VALUE;
        if (i > 0) {
            best = cost[i - 1][j] + SKIP;
        }
        if (j > 0) {
            best = Math.min(best, cost[i][j - 1] + SKIP);
        }
        if (i > 0 && j > 0) {
            best = Math.min(best, cost[i - 1][j - 1] + apart(row, i - 1, letters.get(j - 1)));
        }
        return best;
    }

    private static double apart(Row row, int sign, ReadLetter letter) {
        Placed p = row.signs().get(sign);
        double middle = RowPicture.xPx(row, (p.u0() + p.u1()) / 2);
        return Math.abs(middle - (letter.x0Px() + letter.x1Px()) / 2.0) / RowPicture.HEIGHT_PX;
    }
}
