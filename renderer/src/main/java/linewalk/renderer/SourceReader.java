package linewalk.renderer;

import java.awt.geom.AffineTransform;
import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.Line2D;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Affine;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.drawing.Sheet;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

/** Notes where letters and strokes stand on an original, as displayed, so that ours stay off them. */
final class SourceReader extends PDFGraphicsStreamEngine {

    /** Capital height over type size of common typefaces. */
    private static final double CAP_SHARE = 0.7;
    /** How far a curve may be told as a straight line. */
    private static final double FLAT_PT = 1;

    /** What stands on one page. */
    record Marks(List<SourceLetters.Letter> letters, List<Line2D> ink) {
        static final Marks NONE = new Marks(List.of(), List.of());
    }

    private final AffineTransform toDisplayed;
    private final List<SourceLetters.Letter> letters = new ArrayList<>();
    private final List<Line2D> ink = new ArrayList<>();
    private final Path2D path = new Path2D.Double();

    private SourceReader(PDPage page, AffineTransform toDisplayed) {
        super(page);
        this.toDisplayed = toDisplayed;
    }

    /** Nothing where the page cannot be read. */
    static Marks read(PDPage page, Sheet sheet) {
        try {
            SourceReader reader =
                    new SourceReader(page, transform(sheet.toPage()).createInverse());
            reader.processPage(page);
            return new Marks(reader.letters, reader.ink);
        } catch (IOException | NoninvertibleTransformException e) {
            return Marks.NONE;
        }
    }

    static AffineTransform transform(Affine a) {
        return new AffineTransform(a.a(), a.d(), a.b(), a.e(), a.c(), a.f());
    }

    @Override
    protected void showGlyph(Matrix textRendering, PDFont font, int code, Vector displacement) throws IOException {
        String text = font.toUnicode(code);
        if (text == null || text.isBlank()) {
            return;
        }
        AffineTransform shown = new AffineTransform(toDisplayed);
        shown.concatenate(textRendering.createAffineTransform());
        Point2D a = shown.transform(new Point2D.Double(0, -0.2), null);
        Point2D b = shown.transform(new Point2D.Double(displacement.getX(), CAP_SHARE), null);
        Box box = Box.around(List.of(new Point(a.getX(), a.getY()), new Point(b.getX(), b.getY())));
        letters.add(new SourceLetters.Letter(text, box, CAP_SHARE * Math.hypot(shown.getShearX(), shown.getScaleY())));
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        moveTo((float) p0.getX(), (float) p0.getY());
        for (Point2D p : new Point2D[] {p1, p2, p3}) {
            lineTo((float) p.getX(), (float) p.getY());
        }
        path.closePath();
    }

    @Override
    public void moveTo(float x, float y) {
        path.moveTo(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
        if (path.getCurrentPoint() == null) {
            path.moveTo(x, y);
        } else {
            path.lineTo(x, y);
        }
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        if (path.getCurrentPoint() == null) {
            path.moveTo(x1, y1);
        }
        path.curveTo(x1, y1, x2, y2, x3, y3);
    }

    @Override
    public Point2D getCurrentPoint() {
        return path.getCurrentPoint();
    }

    @Override
    public void closePath() {
        if (path.getCurrentPoint() != null) {
            path.closePath();
        }
    }

    @Override
    public void endPath() {
        path.reset();
    }

    @Override
    public void strokePath() {
        PathIterator it = new FlatteningPathIterator(path.getPathIterator(toDisplayed), FLAT_PT);
        double[] c = new double[6];
        Point2D from = null;
        Point2D start = null;
        for (; !it.isDone(); it.next()) {
            int kind = it.currentSegment(c);
            Point2D to = kind == PathIterator.SEG_CLOSE ? start : new Point2D.Double(c[0], c[1]);
            if (kind == PathIterator.SEG_MOVETO) {
                start = to;
            } else {
                ink.add(new Line2D.Double(from, to));
            }
            from = to;
        }
        path.reset();
    }

    @Override
    public void fillPath(int windingRule) {
        strokePath();
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
        strokePath();
    }

    @Override
    public void drawImage(PDImage image) {
        // a picture has no strokes to keep off
    }

    @Override
    public void clip(int windingRule) {
        // what is hidden by a clip is taken for seen: a note stays off it needlessly, no more
    }

    @Override
    public void shadingFill(COSName shadingName) {
        // as a picture
    }
}
