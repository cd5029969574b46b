package linewalk.renderer;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;
import linewalk.renderer.sheet.Lettering;

/** Line numbers beside lines that join two parts; at a crossing they stand in the crossing's own words. */
final class LineLabels {

    private static final double HEIGHT_PT = 12;

    private final LayeredLayout layout;
    private final Doubts doubts;
    private final List<Rectangle2D> taken = new ArrayList<>();

    LineLabels(LayeredLayout layout, Doubts doubts) {
        this.layout = layout;
        this.doubts = doubts;
    }

    /** In the first place beside an upright stretch that is free; a label without room is left to the walk in words. */
    void paint(Canvas c, FlowGraph.Edge edge, Clip clip, AffineTransform at) {
        if (edge.along() == null
                || edge.along().line().label() == null
                || edge.from().crossing != null
                || edge.to().crossing != null
                || !doubts.at(edge.leg()).isEmpty()) {
            return;
        }
        String label = edge.along().line().label();
        double w = Lettering.widthPt(label, Lettering.TEXT_PT);
        for (List<Point2D> piece : clip.pieces) {
            for (int i = 1; i < piece.size(); i++) {
                Point2D p = piece.get(i - 1);
                Point2D q = piece.get(i);
                double y = (p.getY() + q.getY()) / 2;
                Rectangle2D room = new Rectangle2D.Double(p.getX() + 8, y - HEIGHT_PT / 2, w + 2, HEIGHT_PT);
                if (Math.abs(p.getX() - q.getX()) < 0.01 && p.distance(q) > HEIGHT_PT + 4 && isFree(room)) {
                    taken.add(room);
                    Point2D on = at.transform(new Point2D.Double(room.getX(), y + 3.6), null);
                    c.pen(Ink.BLACK, Ink.line(1));
                    c.text(label, on.getX(), on.getY(), Lettering.TEXT_PT);
                    return;
                }
            }
        }
    }

    private boolean isFree(Rectangle2D room) {
        return taken.stream().noneMatch(room::intersects)
                && layout.boxes.values().stream().noneMatch(room::intersects)
                && layout.lines.values().stream().noneMatch(line -> passes(line, room));
    }

    private static boolean passes(List<Point2D> line, Rectangle2D room) {
        for (int i = 1; i < line.size(); i++) {
            Point2D p = line.get(i - 1);
            Point2D q = line.get(i);
            if (room.intersectsLine(p.getX(), p.getY(), q.getX(), q.getY())) {
                return true;
            }
        }
        return false;
    }
}
