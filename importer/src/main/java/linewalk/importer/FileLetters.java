package linewalk.importer;

import java.io.IOException;
import java.nio.file.Path;
import java.util.function.Supplier;
import linewalk.drawing.UserError;
import linewalk.importer.ocr.LetterReader;
import linewalk.importer.page.MarkCollector;
import linewalk.importer.page.PageGeometry;
import linewalk.importer.stroke.LetterBook;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

/** The letter book of a file: made when the first page asks for it; other pages wait for it. */
final class FileLetters implements Supplier<LetterBook> {

    /** Pages that the book is made from, evenly spread: more teach nothing new and would only take memory. */
    private static final int MOST_PAGES = 40;

    private final Path file;
    private LetterBook book;
    private LetterReader.Missing missing;

    FileLetters(Path file) {
        this.file = file;
    }

    @Override
    public synchronized LetterBook get() {
        if (missing != null) {
            throw missing;
        }
        if (book == null) {
            try {
                book = make();
            } catch (LetterReader.Missing e) {
                missing = e;
                throw e;
            }
        }
        return book;
    }

    private LetterBook make() {
        LetterBook.Maker maker = new LetterBook.Maker();
        try (PDDocument document = Source.open(file);
                LetterReader reader = LetterReader.lazy()) {
            int pages = document.getNumberOfPages();
            int taken = Math.min(pages, MOST_PAGES);
            for (int i = 0; i < taken; i++) {
                add(document.getPage((int) ((long) i * pages / taken)), maker);
            }
            return maker.make(reader);
        } catch (IOException e) {
            throw new UserError(file + " cannot be read to its end (" + e.getMessage() + "); copy it again", e);
        }
    }

    private static void add(PDPage page, LetterBook.Maker maker) throws IOException {
        try {
            maker.add(MarkCollector.collect(page, PageGeometry.of(page)));
        } catch (MarkCollector.TooDense e) {
            // that page will be a finding of its own; the others teach enough
        }
    }
}
