package linewalk.renderer.iso;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Kind;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;
import linewalk.renderer.sheet.Lettering;
import linewalk.renderer.sheet.Page;
import linewalk.renderer.sheet.PdfBook;

/** Draws all symbols into a PDF to be looked at: {@code SymbolChart chart.pdf}. */
final class SymbolChart {

    private static final double WIDTH_PT = 1190;
    private static final double HEIGHT_PT = 842;
    private static final double MARGIN_PT = 30;
    private static final double GAP_PT = 22;

    private record Cell(String title, Symbol symbol) {

        double widthPt() {
            return Math.max(symbol.widthPt(), Lettering.widthPt(title, 9));
        }
    }

    private final List<Cell> cells = new ArrayList<>();

    private SymbolChart() {}

    public static void main(String[] args) throws IOException {
        SymbolChart chart = new SymbolChart();
        SymbolSamples.all().forEach((title, sketch) -> chart.cells.add(new Cell(title, sketch.symbol())));
        for (Kind kind : Kind.values()) {
            chart.cells.add(new Cell(kind.word() + ", 5 odd ports", new Sketch(kind, "A^ 2_ X_p L^d 5^").symbol()));
        }
        try (PdfBook book = new PdfBook(WIDTH_PT, HEIGHT_PT, "Symbols", LocalDate.of(2026, 1, 1));
                OutputStream out = Files.newOutputStream(Path.of(args[0]))) {
            chart.fill(book);
            book.write(0, out);
        }
    }

    private void fill(PdfBook book) throws IOException {
        int next = 0;
        while (next < cells.size()) {
            Page page = book.newPage();
            double y = MARGIN_PT;
            while (next < cells.size()) {
                int end = rowEnd(next);
                double height = cells.subList(next, end).stream()
                        .mapToDouble(c -> c.symbol().heightPt())
                        .max()
                        .orElse(0);
                if (y + height + 30 > HEIGHT_PT) {
                    break;
                }
                row(page.canvas(), cells.subList(next, end), y, height);
                y += height + 38;
                next = end;
            }
            page.finish();
        }
    }

    private int rowEnd(int from) {
        double x = MARGIN_PT;
        int end = from;
        while (end < cells.size() && (end == from || x + cells.get(end).widthPt() < WIDTH_PT - MARGIN_PT)) {
            x += cells.get(end).widthPt() + GAP_PT;
            end++;
        }
        return end;
    }

    private static void row(Canvas canvas, List<Cell> row, double yPt, double heightPt) {
        double x = MARGIN_PT;
        for (Cell c : row) {
            Symbol s = c.symbol();
            double left = x + (c.widthPt() - s.widthPt()) / 2;
            double top = yPt + heightPt - s.heightPt();
            canvas.pen(Ink.PALE, Ink.line(0.7));
            canvas.rect(left, top, s.widthPt(), s.heightPt());
            s.paint(canvas, left, top);
            canvas.pen(Ink.GREY, Ink.line(1));
            canvas.text(c.title(), x, yPt + heightPt + 13, 9);
            x += c.widthPt() + GAP_PT;
        }
    }
}
