package linewalk.importer.stroke;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import linewalk.importer.lettering.SeenBlanks;
import linewalk.importer.ocr.LetterReader;
import linewalk.importer.ocr.ReadLetter;

/**
 * All pages' shapes to a book that says what each is. Rows with open shapes are read by the letter reader, longest first,
 * until every shape is sure; the zones in the border, whose order is known, vote too.
 */
final class BookMaker {

    /** The border leaves no choice, so it counts for several lines read. */
    private static final double BORDER_VOTE = 3;

    private static final double LIKELY = 0.6;

    private final LetterReader reader;
    private final ShapeBook book = new ShapeBook();
    private final SeenBlanks blanks = new SeenBlanks();
    private final Set<String> read = new HashSet<>();

    BookMaker(LetterReader reader) {
        this.reader = reader;
    }

    private record Lines(Row row, List<ShapeClass> shapes, double blank) {}

    ShapeBook of(List<PageInk> pages) {
        List<Lines> lines = new ArrayList<>();
        for (PageInk page : pages) {
            double blank = Blanks.from(page.rows());
            for (Row r : page.rows()) {
                List<ShapeClass> shapes =
                        r.signs().stream().map(s -> book.of(s, r)).toList();
                lines.add(new Lines(r, shapes, blank));
                words(r, shapes, blank);
            }
        }
        lines.sort(Comparator.comparingInt((Lines l) -> -l.row().signs().size()));
        book.settle();
        for (Lines l : lines) {
            if (!l.shapes().stream().allMatch(ShapeClass::sure)) {
                look(l);
            }
        }
        pages.forEach(this::singles);
        pages.forEach(p -> Border.of(p, book).forEach((shape, text) -> shape.vote(text, BORDER_VOTE)));
        book.settle();
        book.blank(blanks.limit(
                Blanks.from(pages.stream().flatMap(p -> p.rows().stream()).toList())));
        return book;
    }

    private static void words(Row r, List<ShapeClass> shapes, double blank) {
        for (int i = 0; i < shapes.size(); i++) {
            boolean last = i > 0 && r.gap(i - 1) < blank;
            boolean next = i + 1 < shapes.size() && r.gap(i) < blank;
            shapes.get(i).seen(last || next);
        }
    }

    /** Shapes that no row has, of letters that have the size and pen of others. */
    private void singles(PageInk page) {
        SingleTest test = new SingleTest(page);
        for (Row r : page.singles()) {
            if (test.lettering(r) && book.find(Shape.of(r.signs().get(0), r)) == null) {
                List<ReadLetter> letters = reader.line(RowPicture.of(r));
                if (letters.size() == 1 && letters.get(0).likelihood() > LIKELY) {
                    vote(List.of(book.of(r.signs().get(0), r)), letters);
                }
            }
        }
    }

    private void look(Lines l) {
        if (read.add(book.key(l.shapes(), l.row(), l.blank()))) {
            List<ReadLetter> letters = RowPicture.read(l.row(), reader);
            vote(l.shapes(), letters);
            for (int i = 1; i < letters.size(); i++) {
                if (letters.get(i - 1) != null && letters.get(i) != null) {
                    blanks.note(l.row().gap(i - 1), letters.get(i).afterBlank());
                }
            }
            book.settle();
        }
    }

    private static void vote(List<ShapeClass> shapes, List<ReadLetter> letters) {
        for (int i = 0; i < shapes.size(); i++) {
            if (letters.get(i) != null) {
                ShapeClass c = shapes.get(i);
                letters.get(i).options().forEach(o -> c.vote(o.text(), o.likelihood()));
            }
        }
    }
}
