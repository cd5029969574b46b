package linewalk.samples.sheet;

import java.io.IOException;
import linewalk.samples.style.DraftingStyle;
import linewalk.samples.symbol.Pen;
import org.apache.pdfbox.pdmodel.PDPageContentStream;

/** Lines between symbols are filled rectangles, a dash each where they are dashed; the rest are strokes. */
final class BarStrokes extends Strokes {
    BarStrokes(PDPageContentStream content, DraftingStyle style) {
        super(content, style);
    }

    @Override
    void line(Pen pen, double... xy) throws IOException {
        if (pen != Pen.WORKING && pen != Pen.PILOT && pen != Pen.DRAIN) {
            super.line(pen, xy);
            return;
        }
        for (int i = 0; i + 3 < xy.length; i += 2) {
            double dx = xy[i + 2] - xy[i];
            double dy = xy[i + 3] - xy[i + 1];
            double length = Math.hypot(dx, dy);
            // At bends the rectangles overlap, so that no notch is left.
            double more = widthPt(pen) / 2 / length;
            for (double[] dash : Dashes.along(length, dashes(pen))) {
                double from = dash[0] == 0 && i > 0 ? -more : dash[0];
                double to = dash[1] == 1 && i + 5 < xy.length ? 1 + more : dash[1];
                bar(widthPt(pen) / 2, xy[i] + dx * from, xy[i + 1] + dy * from, xy[i] + dx * to, xy[i + 1] + dy * to);
            }
        }
    }

    private void bar(double half, double x0, double y0, double x1, double y1) throws IOException {
        double length = Math.hypot(x1 - x0, y1 - y0);
        double ax = -(y1 - y0) / length * half;
        double ay = (x1 - x0) / length * half;
        if (Math.abs(ax) < 1e-6 || Math.abs(ay) < 1e-6) {
            float left = (float) (Math.min(x0, x1) - Math.abs(ax));
            float low = (float) (Math.min(y0, y1) - Math.abs(ay));
            content.addRect(left, low, (float) (Math.abs(x1 - x0) + 2 * Math.abs(ax)), (float)
                    (Math.abs(y1 - y0) + 2 * Math.abs(ay)));
        } else {
            path(x0 + ax, y0 + ay, x1 + ax, y1 + ay, x1 - ax, y1 - ay, x0 - ax, y0 - ay);
        }
        content.fill();
    }
}
