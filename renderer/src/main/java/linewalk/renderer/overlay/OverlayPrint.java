package linewalk.renderer.overlay;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import linewalk.drawing.Sheet;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.util.Matrix;

/**
 * Writes the overlay: a first page with the legend, then each sheet upright at its displayed size under what was read of
 * it, each followed by the text of its findings.
 */
public final class OverlayPrint {

    private final OverlayJob job;
    private final OverlayBook book;
    private final Originals originals;

    private OverlayPrint(OverlayJob job, OverlayBook book, Originals originals) {
        this.job = job;
        this.book = book;
        this.originals = originals;
    }

    /**
     * The same job gives the same bytes.
     *
     * @param sheetsDone told after each sheet how many are done
     * @throws IllegalArgumentException for a job without sheets
     */
    public static void write(OverlayJob job, OutputStream out, IntConsumer sheetsDone) throws IOException {
        if (job.sheets().isEmpty()) {
            throw new IllegalArgumentException("an overlay of no sheets");
        }
        try (OverlayBook book = new OverlayBook();
                Originals originals = new Originals(job.sources(), book.document())) {
            new OverlayPrint(job, book, originals).print(sheetsDone);
            book.write(title(job), job.date(), out);
        }
    }

    private static String title(OverlayJob job) {
        return job.setTitle() + ": what was read of the sheets";
    }

    private void print(IntConsumer sheetsDone) throws IOException {
        TextPages first = new TextPages(book, job.sheets().get(0));
        first.write(title(job), new FrontPage(job, first.columnWidth()).rows());
        int done = 0;
        for (Sheet sheet : job.sheets()) {
            print(sheet);
            sheetsDone.accept(++done);
        }
    }

    private void print(Sheet sheet) throws IOException {
        List<Numbered> findings = Numbered.on(sheet, job.set());
        OverlayBook.Page page = book.newPage(sheet.widthPt(), sheet.heightPt(), 1);
        Optional<PDFormXObject> form = originals.form(sheet.page());
        Optional<Matrix> upright = Originals.toDisplayed(sheet);
        boolean shown = form.isPresent() && upright.isPresent();
        if (shown) {
            page.lieOver(form.get(), upright.get());
        }
        new SheetOverlay(job.set(), sheet, page.canvas(), originals.ink(sheet)).paint(findings, !shown);
        page.entry(Words.titled(sheet));
        page.finish();
        if (!findings.isEmpty()) {
            TextPages text = new TextPages(book, sheet);
            text.write(
                    "Sheet " + sheet.name() + ": findings and doubts",
                    FindingRows.of(findings, sheet, text.columnWidth()));
        }
    }
}
