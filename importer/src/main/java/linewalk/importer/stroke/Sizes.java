package linewalk.importer.stroke;

import java.util.ArrayList;
import java.util.List;

/**
 * Rows with words of two sizes, as a designation and its smaller remark, to a row each. Where a word mixes tall and low
 * letters the row has small letters, and low words are words of these.
 */
final class Sizes {

    private static final double SAME = 0.9;

    /** A label of another size may stand nearer than a word. */
    private static final double NEARER = 0.6;

    private final double blank;

    /** Shapes of signs as high as their row. */
    private final ShapeBook capitals = new ShapeBook();

    private Sizes(List<Row> rows) {
        blank = Blanks.from(rows);
        for (Row r : rows) {
            r.signs().stream()
                    .filter(p -> onBase(p, r) && p.heightPt() > SAME * r.heightPt())
                    .forEach(p -> capitals.of(p, r));
        }
    }

    static List<Row> split(List<Row> rows) {
        Sizes sizes = new Sizes(rows);
        List<Row> out = new ArrayList<>();
        rows.forEach(r -> sizes.split(r, out));
        return out;
    }

    private void split(Row row, List<Row> out) {
        List<List<Placed>> words = new ArrayList<>();
        for (int i = 0; i < row.signs().size(); i++) {
            if (i == 0 || row.gap(i - 1) >= (jumps(row, i) ? NEARER : 1) * blank) {
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
                out.add(row.with(run, size, base(run, row)));
                run = new ArrayList<>();
                size = 0;
            }
            run.addAll(word);
            size = Math.max(size, high);
        }
        double base = run.size() < row.signs().size() ? base(run, row) : row.baselinePt();
        out.add(row.with(run, size > 0 ? size : row.heightPt(), base));
    }

    /** The sign is of another height than the one before it. */
    private static boolean jumps(Row row, int i) {
        Placed a = row.signs().get(i - 1);
        Placed b = row.signs().get(i);
        double low = Math.min(a.heightPt(), b.heightPt());
        return onBase(a, row) && onBase(b, row) && low < SAME * Math.max(a.heightPt(), b.heightPt());
    }

    private static double base(List<Placed> signs, Row row) {
        List<Double> low =
                signs.stream().filter(p -> onBase(p, row)).map(Placed::v1).toList();
        return low.isEmpty() ? row.baselinePt() : Baselines.median(low);
    }

    private static boolean onBase(Placed p, Row row) {
        return Math.abs(p.v1() - row.baselinePt()) < 0.1 * row.heightPt() && p.heightPt() > 0.5 * row.heightPt();
    }

    /** Of the letters that stand on the baseline, where they are capitals of a smaller size; 0 where none does. */
    private double high(List<Placed> word, Row row) {
        double highest = highest(word, row);
        if (highest == 0 || highest == row.heightPt()) {
            return highest;
        }
        List<Placed> standing = word.stream().filter(p -> onBase(p, row)).toList();
        double best = row.heightPt();
        long most = Math.max(1, (standing.size() - 1) / 2);
        for (Placed letter : standing) {
            // round letters are a little higher than the others, and any of them may be the measure
            long known = known(standing, letter.heightPt(), row);
            if (known > most || known == most && best == row.heightPt()) {
                most = known;
                best = letter.heightPt();
            }
        }
        return standing.size() > 1 ? best : row.heightPt();
    }

    private long known(List<Placed> word, double heightPt, Row row) {
        Row own = row.with(word, heightPt, base(word, row));
        return word.stream()
                .filter(p -> capitals.find(Shape.of(p, own)) != null)
                .count();
    }

    private static double highest(List<Placed> word, Row row) {
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
        return low < SAME * highest(word, row);
    }
}
