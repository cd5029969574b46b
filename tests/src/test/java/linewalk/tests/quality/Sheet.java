package linewalk.tests.quality;

import java.awt.geom.Point2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;
import linewalk.renderer.sheet.Marked;
import linewalk.renderer.sheet.Page;
import linewalk.renderer.sheet.PdfBook;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;

/** One page drawn for a test, through the same book as every print. */
final class Sheet {

    private Sheet() {}

    /** Measures a page of 300 by 200 points. */
    static Quality measured(Consumer<Canvas> drawing) {
        try (PdfBook book = new PdfBook(300, 200, "test", LocalDate.EPOCH)) {
            Page page = book.newPage();
            Canvas canvas = page.canvas();
            canvas.pen(Ink.BLACK, Ink.line(1));
            drawing.accept(canvas);
            page.finish();
            ByteArrayOutputStream pdf = new ByteArrayOutputStream();
            book.write(0, pdf);
            try (PDDocument document = Loader.loadPDF(pdf.toByteArray())) {
                return Quality.of(document);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A flow line drawn where it is said to run. */
    static void line(Canvas c, String net, double... xyPt) {
        List<Point2D> course = course(xyPt);
        Marked.line(c, net, course, k -> {
            k.pen(Ink.PATH, Ink.line(2));
            k.polyline(course);
        });
    }

    static List<Point2D> course(double... xyPt) {
        List<Point2D> course = new ArrayList<>();
        for (int i = 0; i < xyPt.length; i += 2) {
            course.add(new Point2D.Double(xyPt[i], xyPt[i + 1]));
        }
        return course;
    }
}
