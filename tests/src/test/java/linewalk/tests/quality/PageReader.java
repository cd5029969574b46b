package linewalk.tests.quality;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDTransparencyGroup;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.pdmodel.graphics.state.PDGraphicsState;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

/** Runs a page's content and keeps what it paints in its order, what it letters and what it says of itself. */
final class PageReader extends PDFGraphicsStreamEngine {

    private static final float LIGHT = 0.93f;

    private final AffineTransform toPage;
    private final List<Paint> paints = new ArrayList<>();
    private final List<Thing> things = new ArrayList<>();
    /** The sequences being read, each with what its ink belongs to: a line, a symbol or null. */
    private final List<Thing> open = new ArrayList<>();

    private final TextRuns runs = new TextRuns();
    private final int formsOfPage;
    private int formsSeen;
    private int depth;
    private GeneralPath path = new GeneralPath();
    private int clipRule = -1;
    private int order;

    private PageReader(PDPage page) throws IOException {
        super(page);
        toPage = new AffineTransform(1, 0, 0, -1, 0, page.getMediaBox().getHeight());
        formsOfPage = Forms.drawnBy(page);
    }

    /** @param number from 1 */
    static PrintPage read(PDPage page, int number) throws IOException {
        PageReader r = new PageReader(page);
        r.processPage(page);
        Rectangle2D paper = new Rectangle2D.Double(
                0, 0, page.getMediaBox().getWidth(), page.getMediaBox().getHeight());
        return new PrintPage(number, paper, r.paints, r.runs.ours(), r.things, r.runs.cuttingCapitalsPt());
    }

    /** Of the page's own forms the last is our drawing; those before it are cuttings. */
    @Override
    public void showForm(PDFormXObject form) throws IOException {
        enter();
        super.showForm(form);
        depth--;
    }

    @Override
    public void showTransparencyGroup(PDTransparencyGroup form) throws IOException {
        enter();
        super.showTransparencyGroup(form);
        depth--;
    }

    private void enter() {
        formsSeen += depth == 0 ? 1 : 0;
        depth++;
    }

    private boolean inCutting() {
        return depth > 0 && formsSeen < formsOfPage;
    }

    @Override
    public void beginMarkedContentSequence(COSName tag, COSDictionary properties) {
        Thing thing = inCutting() || properties == null ? null : thing(tag.getName(), properties);
        if (thing != null) {
            things.add(thing);
        }
        boolean owns = thing instanceof Thing.Line || thing instanceof Thing.Symbol;
        open.add(owns ? thing : owner());
    }

    @Override
    public void endMarkedContentSequence() {
        open.remove(open.size() - 1);
    }

    private static Thing thing(String tag, COSDictionary about) {
        if (tag.equals("Line")) {
            List<Point2D> course = new ArrayList<>();
            double[] xy = numbers(about, "Course");
            for (int i = 0; i < xy.length; i += 2) {
                course.add(new Point2D.Double(xy[i], xy[i + 1]));
            }
            return new Thing.Line(about.getString("Net", ""), course);
        }
        if (!tag.equals("Symbol") && !tag.equals("Field")) {
            return null;
        }
        double[] b = numbers(about, "Box");
        Rectangle2D box = new Rectangle2D.Double(b[0], b[1], b[2] - b[0], b[3] - b[1]);
        String name = about.getString("Name", "");
        return tag.equals("Symbol") ? new Thing.Symbol(name, box) : new Thing.Field(name, box);
    }

    private static double[] numbers(COSDictionary about, String key) {
        COSArray array = about.getCOSArray(COSName.getPDFName(key));
        double[] numbers = new double[array.size()];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = ((COSNumber) array.getObject(i)).floatValue();
        }
        return numbers;
    }

    private Thing owner() {
        return open.isEmpty() ? null : open.get(open.size() - 1);
    }

    private void keep(BasicStroke pen, PDColor color, double alpha) throws IOException {
        boolean light = isLight(color);
        Shape clip = inCutting() ? clip() : null;
        paints.add(new Paint(
                order++, path.createTransformedShape(toPage), pen, light, alpha > 0.99, owner(), clip, inCutting()));
    }

    private Shape clip() {
        return toPage.createTransformedShape(getGraphicsState().getCurrentClippingPath());
    }

    private BasicStroke pen() {
        PDGraphicsState s = getGraphicsState();
        Matrix m = s.getCurrentTransformationMatrix();
        double scale = Math.sqrt(Math.abs(m.getScaleX() * m.getScaleY() - m.getShearX() * m.getShearY()));
        float[] dash = s.getLineDashPattern().getDashArray();
        boolean dashed = false;
        for (int i = 0; i < dash.length; i++) {
            dash[i] = (float) (dash[i] * scale);
            dashed |= dash[i] > 0;
        }
        float phase = (float) (s.getLineDashPattern().getPhase() * scale);
        return new BasicStroke(
                (float) (s.getLineWidth() * scale),
                s.getLineCap(),
                s.getLineJoin(),
                Math.max(1, s.getMiterLimit()),
                dashed ? dash : null,
                phase);
    }

    private static boolean isLight(PDColor color) throws IOException {
        if (color.isPattern() || color.getColorSpace() == null) {
            return false;
        }
        float[] rgb = color.getColorSpace().toRGB(color.getComponents());
        return rgb[0] > LIGHT && rgb[1] > LIGHT && rgb[2] > LIGHT;
    }

    @Override
    public void strokePath() throws IOException {
        keep(pen(), getGraphicsState().getStrokingColor(), getGraphicsState().getAlphaConstant());
        path = new GeneralPath();
    }

    @Override
    public void fillPath(int windingRule) throws IOException {
        path.setWindingRule(windingRule);
        keep(null, getGraphicsState().getNonStrokingColor(), getGraphicsState().getNonStrokeAlphaConstant());
        path = new GeneralPath();
    }

    @Override
    public void fillAndStrokePath(int windingRule) throws IOException {
        GeneralPath both = (GeneralPath) path.clone();
        fillPath(windingRule);
        path = both;
        strokePath();
    }

    @Override
    public void clip(int windingRule) {
        clipRule = windingRule;
    }

    @Override
    public void endPath() {
        if (clipRule >= 0) {
            path.setWindingRule(clipRule);
            getGraphicsState().intersectClippingPath(path);
            clipRule = -1;
        }
        path = new GeneralPath();
    }

    @Override
    protected void showGlyph(Matrix m, PDFont font, int code, Vector displacement) throws IOException {
        if (getGraphicsState().getTextState().getRenderingMode() == RenderingMode.NEITHER) {
            return;
        }
        Glyph glyph = Glyph.of(m, font, code, displacement, toPage);
        if (!inCutting()) {
            runs.add(order++, glyph, owner());
        } else if (glyph.ink() != null && clip().contains(glyph.ink())) {
            runs.addOriginal(glyph);
            paints.add(new Paint(order++, glyph.ink(), null, false, true, null, null, true));
        }
    }

    @Override
    public void drawImage(PDImage image) {
        // prints of ours hold no pictures but those of a scanned original
    }

    @Override
    public void shadingFill(COSName shadingName) {}

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        moveTo((float) p0.getX(), (float) p0.getY());
        lineTo((float) p1.getX(), (float) p1.getY());
        lineTo((float) p2.getX(), (float) p2.getY());
        lineTo((float) p3.getX(), (float) p3.getY());
        closePath();
    }

    @Override
    public void moveTo(float x, float y) {
        path.moveTo(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
        if (path.getCurrentPoint() == null) {
            path.moveTo(x, y);
        }
        path.lineTo(x, y);
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
}
