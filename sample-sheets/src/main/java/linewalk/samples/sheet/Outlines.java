package linewalk.samples.sheet;

import java.awt.geom.AffineTransform;
import java.awt.geom.CubicCurve2D;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDVectorFont;
import org.apache.pdfbox.util.Matrix;

/** A text as the outlines of its letters, as drawing programs write it where it must look the same everywhere. */
final class Outlines {

    /** Of a font's size in its own measure. */
    private static final double EM = 1000;

    private Outlines() {}

    /** One outline a letter, blanks left out; all curves of third order. */
    static List<Path2D> of(PDFont font, String text, double sizePt, Matrix start) throws IOException {
        List<Path2D> out = new ArrayList<>();
        double along = 0;
        InputStream codes = new ByteArrayInputStream(font.encode(text));
        while (codes.available() > 0) {
            int code = font.readCode(codes);
            AffineTransform to = start.createAffineTransform();
            to.translate(along, 0);
            to.scale(sizePt / EM, sizePt / EM);
            Path2D letter = cubic(((PDVectorFont) font).getNormalizedPath(code).getPathIterator(to));
            if (letter.getCurrentPoint() != null) {
                out.add(letter);
            }
            along += font.getWidth(code) / EM * sizePt;
        }
        return out;
    }

    private static Path2D cubic(PathIterator it) {
        Path2D out = new Path2D.Double(Path2D.WIND_NON_ZERO);
        double[] p = new double[6];
        double x = 0;
        double y = 0;
        for (; !it.isDone(); it.next()) {
            switch (it.currentSegment(p)) {
                case PathIterator.SEG_MOVETO -> out.moveTo(p[0], p[1]);
                case PathIterator.SEG_LINETO -> out.lineTo(p[0], p[1]);
                case PathIterator.SEG_QUADTO -> out.append(raised(x, y, p), true);
                case PathIterator.SEG_CUBICTO -> out.curveTo(p[0], p[1], p[2], p[3], p[4], p[5]);
                default -> out.closePath();
            }
            x = out.getCurrentPoint().getX();
            y = out.getCurrentPoint().getY();
        }
        return out;
    }

    /** The same curve by one order higher. */
    private static CubicCurve2D raised(double x, double y, double[] p) {
        return new CubicCurve2D.Double(
                x,
                y,
                x + 2 * (p[0] - x) / 3,
                y + 2 * (p[1] - y) / 3,
                p[2] + 2 * (p[0] - p[2]) / 3,
                p[3] + 2 * (p[1] - p[3]) / 3,
                p[2],
                p[3]);
    }
}
