package linewalk.importer.stroke;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.List;
import linewalk.drawing.Point;
import linewalk.importer.ocr.Crop;
import linewalk.importer.ocr.LetterReader;
import linewalk.importer.ocr.OnSigns;
import linewalk.importer.ocr.ReadLetter;

/** A row as print: upright, letters at the height that is read best, with a pen as heavy as a text face. */
final class RowPicture {

    private static final double HEIGHT_PX = 35;
    private static final double MARGIN_PX = 20;
    private static final float PEN_PX = 4.5f;

    private RowPicture() {}

    private static double xPx(Row row, double u) {
        return MARGIN_PX + (u - row.signs().get(0).u0()) * HEIGHT_PX / row.heightPt();
    }

    /** For every sign what it was read as, or null. */
    static List<ReadLetter> read(Row row, LetterReader reader) {
        List<OnSigns.Place> places = row.signs().stream()
                .map(s -> new OnSigns.Place(xPx(row, s.u0()), xPx(row, s.u1())))
                .toList();
        return OnSigns.of(places, reader.line(of(row)), HEIGHT_PX);
    }

    static Crop of(Row row) {
        double scale = HEIGHT_PX / row.heightPt();
        double left = row.signs().stream().mapToDouble(Placed::u0).min().orElse(0);
        double right = row.signs().stream().mapToDouble(Placed::u1).max().orElse(0);
        int w = (int) Math.ceil((right - left) * scale + 2 * MARGIN_PX);
        int h = (int) Math.ceil(1.7 * HEIGHT_PX + 2 * MARGIN_PX);
        BufferedImage image = new BufferedImage(w, h, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, w, h);
        g.setColor(Color.BLACK);
        g.setStroke(new BasicStroke(PEN_PX, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        for (Placed sign : row.signs()) {
            Path2D painted = new Path2D.Double(Path2D.WIND_EVEN_ODD);
            for (Piece piece : sign.pieces()) {
                Path2D path = path(piece, row, scale);
                if (piece.painted()) {
                    painted.append(path, false);
                } else {
                    g.draw(path);
                }
            }
            g.fill(painted);
        }
        g.dispose();
        return Crop.of(image);
    }

    private static Path2D path(Piece piece, Row row, double scale) {
        Path2D path = new Path2D.Double();
        double base = MARGIN_PX + 1.2 * HEIGHT_PX;
        boolean first = true;
        for (Point p : piece.points()) {
            double up = row.baselinePt() - row.turn().down(p);
            double x = xPx(row, row.turn().along(p) - row.lean() * up);
            double y = base - up * scale;
            if (first) {
                path.moveTo(x, y);
            } else {
                path.lineTo(x, y);
            }
            first = false;
        }
        if (piece.closed()) {
            path.closePath();
        }
        return path;
    }
}
