package linewalk.renderer.iso;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import linewalk.renderer.sheet.Canvas;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Keeps what a symbol draws, in points, in order. */
final class InkLog extends PdfBoxGraphics2D {

    private static final FontRenderContext MEASURE = new FontRenderContext(null, true, true);

    /** A stroked line, with the area it covers. */
    record Stroked(Shape line, double widthPt, boolean dashed, Shape area) {}

    record Filled(Shape area, Color color) {}

    /** A piece of lettering, with the box around its ink. */
    record Lettered(String text, Font font, Color color, Rectangle2D box) {

        double capitalsPt() {
            return font.createGlyphVector(MEASURE, "H").getVisualBounds().getHeight();
        }
    }

    final List<Stroked> strokes = new ArrayList<>();
    final List<Filled> fills = new ArrayList<>();
    final List<Lettered> texts = new ArrayList<>();

    private InkLog(PDDocument doc) throws IOException {
        super(doc, 1000, 1000);
    }

    static InkLog of(Symbol symbol) {
        return of(symbol, 0, 0);
    }

    static InkLog of(Symbol symbol, double xPt, double yPt) {
        try (PDDocument doc = new PDDocument()) {
            InkLog log = new InkLog(doc);
            symbol.paint(new Canvas(log), xPt, yPt);
            log.dispose();
            return log;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void draw(Shape shape) {
        BasicStroke stroke = (BasicStroke) getStroke();
        // the butts of dashes lie on the line, so the whole line covers what they cover
        BasicStroke whole = new BasicStroke(
                stroke.getLineWidth(), stroke.getEndCap(), stroke.getLineJoin(), stroke.getMiterLimit());
        strokes.add(new Stroked(
                shape, stroke.getLineWidth(), stroke.getDashArray() != null, whole.createStrokedShape(shape)));
    }

    @Override
    public void fill(Shape shape) {
        fills.add(new Filled(shape, getColor()));
    }

    @Override
    public void drawString(String text, float x, float y) {
        Rectangle2D ink = getFont().createGlyphVector(MEASURE, text).getVisualBounds();
        texts.add(new Lettered(
                text,
                getFont(),
                getColor(),
                new Rectangle2D.Double(x + ink.getX(), y + ink.getY(), ink.getWidth(), ink.getHeight())));
    }

    List<String> words() {
        return texts.stream().map(Lettered::text).toList();
    }

    boolean shows(String text) {
        return words().contains(text);
    }

    Lettered find(String text) {
        return texts.stream().filter(t -> t.text().equals(text)).findFirst().orElseThrow();
    }
}
