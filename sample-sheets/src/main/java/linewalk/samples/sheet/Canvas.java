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
    private static final double CIRCLE = 0.5523;

    private final PDPageContentStream content;
    private final DraftingStyle style;
    private final Fonts fonts;
    private final double heightPt;
    private final List<DrawnText> texts = new ArrayList<>();
    private final List<double[]> strokes = new ArrayList<>();
    private DrawnText.Role role = DrawnText.Role.OTHER;

    Canvas(PDPageContentStream content, DraftingStyle style, Fonts fonts) {
        this.content = content;
        this.style = style;
        this.fonts = fonts;
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
        draw(() -> {
            dress(pen);
            path(xy);
            content.stroke();
        });
        record(false, xy);
    }

    @Override
    public void closed(Pen pen, double... xy) {
        draw(() -> {
            dress(pen);
            path(xy);
            content.closeAndStroke();
        });
        record(true, xy);
    }

    @Override
    public void fill(double... xy) {
        draw(() -> {
            path(xy);
            content.fill();
        });
        record(true, xy);
    }

    @Override
    public void circle(Pen pen, double x, double y, double radius) {
        draw(() -> {
            dress(pen);
            round(x, up(y), radius);
            content.closeAndStroke();
        });
        double[] xy = new double[32];
        for (int i = 0; i < 16; i++) {
            xy[2 * i] = x + radius * Math.cos(i * Math.PI / 8);
            xy[2 * i + 1] = y + radius * Math.sin(i * Math.PI / 8);
        }
        record(true, xy);
    }

    @Override
    public void dot(double x, double y, double radius) {
        draw(() -> {
            round(x, up(y), radius);
            content.fill();
        });
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

    private void dress(Pen pen) throws IOException {
        double widthPt = Placement.pt(style.lineWidthMm());
        double unit = style.unitPt();
        content.setLineWidth((float)
                switch (pen) {
                    case WORKING -> widthPt;
                    case OUTLINE -> widthPt * 0.8;
                    case FRAME -> widthPt * 1.4;
                    case THIN, PILOT, DRAIN, INNER_PILOT, CHAIN -> widthPt * 0.55;
                });
        content.setLineDashPattern(
                switch (pen) {
                    case PILOT -> dashes(unit, 0.42, 0.16);
                    case DRAIN -> dashes(unit, 0.18, 0.12);
                    case INNER_PILOT -> dashes(unit, 0.13, 0.08);
                    case CHAIN -> dashes(unit, 0.7, 0.14, 0.1, 0.14);
                    default -> new float[0];
                },
                0);
    }

    private static float[] dashes(double unit, double... lengths) {
        float[] out = new float[lengths.length];
        for (int i = 0; i < lengths.length; i++) {
            out[i] = (float) (lengths[i] * unit);
        }
        return out;
    }

    private void path(double... xy) throws IOException {
        content.moveTo((float) xy[0], (float) up(xy[1]));
        for (int i = 2; i < xy.length; i += 2) {
            content.lineTo((float) xy[i], (float) up(xy[i + 1]));
        }
    }

    private void round(double x, double y, double r) throws IOException {
        double k = r * CIRCLE;
        content.moveTo((float) (x + r), (float) y);
        curve(x + r, y + k, x + k, y + r, x, y + r);
        curve(x - k, y + r, x - r, y + k, x - r, y);
        curve(x - r, y - k, x - k, y - r, x, y - r);
        curve(x + k, y - r, x + r, y - k, x + r, y);
    }

    private void curve(double x1, double y1, double x2, double y2, double x3, double y3) throws IOException {
        content.curveTo((float) x1, (float) y1, (float) x2, (float) y2, (float) x3, (float) y3);
    }

    private void record(boolean closed, double... xy) {
        for (int i = 0; i + 3 < xy.length; i += 2) {
            strokes.add(new double[] {xy[i], xy[i + 1], xy[i + 2], xy[i + 3]});
        }
        if (closed) {
            strokes.add(new double[] {xy[xy.length - 2], xy[xy.length - 1], xy[0], xy[1]});
        }
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
