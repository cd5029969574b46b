package linewalk.renderer;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import linewalk.renderer.sheet.Book;
import linewalk.renderer.sheet.Medium;

/** Prints of several traces in one book, a bookmark for each chapter. */
public final class PrintBook {

    /**
     * A bookmark and what it leads to.
     *
     * @param jobs of one set and one paper; none where there is nothing to print
     */
    public record Chapter(String title, List<PrintJob> jobs) {
        public Chapter {
            jobs = List.copyOf(jobs);
        }
    }

    private PrintBook() {}

    /** Writes a PDF; at least one chapter must have a job. The same chapters give the same bytes. */
    public static void write(List<Chapter> chapters, OutputStream out) throws IOException {
        try (Book book = book(chapters, Medium.PDF)) {
            book.write(0, out);
        }
    }

    /** All pages of all chapters, ready to be written; the caller closes the book. */
    public static Book book(List<Chapter> chapters, Medium medium) throws IOException {
        PrintJob first =
                chapters.stream().flatMap(c -> c.jobs().stream()).findFirst().orElseThrow();
        PrintForm form = TracePrint.settled(first).form();
        MatchMarks letters = new MatchMarks();
        return filled(first.in(form), medium, (book, sources) -> {
            for (Chapter c : chapters) {
                book.bookmark(c.title(), !c.jobs().isEmpty());
                for (PrintJob job : c.jobs()) {
                    TracePrint.print(job.in(form), book, sources, letters);
                }
            }
        });
    }

    /** Draws all pages. */
    interface Content {
        void into(Book book, SourcePages sources) throws IOException;
    }

    /** A book of the size and title that the first job wants; closed again where it cannot be filled. */
    static Book filled(PrintJob first, Medium medium, Content content) throws IOException {
        String title = first.facts().title() + ": " + first.subject().title();
        Book book = medium.book(first.form().widthPt(), first.form().heightPt(), title, first.date());
        boolean isFilled = false;
        try (SourcePages sources = new SourcePages(first)) {
            content.into(book, sources);
            isFilled = true;
            return book;
        } finally {
            if (!isFilled) {
                book.close();
            }
        }
    }
}
