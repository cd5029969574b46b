package linewalk.samples.sheet;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import linewalk.samples.style.DraftingStyle;
import linewalk.samples.symbol.Pen;
import org.apache.pdfbox.pdmodel.PDPageContentStream;

/** Everything exploded: no stroke has more than one straight piece or a quarter of a circle, none has a dash. */
final class PieceStrokes extends Strokes {
    private static final int TINY = 16;

    PieceStrokes(PDPageContentStream content, DraftingStyle style) {
        super(content, style);
    }

    @Override
    void line(Pen pen, double... xy) throws IOException {
        for (int i = 0; i + 3 < xy.length; i += 2) {
            double dx = xy[i + 2] - xy[i];
            double dy = xy[i + 3] - xy[i + 1];
            for (double[] dash : Dashes.along(Math.hypot(dx, dy), dashes(pen))) {
                piece(
                        pen,
                        xy[i] + dx * dash[0],
                        xy[i + 1] + dy * dash[0],
                        xy[i] + dx * dash[1],
                        xy[i + 1] + dy * dash[1]);
            }
        }
    }

    @Override
    void closed(Pen pen, double... xy) throws IOException {
        double[] round = Arrays.copyOf(xy, xy.length + 2);
        round[xy.length] = xy[0];
        round[xy.length + 1] = xy[1];
        line(pen, round);
    }

    /** Two barbs, on large arrows three strokes. */
    @Override
    void head(double... xy) throws IOException {
        piece(Pen.OUTLINE, xy[0], xy[1], xy[2], xy[3]);
        piece(Pen.OUTLINE, xy[0], xy[1], xy[4], xy[5]);
        if (Math.hypot(xy[0] - xy[2], xy[1] - xy[3]) > 0.34 * style.unitPt()) {
            piece(Pen.OUTLINE, xy[2], xy[3], xy[4], xy[5]);
        }
    }

    /** Small circles as tiny straight pieces, dashed ones with every other piece left out, large ones in quarters. */
    @Override
    void circle(Pen pen, double x, double y, double radius) throws IOException {
        boolean dashed = dashes(pen).length > 0;
        if (!dashed && radius > 0.4 * style.unitPt()) {
            for (int quarter = 0; quarter < 4; quarter++) {
                full(pen);
                quarter(x, y, radius, quarter);
                content.stroke();
            }
            return;
        }
        int count = dashed ? 3 * TINY : TINY;
        for (int i = 0; i < count; i += dashed ? 2 : 1) {
            double from = 2 * Math.PI * i / count;
            double to = 2 * Math.PI * (i + 1) / count;
            piece(
                    pen,
                    x + radius * Math.cos(from),
                    y + radius * Math.sin(from),
                    x + radius * Math.cos(to),
                    y + radius * Math.sin(to));
        }
    }

    /** A filled polygon. */
    @Override
    void dot(double x, double y, double radius) throws IOException {
        double[] xy = new double[TINY];
        for (int i = 0; i < TINY / 2; i++) {
            xy[2 * i] = x + radius * Math.cos(Math.PI * i / 4);
            xy[2 * i + 1] = y + radius * Math.sin(Math.PI * i / 4);
        }
        fill(xy);
    }

    @Override
    void letters(double widthPt, boolean onePath, List<List<double[]>> letters) throws IOException {
        content.setLineWidth((float) widthPt);
        for (List<double[]> letter : letters) {
            for (double[] s : letter) {
                for (int i = 0; i + 3 < s.length; i += 2) {
                    path(s[i], s[i + 1], s[i + 2], s[i + 3]);
                    content.stroke();
                }
            }
        }
    }

    private void piece(Pen pen, double... xy) throws IOException {
        full(pen);
        path(xy);
        content.stroke();
    }

    private void full(Pen pen) throws IOException {
        content.setLineWidth((float) widthPt(pen));
    }
}
