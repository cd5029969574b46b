package linewalk.renderer;

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

    private final ColumnLayout layout;
    private final Doubts doubts;
    private final List<Rectangle2D> taken = new ArrayList<>();

    LineLabels(ColumnLayout layout, Doubts doubts) {
        this.layout = layout;
        this.doubts = doubts;
    }

    /** In the first place beside an upright stretch that is free; a label without room is left to the walk in words. */
    void paint(Canvas c, FlowGraph.Edge edge, ColumnLayout.Drawn drawn) {
        if (edge.along() == null
                || edge.along().line().label() == null
                || edge.from().crossing != null
                || edge.to().crossing != null
                || !doubts.at(edge.leg()).isEmpty()) {
            return;
        }
        String label = edge.along().line().label();
        double w = Lettering.widthPt(label, Lettering.TEXT_PT);
        List<Point2D> course = drawn.course();
        for (int i = 1; i < course.size(); i++) {
            Point2D p = course.get(i - 1);
            Point2D q = course.get(i);
            double y = (p.getY() + q.getY()) / 2;
            Rectangle2D room = new Rectangle2D.Double(p.getX() + 8, y - HEIGHT_PT / 2, w + 2, HEIGHT_PT);
            if (Math.abs(p.getX() - q.getX()) < 0.01
                    && p.distance(q) > HEIGHT_PT + 4
                    && layout.isFree(drawn.page(), room)
                    && taken.stream().noneMatch(room::intersects)) {
                taken.add(room);
                c.pen(Ink.BLACK, Ink.line(1));
                c.text(label, room.getX(), y + 3.6, Lettering.TEXT_PT);
                return;
            }
        }
    }
}
