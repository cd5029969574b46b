package linewalk.importer.page;

import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDSimpleFont;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.pdmodel.graphics.state.PDGraphicsState;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

/** Runs a page's content once and keeps what it paints, in points as displayed. Clipping is not applied. */
public final class MarkCollector extends PDFGraphicsStreamEngine {

    /** Flattening: enough for a circle of the size of a symbol, cheap on a page of splines. */
    private static final int CURVE_STEPS = 8;

    private static final float LIGHT = 0.93f;

    /** Corners of paths, with curves flattened; the densest drawings seen hold a tenth. More is no drawing but a trap. */
    private static final int MOST_POINTS = 500_000;

    /** A page with more on it than can be read in a sensible time. */
    public static final class TooDense extends IOException {
        private static final long serialVersionUID = 1L;

        TooDense() {
            super("more than " + MOST_POINTS + " points are drawn on it");
        }
    }

    private final PageGeometry geometry;
    private final List<Stroke> strokes = new ArrayList<>();
    private final List<Fill> fills = new ArrayList<>();
    private final Masks masks = new Masks();
    private final List<Glyph> glyphs = new ArrayList<>();
    private final List<Subpath> path = new ArrayList<>();
    private Point2D.Float current = new Point2D.Float();
    private final List<Picture> pictures = new ArrayList<>();
    private int drawnPoints;

    private static final class Subpath {
        final List<Point> points = new ArrayList<>();
        boolean closed;
        boolean curved;
    }

    private MarkCollector(PDPage page, PageGeometry geometry) {
        super(page);
        this.geometry = geometry;
    }

    public static Marks collect(PDPage page, PageGeometry geometry) throws IOException {
        MarkCollector c = new MarkCollector(page, geometry);
        c.processPage(page);
        List<Stroke> seen = c.masks.seen(c.strokes, geometry.widthPt(), geometry.heightPt());
        return Hatching.filled(new Marks(geometry.widthPt(), geometry.heightPt(), seen, c.fills, c.glyphs, c.pictures));
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) throws IOException {
        moveTo((float) p0.getX(), (float) p0.getY());
        lineTo((float) p1.getX(), (float) p1.getY());
        lineTo((float) p2.getX(), (float) p2.getY());
        lineTo((float) p3.getX(), (float) p3.getY());
        closePath();
    }

    @Override
    public void moveTo(float x, float y) throws IOException {
        count();
        Subpath s = new Subpath();
        s.points.add(geometry.display(x, y));
        path.add(s);
        current = new Point2D.Float(x, y);
    }

    @Override
    public void lineTo(float x, float y) throws IOException {
        add(geometry.display(x, y));
        current = new Point2D.Float(x, y);
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) throws IOException {
        if (path.isEmpty()) {
            moveTo(x1, y1);
        }
        for (int i = 1; i <= CURVE_STEPS; i++) {
            double t = (double) i / CURVE_STEPS;
            double u = 1 - t;
            double a = u * u * u;
            double b = 3 * u * u * t;
            double c = 3 * u * t * t;
            double d = t * t * t;
            add(geometry.display(a * current.x + b * x1 + c * x2 + d * x3, a * current.y + b * y1 + c * y2 + d * y3));
        }
        path.get(path.size() - 1).curved = true;
        current = new Point2D.Float(x3, y3);
    }

    private void count() throws TooDense {
        if (++drawnPoints > MOST_POINTS) {
            throw new TooDense();
        }
    }

    private void add(Point p) throws IOException {
        count();
        if (path.isEmpty()) {
            path.add(new Subpath());
        }
        List<Point> points = path.get(path.size() - 1).points;
        if (points.isEmpty() || !points.get(points.size() - 1).equals(p)) {
            points.add(p);
        }
    }

    @Override
    public Point2D getCurrentPoint() {
        return current;
    }

    @Override
    public void closePath() {
        if (path.isEmpty()) {
            return;
        }
        Subpath s = path.get(path.size() - 1);
        s.closed = true;
        int last = s.points.size() - 1;
        if (last > 0 && s.points.get(last).distancePt(s.points.get(0)) < 1e-6) {
            s.points.remove(last);
        }
    }

    @Override
    public void endPath() {
        path.clear();
    }

    @Override
    public void strokePath() throws IOException {
        stroke(false);
        path.clear();
    }

    @Override
    public void fillPath(int windingRule) throws IOException {
        fill();
        path.clear();
    }

    @Override
    public void fillAndStrokePath(int windingRule) throws IOException {
        boolean light = isLight(getGraphicsState().getNonStrokingColor());
        if (light) {
            mask();
        } else {
            fill();
        }
        stroke(!light);
        path.clear();
    }

    private void stroke(boolean filled) throws IOException {
        PDGraphicsState state = getGraphicsState();
        if (isLight(state.getStrokingColor())) {
            return;
        }
        double scale = scale(state.getCurrentTransformationMatrix());
        Dash dash = Dash.of(state.getLineDashPattern().getDashArray(), scale);
        for (Subpath s : path) {
            if (s.points.size() > 1) {
                double width = state.getLineWidth() * scale;
                strokes.add(new Stroke(s.points, s.closed || ringed(s), s.curved, width, dash, filled));
            }
        }
    }

    private static boolean ringed(Subpath s) {
        int n = s.points.size();
        if (n < 4 || s.points.get(0).distancePt(s.points.get(n - 1)) > 0.05) {
            return false;
        }
        s.points.remove(n - 1);
        return true;
    }

    private void mask() {
        path.stream().filter(s -> s.points.size() > 2).forEach(s -> masks.add(s.points, strokes.size()));
    }

    private void fill() throws IOException {
        boolean light = isLight(getGraphicsState().getNonStrokingColor());
        if (light) {
            mask();
        }
        for (Subpath s : path) {
            if (s.points.size() > 2) {
                fills.add(new Fill(s.points, s.curved, light));
            }
        }
    }

    private double scale(Matrix m) {
        double det = m.getScaleX() * m.getScaleY() - m.getShearX() * m.getShearY();
        return Math.sqrt(Math.abs(det)) * geometry.scale();
    }

    private static boolean isLight(PDColor color) throws IOException {
        if (color.isPattern() || color.getColorSpace() == null) {
            return false;
        }
        float[] rgb = color.getColorSpace().toRGB(color.getComponents());
        return rgb[0] > LIGHT && rgb[1] > LIGHT && rgb[2] > LIGHT;
    }

    @Override
    protected void showGlyph(Matrix m, PDFont font, int code, Vector displacement) {
        String text = text(font, code);
        if (text == null || text.isEmpty()) {
            return;
        }
        Point start = geometry.display(m.getTranslateX(), m.getTranslateY());
        Point right = geometry.display(m.getTranslateX() + m.getScaleX(), m.getTranslateY() + m.getShearY());
        Point up = geometry.display(m.getTranslateX() + m.getShearX(), m.getTranslateY() + m.getScaleY());
        double em = start.distancePt(right);
        double angle = Math.toDegrees(Math.atan2(right.yPt() - start.yPt(), right.xPt() - start.xPt()));
        glyphs.add(new Glyph(
                text,
                start,
                displacement.getX() * em,
                start.distancePt(up),
                Math.floorMod(Math.round(angle * 10), 3600) / 10.0));
    }

    private static String text(PDFont font, int code) {
        String text = font.toUnicode(code);
        if (text == null && font instanceof PDSimpleFont simple && simple.getEncoding() != null) {
            return simple.getGlyphList().toUnicode(simple.getEncoding().getName(code));
        }
        return text;
    }

    @Override
    public void drawImage(PDImage image) {
        Matrix m = getGraphicsState().getCurrentTransformationMatrix();
        Box box = Box.around(List.of(corner(m, 0, 0), corner(m, 1, 0), corner(m, 0, 1), corner(m, 1, 1)));
        double acrossPt = corner(m, 0, 0).distancePt(corner(m, 1, 0));
        double downPt = corner(m, 0, 0).distancePt(corner(m, 0, 1));
        if (acrossPt > 0 && downPt > 0) {
            pictures.add(new Picture(box, Math.max(image.getWidth() / acrossPt, image.getHeight() / downPt)));
        }
    }

    /** Where a corner of the unit square, on which images are painted, comes to lie. */
    private Point corner(Matrix m, int x, int y) {
        Point2D.Float p = m.transformPoint(x, y);
        return geometry.display(p.x, p.y);
    }

    @Override
    public void clip(int windingRule) {}

    @Override
    public void shadingFill(COSName shadingName) {}
}
