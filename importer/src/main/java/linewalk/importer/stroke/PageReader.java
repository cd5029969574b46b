package linewalk.importer.stroke;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linewalk.importer.ocr.LetterReader;
import linewalk.importer.ocr.ReadLetter;
import linewalk.importer.stroke.ReadRow.Option;

/** A page's lettering by the book; rows with shapes that may be more than one letter are looked at themselves. */
final class PageReader {

    /** Below this mean likelihood a row is no lettering. */
    private static final double LETTERING = 0.45;

    /** The same for rows of a height that no text on the page has. */
    private static final double STRANGE = 0.8;

    private static final double SAME_HEIGHT = 0.05;

    /** A letter may be what its line was not read as. */
    private static final double UNREAD = 0.05;

    private final PageInk page;
    private final ShapeBook book;
    private final LetterReader reader;
    private final double blank;
    private final Map<String, List<ReadLetter>> looks = new HashMap<>();

    PageReader(PageInk page, ShapeBook book, LetterReader reader) {
        this.page = page;
        this.book = book;
        this.reader = reader;
        this.blank = book.blank();
    }

    double blank() {
        return blank;
    }

    List<ReadRow> read() {
        List<ReadRow> out = new ArrayList<>();
        for (Row r : page.rows()) {
            ReadRow read = row(r);
            if (read.likelihood() > (ofUsualHeight(r) ? LETTERING : STRANGE)) {
                out.add(read);
            }
        }
        SingleTest test = new SingleTest(page);
        Set<Piece> taken = new HashSet<>();
        for (Row r : page.singles()) {
            Shape shape = Shape.of(r.signs().get(0), r);
            ShapeClass known = book.find(shape);
            if (single(r, known == null && test.lettering(r) ? book.nearest(shape) : known, test, out)) {
                taken.add(first(r));
            }
        }
        page.turned().stream()
                .filter(r -> !taken.contains(first(r)))
                .forEach(r -> single(r, book.find(Shape.of(r.signs().get(0), r)), test, out));
        return out;
    }

    private static Piece first(Row single) {
        return single.signs().get(0).pieces().get(0);
    }

    private static boolean single(Row r, ShapeClass c, SingleTest test, List<ReadRow> out) {
        return c != null
                && !c.candidates().isEmpty()
                && test.letter(r, c.candidates().get(0))
                && out.add(new ReadRow(r, List.of(options(c, List.of()))));
    }

    /** Figures may stand beside each other like letters, but they are drawn larger or smaller than these. */
    private boolean ofUsualHeight(Row row) {
        return page.rows().stream()
                .anyMatch(r -> r != row
                        && r.signs().size() > 2
                        && Math.abs(r.heightPt() - row.heightPt()) < SAME_HEIGHT * row.heightPt());
    }

    private ReadRow row(Row r) {
        List<ShapeClass> shapes = new ArrayList<>();
        r.signs().forEach(s -> shapes.add(book.find(Shape.of(s, r))));
        boolean open = shapes.stream().anyMatch(c -> c == null || c.candidates().size() != 1);
        List<ReadLetter> look = open ? look(r, shapes) : null;
        List<List<Option>> out = new ArrayList<>();
        for (int i = 0; i < shapes.size(); i++) {
            out.add(options(
                    shapes.get(i),
                    look == null || look.get(i) == null
                            ? List.of()
                            : look.get(i).options()));
        }
        SmallLetters.mend(r, shapes, out, blank);
        return new ReadRow(r, out)
                .trimmed(blank, i -> shapes.get(i) != null && shapes.get(i).strange());
    }

    private List<ReadLetter> look(Row r, List<ShapeClass> shapes) {
        if (shapes.contains(null)) {
            return RowPicture.read(r, reader);
        }
        return looks.computeIfAbsent(book.key(shapes, r, blank), k -> RowPicture.read(r, reader));
    }

    /** What the shape may be, weighed with what it was read as here. */
    private static List<Option> options(ShapeClass c, List<ReadLetter.Option> here) {
        if (c == null || c.candidates().isEmpty()) {
            return here.isEmpty()
                    ? List.of(new Option("?", 0))
                    : here.stream()
                            .map(o -> new Option(o.text(), o.likelihood()))
                            .toList();
        }
        if (c.candidates().size() == 1) {
            String only = c.candidates().get(0);
            return List.of(new Option(only, c.likelihood(only)));
        }
        List<Option> out = new ArrayList<>();
        double sum = 0;
        for (String text : c.candidates()) {
            double seen = here.stream()
                    .filter(o -> c.shape.cased(o.text()).equals(text))
                    .mapToDouble(ReadLetter.Option::likelihood)
                    .sum();
            double weight = c.share(text) * (UNREAD + seen);
            sum += weight;
            out.add(new Option(text, weight));
        }
        double all = sum;
        return out.stream()
                .map(o -> new Option(o.text(), o.likelihood() / all))
                .sorted((a, b) -> Double.compare(b.likelihood(), a.likelihood()))
                .toList();
    }
}
