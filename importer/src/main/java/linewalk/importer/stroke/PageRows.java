package linewalk.importer.stroke;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import linewalk.importer.ocr.LetterReader;
import linewalk.importer.ocr.ReadLetter;
import linewalk.importer.stroke.ReadRow.Option;

/** The rows of a page: each shape is read in all its rows, and what it is read as is decided for all of them together. */
final class PageRows {

    /** Below this mean likelihood a row is no lettering. */
    private static final double LETTERING = 0.45;

    /** A letter may be what its line was not read as. */
    private static final double UNREAD = 0.05;

    private final ShapeBook book = new ShapeBook();
    private final List<Row> rows;
    private final List<List<ShapeClass>> shapes = new ArrayList<>();
    private final Map<String, List<List<ReadLetter.Option>>> known = new HashMap<>();
    private final LetterReader reader;
    private final double blank;

    PageRows(List<Row> rows, LetterReader reader) {
        this.rows = rows;
        this.reader = reader;
        this.blank = Blanks.from(rows);
        for (Row r : rows) {
            List<ShapeClass> s = r.signs().stream().map(p -> book.of(p, r)).toList();
            s.forEach(c -> c.seen++);
            shapes.add(s);
        }
    }

    double blank() {
        return blank;
    }

    ShapeBook book() {
        return book;
    }

    List<Row> rows() {
        return rows;
    }

    /** Rows with most open shapes first; a row of shapes that are all known needs no look. */
    List<ReadRow> read() {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            order.add(i);
        }
        order.sort(Comparator.comparingInt((Integer i) -> -rows.get(i).signs().size()));
        for (int i : order) {
            if (!shapes.get(i).stream().allMatch(ShapeClass::sure)) {
                look(i);
                book.settle();
            }
        }
        List<ReadRow> out = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            ReadRow r = decided(i);
            if (r.likelihood() > LETTERING) {
                out.add(r);
            }
        }
        return out;
    }

    /** Reads a row, once for each succession of shapes, and lets it vote. */
    private List<List<ReadLetter.Option>> look(int i) {
        String key = key(i);
        List<List<ReadLetter.Option>> options = known.get(key);
        if (options == null) {
            options = SignOptions.of(rows.get(i), reader.line(RowPicture.of(rows.get(i))));
            known.put(key, options);
            for (int s = 0; s < options.size(); s++) {
                ShapeClass c = shapes.get(i).get(s);
                options.get(s).forEach(o -> c.vote(o.text(), o.likelihood()));
            }
        }
        return options;
    }

    private String key(int i) {
        StringBuilder b = new StringBuilder();
        for (int s = 0; s < shapes.get(i).size(); s++) {
            b.append(shapes.get(i).get(s).id).append(s + 1 < shapes.get(i).size() && rows.get(i).gap(s) >= blank ? ' ' : ',');
        }
        return b.toString();
    }

    private ReadRow decided(int i) {
        List<List<Option>> out = new ArrayList<>();
        List<List<ReadLetter.Option>> own = known.get(key(i));
        for (int s = 0; s < shapes.get(i).size(); s++) {
            out.add(options(shapes.get(i).get(s), own == null ? List.of() : own.get(s)));
        }
        return new ReadRow(rows.get(i), out);
    }

    /** What the shape may be, weighed with what it was read as here. */
    private static List<Option> options(ShapeClass c, List<ReadLetter.Option> here) {
        if (c.candidates().isEmpty()) {
            return List.of(new Option("?", 0));
        }
        List<Option> out = new ArrayList<>();
        double sum = 0;
        for (String text : c.candidates()) {
            double seen = here.stream()
                    .filter(o -> o.text().equals(text))
                    .mapToDouble(ReadLetter.Option::likelihood)
                    .sum();
            double weight = c.share(text) * (UNREAD + seen);
            sum += weight;
            out.add(new Option(text, weight));
        }
        double all = sum;
        // where the candidates themselves won few of the votes, the shape is no letter that anyone knows
        double known = c.candidates().stream().mapToDouble(c::share).sum();
        return out.stream()
                .map(o -> new Option(o.text(), o.likelihood() / all * known))
                .sorted((a, b) -> Double.compare(b.likelihood(), a.likelihood()))
                .toList();
    }
}
