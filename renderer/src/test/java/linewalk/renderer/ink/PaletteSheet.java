package linewalk.renderer.ink;

import java.awt.geom.Point2D;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import linewalk.linker.step.PressureClass;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;
import linewalk.renderer.sheet.Page;
import linewalk.renderer.sheet.PdfBook;

/** Writes one page with every class in both palettes, to be looked at. */
final class PaletteSheet {

    private PaletteSheet() {}

    /** @param args the file to write */
    public static void main(String[] args) throws IOException {
        try (PdfBook book = new PdfBook(840, 500, "Pressure classes", LocalDate.EPOCH)) {
            Page page = book.newPage();
            Canvas c = page.canvas();
            for (Palette palette : Palette.values()) {
                double x = 20 + 420 * palette.ordinal();
                for (PressureClass k : PressureClass.values()) {
                    double y = 30 + 40 * k.ordinal();
                    row(c, palette.style(k), x, y);
                    c.pen(Ink.BLACK, Ink.line(1));
                    c.text(k.word(), x, y + 4, 12);
                }
            }
            page.finish();
            book.write(0, Files.newOutputStream(Path.of(args[0])));
        }
    }

    private static void row(Canvas c, LineStyle style, double x, double y) {
        style.paintSample(c, x + 80, y - 10);
        style.paint(c, List.of(at(x + 140, y), at(x + 250, y), at(x + 250, y + 18), at(x + 320, y + 18)));
        style.paint(c, List.of(at(x + 335, y), at(x + 347, y)));
        style.paint(c, List.of(at(x + 370, y - 10), at(x + 370, y + 14)));
        ChangeMark.paintOnLine(c, x + 195, y);
    }

    private static Point2D at(double x, double y) {
        return new Point2D.Double(x, y);
    }
}
