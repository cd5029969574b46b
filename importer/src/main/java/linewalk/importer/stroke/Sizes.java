package linewalk.importer.stroke;

import java.util.ArrayList;
import java.util.List;

/**
 * Rows with words of two sizes, as a designation and its smaller remark, to a row each. Where a word mixes tall and low
 * letters the row has small letters, and low words are words of these.
 */
final class Sizes {

    private static final double SAME = 0.9;

    private Sizes() {}

    static List<Row> split(List<Row> rows) {
        double blank = Blanks.from(rows);
        List<Row> out = new ArrayList<>();
        rows.forEach(r -> split(r, blank, out));
        return out;
    }

    private static void split(Row row, double blank, List<Row> out) {
        List<List<Placed>> words = new ArrayList<>();
        for (int i = 0; i < row.signs().size(); i++) {
            if (i == 0 || row.gap(i - 1) >= blank) {
                words.add(new ArrayList<>());
            }
            words.get(words.size() - 1).add(row.signs().get(i));
        }
        boolean mixed = words.stream().anyMatch(w -> mixed(w, row));
        List<Placed> run = new ArrayList<>();
        double size = 0;
        for (List<Placed> word : words) {
            double high = mixed ? row.heightPt() : high(word, row);
            boolean other = size > 0 && high > 0 && Math.min(size, high) < SAME * Math.max(size, high);
            if (other) {
                out.add(new Row(row.turn(), run, size, row.baselinePt(), row.lean()));
                run = new ArrayList<>();
                size = 0;
            }
            run.addAll(word);
            size = Math.max(size, high);
        }
        out.add(new Row(row.turn(), run, size > 0 ? size : row.heightPt(), row.baselinePt(), row.lean()));
    }

    private static boolean onBase(Placed p, Row row) {
        return Math.abs(p.v1() - row.baselinePt()) < 0.1 * row.heightPt() && p.heightPt() > 0.5 * row.heightPt();
    }

    /** Of the letters that stand on the baseline; 0 where none does. */
    private static double high(List<Placed> word, Row row) {
        double most = word.stream()
                .filter(p -> onBase(p, row))
                .mapToDouble(Placed::heightPt)
                .max()
                .orElse(0);
        return most > SAME * row.heightPt() ? row.heightPt() : most;
    }

    private static boolean mixed(List<Placed> word, Row row) {
        double low = word.stream()
                .filter(p -> onBase(p, row))
                .mapToDouble(Placed::heightPt)
                .min()
                .orElse(0);
        return low < SAME * high(word, row);
    }
}
