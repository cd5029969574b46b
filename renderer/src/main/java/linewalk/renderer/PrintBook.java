package linewalk.renderer;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import linewalk.renderer.sheet.Book;
import linewalk.renderer.sheet.PdfBook;

/** Prints of several traces in one file, a bookmark for each chapter. */
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
        PrintJob first =
                chapters.stream().flatMap(c -> c.jobs().stream()).findFirst().orElseThrow();
        try (SourcePages sources = new SourcePages(first);
                Book book = new PdfBook(
                        first.paper().widthPt(), first.paper().heightPt(), TracePrint.title(first), first.date())) {
            for (Chapter c : chapters) {
                book.bookmark(c.title(), !c.jobs().isEmpty());
                for (PrintJob job : c.jobs()) {
                    TracePrint.print(job, book, sources);
                }
            }
            book.write(0, out);
        }
    }
}
