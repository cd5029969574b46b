package linewalk.importer;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import linewalk.drawing.PageKey;
import linewalk.drawing.Point;
import linewalk.drawing.SetSettings;
import linewalk.drawing.SheetReading;
import linewalk.importer.page.MarkCollector;
import linewalk.importer.page.Marks;
import linewalk.importer.page.PageGeometry;
import linewalk.importer.stroke.LetterBook;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.util.Matrix;

/**
 * A small drawn case. All places are points as displayed, origin at the top left, whatever the page's own user space:
 * the options turn, crop and scale the page under the same drawing.
 */
final class Drawn {

    private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    /** A Bézier arm of this share of the radius draws a quarter of a circle. */
    private static final double QUARTER = 0.5523;

    private final double widthPt;
    private final double heightPt;
    private int rotation;
    private double cropXPt;
    private double cropYPt;
    private double unit = 1;
    private boolean singleGlyphs;
    private double textPt = 9;
    private final List<Act> acts = new ArrayList<>();

    private interface Act {
        void on(PDPageContentStream out, PDFont font) throws IOException;
    }

    private Drawn(double widthPt, double heightPt) {
        this.widthPt = widthPt;
        this.heightPt = heightPt;
    }

    /** An A3 sheet lying on its side. */
    static Drawn page() {
        return page(1190, 842);
    }

    static Drawn page(double widthPt, double heightPt) {
        return new Drawn(widthPt, heightPt);
    }

    /** {@code /Rotate}. */
    Drawn turned(int clockwiseDeg) {
        rotation = clockwiseDeg;
        return this;
    }

    /** The CropBox starts here, inside a larger MediaBox. */
    Drawn cropAt(double xPt, double yPt) {
        cropXPt = xPt;
        cropYPt = yPt;
        return this;
    }

    Drawn userUnit(double points) {
        unit = points;
        return this;
    }

    /** Each letter is placed on its own. */
    Drawn glyphByGlyph() {
        singleGlyphs = true;
        return this;
    }

    Drawn pen(double widthPt, double... dashPt) {
        acts.add((out, font) -> {
            float[] dash = new float[dashPt.length];
            for (int i = 0; i < dash.length; i++) {
                dash[i] = (float) (dashPt[i] / unit);
            }
            out.setLineWidth((float) (widthPt / unit));
            out.setLineDashPattern(dash, 0);
        });
        return this;
    }

    Drawn color(float gray) {
        acts.add((out, font) -> {
            out.setStrokingColor(gray);
            out.setNonStrokingColor(gray);
        });
        return this;
    }

    Drawn line(double... xyPt) {
        return path(xyPt, false, false);
    }

    Drawn polygon(double... xyPt) {
        return path(xyPt, true, false);
    }

    Drawn filled(double... xyPt) {
        return path(xyPt, true, true);
    }

    Drawn rect(double x0, double y0, double x1, double y1) {
        return polygon(x0, y0, x1, y0, x1, y1, x0, y1);
    }

    /** Four single strokes instead of one closed one. */
    Drawn rectInPieces(double x0, double y0, double x1, double y1) {
        return line(x0, y0, x1, y0).line(x1, y0, x1, y1).line(x1, y1, x0, y1).line(x0, y1, x0, y0);
    }

    Drawn circle(double x, double y, double r) {
        return round(x, y, r, false);
    }

    /** A join dot. */
    Drawn dot(double x, double y) {
        return dot(x, y, 2.5);
    }

    Drawn dot(double x, double y, double r) {
        return round(x, y, r, true);
    }

    /** Half a circle over a chord; it bulges to the left of the way from start to end. */
    Drawn arc(double x0, double y0, double x1, double y1) {
        double ax = (x1 - x0) / 2;
        double ay = (y1 - y0) / 2;
        double k = 4.0 / 3;
        acts.add((out, font) -> {
            move(out, x0, y0);
            curve(out, x0 + k * ay, y0 - k * ax, x1 + k * ay, y1 - k * ax, x1, y1);
            out.stroke();
        });
        return this;
    }

    /** A level line that hops over what crosses it at x, as one stroke. */
    Drawn hopping(double x0, double x, double x1, double y) {
        acts.add((out, font) -> {
            move(out, x0, y);
            Point before = user(x - 5, y);
            out.lineTo((float) before.xPt(), (float) before.yPt());
            curve(out, x - 5, y - 6.7, x + 5, y - 6.7, x + 5, y);
            Point end = user(x1, y);
            out.lineTo((float) end.xPt(), (float) end.yPt());
            out.stroke();
        });
        return this;
    }

    /** A Bézier curve: start, two arms, end. */
    Drawn curve(double... xyPt) {
        acts.add((out, font) -> {
            move(out, xyPt[0], xyPt[1]);
            curve(out, xyPt[2], xyPt[3], xyPt[4], xyPt[5], xyPt[6], xyPt[7]);
            out.stroke();
        });
        return this;
    }

    /** A five-cornered outline with its tip to the right where {@code xTip} is the larger, else to the left. */
    Drawn flag(double xBack, double y0, double xTip, double y1) {
        double neck = xTip - Math.signum(xTip - xBack) * (y1 - y0) / 2;
        return polygon(xBack, y0, neck, y0, xTip, (y0 + y1) / 2, neck, y1, xBack, y1);
    }

    /** Size of the lettering that follows. */
    Drawn lettering(double sizePt) {
        textPt = sizePt;
        return this;
    }

    /** The baseline starts at the place. */
    Drawn text(double x, double y, String text) {
        return text(x, y, 0, text);
    }

    Drawn text(double x, double y, double clockwiseDeg, String text) {
        double size = textPt;
        acts.add((out, font) -> {
            double a = Math.toRadians(clockwiseDeg);
            double along = 0;
            for (String s : singleGlyphs ? text.split("") : new String[] {text}) {
                double px = x + along * Math.cos(a);
                double py = y + along * Math.sin(a);
                Point start = user(px, py);
                Point right = user(px + Math.cos(a), py + Math.sin(a));
                Point up = user(px + Math.sin(a), py - Math.cos(a));
                out.beginText();
                out.setFont(font, (float) size);
                out.setTextMatrix(new Matrix(
                        (float) (right.xPt() - start.xPt()),
                        (float) (right.yPt() - start.yPt()),
                        (float) (up.xPt() - start.xPt()),
                        (float) (up.yPt() - start.yPt()),
                        (float) start.xPt(),
                        (float) start.yPt()));
                out.showText(s);
                out.endText();
                along += font.getStringWidth(s) / 1000 * size;
            }
        });
        return this;
    }

    SheetReading read() {
        return read(new SetSettings(null, null, null));
    }

    SheetReading read(SetSettings settings) {
        return read(settings, Drawn::noBook);
    }

    SheetReading read(SetSettings settings, Supplier<LetterBook> book) {
        return onPage((document, page) -> {
            try (SheetReader reader = new SheetReader(settings, book)) {
                return reader.read(document, 0, new PageKey("case.pdf", 1));
            }
        });
    }

    Marks marks() {
        return onPage((document, page) -> MarkCollector.collect(page, PageGeometry.of(page)));
    }

    private interface PageRead<T> {
        T of(PDDocument document, PDPage page) throws IOException;
    }

    private <T> T onPage(PageRead<T> read) {
        try (PDDocument document = Loader.loadPDF(pdf())) {
            return read.of(document, document.getPage(0));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The page as a file. */
    byte[] pdf() {
        try (PDDocument document = new PDDocument();
                InputStream ttf = PDDocument.class.getResourceAsStream(FONT)) {
            PDFont font = PDType0Font.load(document, ttf);
            PDPage page = newPage();
            document.addPage(page);
            try (PDPageContentStream out = new PDPageContentStream(document, page)) {
                out.setLineWidth((float) (1 / unit));
                for (Act act : acts) {
                    act.on(out, font);
                }
            }
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes);
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private PDPage newPage() {
        float w = (float) userWidth();
        float h = (float) userHeight();
        float x = (float) cropXPt;
        float y = (float) cropYPt;
        PDPage page = new PDPage(new PDRectangle(0, 0, w + 2 * x, h + 2 * y));
        page.setCropBox(new PDRectangle(x, y, w, h));
        page.setRotation(rotation);
        if (unit != 1) {
            page.getCOSObject().setItem(COSName.getPDFName("UserUnit"), new COSFloat((float) unit));
        }
        return page;
    }

    private double userWidth() {
        return (rotation % 180 == 0 ? widthPt : heightPt) / unit;
    }

    private double userHeight() {
        return (rotation % 180 == 0 ? heightPt : widthPt) / unit;
    }

    /** Displayed to user space: a page turned clockwise shows its user space's "up" to the right. */
    private Point user(double xPt, double yPt) {
        double x = xPt / unit;
        double y = yPt / unit;
        Point p = new Point(x, userHeight() - y);
        if (rotation == 90) {
            p = new Point(y, x);
        } else if (rotation == 180) {
            p = new Point(userWidth() - x, y);
        } else if (rotation == 270) {
            p = new Point(userWidth() - y, userHeight() - x);
        }
        return p.plus(cropXPt, cropYPt);
    }

    private Drawn path(double[] xy, boolean closed, boolean fill) {
        acts.add((out, font) -> {
            move(out, xy[0], xy[1]);
            for (int i = 2; i < xy.length; i += 2) {
                Point p = user(xy[i], xy[i + 1]);
                out.lineTo((float) p.xPt(), (float) p.yPt());
            }
            if (closed) {
                out.closePath();
            }
            paint(out, fill);
        });
        return this;
    }

    private Drawn round(double x, double y, double r, boolean fill) {
        double k = QUARTER * r;
        acts.add((out, font) -> {
            move(out, x + r, y);
            curve(out, x + r, y + k, x + k, y + r, x, y + r);
            curve(out, x - k, y + r, x - r, y + k, x - r, y);
            curve(out, x - r, y - k, x - k, y - r, x, y - r);
            curve(out, x + k, y - r, x + r, y - k, x + r, y);
            out.closePath();
            paint(out, fill);
        });
        return this;
    }

    private static void paint(PDPageContentStream out, boolean fill) throws IOException {
        if (fill) {
            out.fill();
        } else {
            out.stroke();
        }
    }

    private void move(PDPageContentStream out, double x, double y) throws IOException {
        Point p = user(x, y);
        out.moveTo((float) p.xPt(), (float) p.yPt());
    }

    private void curve(PDPageContentStream out, double x1, double y1, double x2, double y2, double x3, double y3)
            throws IOException {
        Point a = user(x1, y1);
        Point b = user(x2, y2);
        Point c = user(x3, y3);
        out.curveTo(
                (float) a.xPt(), (float) a.yPt(), (float) b.xPt(), (float) b.yPt(), (float) c.xPt(), (float) c.yPt());
    }

    private static LetterBook noBook() {
        throw new AssertionError("nothing here is lettered in strokes");
    }
}
