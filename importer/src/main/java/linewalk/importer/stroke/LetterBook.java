package linewalk.importer.stroke;

import java.util.ArrayList;
import java.util.List;
import linewalk.importer.ocr.LetterReader;
import linewalk.importer.page.Marks;

/** What the drawn letters of a file look like; made once from its pages, then used by all threads. */
public final class LetterBook {

    final ShapeBook shapes;

    private LetterBook(ShapeBook shapes) {
        this.shapes = shapes;
    }

    /** Collects pages one after the other; their marks need not be kept. */
    public static final class Maker {
        private final List<PageInk> pages = new ArrayList<>();

        public void add(Marks page) {
            PageInk ink = PageInk.of(page);
            if (!ink.none()) {
                pages.add(ink);
            }
        }

        /** @throws LetterReader.Missing where letters can't be read on this machine */
        public LetterBook make(LetterReader reader) {
            return new LetterBook(new BookMaker(reader).of(pages));
        }
    }
}
