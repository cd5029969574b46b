package linewalk.samples.sheet;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import linewalk.samples.style.DraftingStyle;
import linewalk.samples.symbol.Ink;
import linewalk.samples.symbol.Lettering;
import linewalk.samples.symbol.Pen;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.util.Matrix;

/** Ink in points of the page as displayed, y down; it keeps a record of texts and strokes. */
final class Canvas implements Ink {
    private static final double CAPITALS = 0.72;

    private final PDPageContentStream content;
    private final DraftingStyle style;
    private final Fonts fonts;
    private final Strokes pens;
    private final double heightPt;
    private final List<DrawnText> texts = new ArrayList<>();
    private final List<double[]> strokes = new ArrayList<>();
    private DrawnText.Role role = DrawnText.Role.OTHER;

    Canvas(PDPageContentStream content, DraftingStyle style, Fonts fonts) {
        this.content = content;
        this.style = style;
        this.fonts = fonts;
        this.pens = Strokes.of(content, style);
        this.heightPt = Placement.pt(style.heightMm());
    }

    List<DrawnText> texts() {
        return List.copyOf(texts);
    }

    List<double[]> strokes() {
        return List.copyOf(strokes);
    }

    Fonts fonts() {
        return fonts;
    }

    /** What the texts that follow are for. */
    Canvas as(DrawnText.Role next) {
        role = next;
        return this;
    }

    @Override
    public void line(Pen pen, double... xy) {
        draw(() -> pens.line(pen, raised(xy)));
        record(false, xy);
    }

    @Override
    public void closed(Pen pen, double... xy) {
        draw(() -> pens.closed(pen, raised(xy)));
        record(true, xy);
    }

    @Override
    public void fill(double... xy) {
        draw(() -> pens.fill(raised(xy)));
        record(true, xy);
    }

    @Override
    public void head(double... xy) {
        draw(() -> pens.head(raised(xy)));
        record(true, xy);
    }

    @Override
    public void circle(Pen pen, double x, double y, double radius) {
        draw(() -> pens.circle(pen, x, up(y), radius));
        record(true, arc(x, y, radius, 0, 2 * Math.PI * 15 / 16));
    }

    void hop(Pen pen, double x, double y, double radius, boolean upright) {
        double start = upright ? -Math.PI / 2 : -Math.PI;
        draw(() -> pens.half(pen, x, up(y), radius, upright));
        record(false, arc(x, y, radius, start, start + Math.PI));
    }

    @Override
    public void dot(double x, double y, double radius) {
        draw(() -> pens.dot(x, up(y), radius));
    }

    @Override
    public void text(Lettering lettering, double x, double y, String text) {
        double size = lettering.height() * fonts.scale();
        double width = fonts.width(text, lettering.height(), lettering.bold());
        double along =
                switch (lettering.align()) {
                    case LEFT -> 0;
                    case CENTRE -> -width / 2;
                    case RIGHT -> -width;
                };
        double half = CAPITALS * size / 2;
        if (lettering.turned()) {
            show(lettering, size, new Matrix(0, 1, -1, 0, (float) (x + half), (float) (up(y) + along)), text);
            keep(text, new Box(x - half, y - along - width, x + half, y - along), true);
        } else {
            show(lettering, size, new Matrix(1, 0, 0, 1, (float) (x + along), (float) (up(y) - half)), text);
            keep(text, new Box(x + along, y - half, x + along + width, y + half), false);
        }
    }

    private void keep(String text, Box box, boolean turned) {
        texts.add(new DrawnText(text, box, turned, role));
    }

    private void show(Lettering lettering, double size, Matrix start, String text) {
        if (fonts.outlined()) {
            draw(() -> pens.painted(Outlines.of(fonts.font(lettering.bold()), text, size, start)));
            return;
        }
        if (fonts.font(lettering.bold()) == null) {
            List<List<double[]>> letters = fonts.strokes().letters(text, size, start);
            draw(() -> pens.letters(
                    fonts.strokes().pen(size, lettering.bold()), fonts.strokes().onePath(), letters));
            return;
        }
        draw(() -> {
            content.beginText();
            content.setFont(fonts.font(lettering.bold()), (float) size);
            if (style.singleGlyphs()) {
                showGlyphs(lettering, size, start, text);
            } else {
                content.setTextMatrix(start);
                content.showText(text);
            }
            content.endText();
        });
    }

    /** As some programs do: every glyph on its own, blanks left out. */
    private void showGlyphs(Lettering lettering, double size, Matrix start, String text) throws IOException {
        double along = 0;
        for (int i = 0; i < text.length(); i++) {
            String glyph = text.substring(i, i + 1);
            if (!glyph.equals(" ")) {
                content.setTextMatrix(Matrix.concatenate(start, Matrix.getTranslateInstance((float) along, 0)));
                content.showText(glyph);
            }
            along += fonts.font(lettering.bold()).getStringWidth(glyph) / 1000 * size;
        }
    }

    private static double[] arc(double x, double y, double radius, double from, double to) {
        double[] xy = new double[32];
        for (int i = 0; i < 16; i++) {
            double angle = from + (to - from) * i / 15;
            xy[2 * i] = x + radius * Math.cos(angle);
            xy[2 * i + 1] = y + radius * Math.sin(angle);
        }
        return xy;
    }

    private void record(boolean closed, double... xy) {
        for (int i = 0; i + 3 < xy.length; i += 2) {
            strokes.add(new double[] {xy[i], xy[i + 1], xy[i + 2], xy[i + 3]});
        }
        if (closed) {
            strokes.add(new double[] {xy[xy.length - 2], xy[xy.length - 1], xy[0], xy[1]});
        }
    }

    /** With y up. */
    private double[] raised(double... xy) {
        double[] out = xy.clone();
        for (int i = 1; i < out.length; i += 2) {
            out[i] = up(out[i]);
        }
        return out;
    }

    private double up(double y) {
        return heightPt - y;
    }

    private interface Drawing {
        void run() throws IOException;
    }

    private static void draw(Drawing drawing) {
        try {
            drawing.run();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
