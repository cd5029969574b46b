package linewalk.tests.quality;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;
import org.apache.pdfbox.pdmodel.font.PDVectorFont;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

/**
 * One letter on the page.
 *
 * @param ink null for a space
 * @param start where its baseline starts and
 * @param end where the next one's should
 * @param capitalPt height of capitals at its size
 */
record Glyph(String text, Rectangle2D ink, Point2D start, Point2D end, double emPt, double capitalPt) {

    /** Where a font does not tell its capitals' height: common practice, no source. */
    private static final double USUAL_CAPITAL = 0.7;

    static Glyph of(Matrix m, PDFont font, int code, Vector displacement, AffineTransform toPage) throws IOException {
        Point2D start = toPage.transform(new Point2D.Double(m.getTranslateX(), m.getTranslateY()), null);
        double em = Math.hypot(m.getScaleX(), m.getShearY());
        double up = Math.hypot(m.getShearX(), m.getScaleY());
        Point2D end = new Point2D.Double(
                m.getTranslateX() + displacement.getX() * m.getScaleX(),
                m.getTranslateY() + displacement.getX() * m.getShearY());
        String text = font.toUnicode(code);
        return new Glyph(
                text == null ? "?" : text,
                ink(m, font, code, displacement, toPage),
                start,
                toPage.transform(end, null),
                em,
                up * capital(font));
    }

    private static Rectangle2D ink(Matrix m, PDFont font, int code, Vector displacement, AffineTransform toPage)
            throws IOException {
        AffineTransform at = new AffineTransform(toPage);
        at.concatenate(m.createAffineTransform());
        if (font instanceof PDVectorFont vector) {
            at.concatenate(font.getFontMatrix().createAffineTransform());
            Rectangle2D ink =
                    at.createTransformedShape(vector.getNormalizedPath(code)).getBounds2D();
            return ink.isEmpty() ? null : ink;
        }
        Rectangle2D body = new Rectangle2D.Double(0, 0, displacement.getX(), USUAL_CAPITAL);
        return at.createTransformedShape(body).getBounds2D();
    }

    private static double capital(PDFont font) {
        PDFontDescriptor d = font.getFontDescriptor();
        return d == null || d.getCapHeight() <= 0 ? USUAL_CAPITAL : d.getCapHeight() / 1000;
    }
}
