package linewalk.renderer;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import linewalk.renderer.scheme.Layout;
import linewalk.renderer.scheme.Node;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;
import linewalk.renderer.sheet.Lettering;

/** Line numbers beside upright stretches, where nothing else is; one without room is left to the table of the walk. */
final class LineLabels {

    private static final double HEIGHT_PT = 11;
    private static final double ASIDE_PT = 9;
    private static final double CLEAR_PT = 2;
    /** Places are exact to a twentieth of a point. */
    private static final double STRAIGHT_PT = 0.2;

    private final Layout layout;
    private final SchemeBuilder.Built built;
    private final SetIndex index;
    private final List<Rectangle2D> frames;
    private final List<Rectangle2D> taken = new ArrayList<>();
    private final Set<String> cautioned = new HashSet<>();

    /** @param frames whose outlines the labels keep off */
    LineLabels(Layout layout, SchemeBuilder.Built built, SetIndex index, List<Rectangle2D> frames) {
        this.index = index;
        this.frames = frames;
        this.layout = layout;
        this.built = built;
        layout.places()
                .forEach((node, at) -> taken.add(new Rectangle2D.Double(
                        at.getX(),
                        at.getY(),
                        node.figure().widthPt(),
                        node.figure().heightPt())));
        layout.dots().stream()
                .map(d -> Canvas.disc(d.getX(), d.getY(), SchemePainter.DOT_PT).getBounds2D())
                .forEach(taken::add);
    }

    void paint(Canvas c) {
        layout.courses().forEach(course -> caution(c, course));
        Set<String> told = new HashSet<>();
        for (Layout.Course course : layout.courses()) {
            String label = index.number(built.strands().get(course.net().name()).line());
            if (label != null && !told.contains(label) && !isAtCrossing(course)) {
                Rectangle2D room = room(course.points(), Lettering.widthPt(label, Lettering.TEXT_PT));
                if (room != null) {
                    told.add(label);
                    taken.add(room);
                    c.pen(Ink.BLACK, Ink.line(1));
                    c.text(label, room.getX(), room.getCenterY() + 3.6, Lettering.TEXT_PT);
                }
            }
        }
    }

    /** Where a line leaves the page and there is room, in words too. */
    private void caution(Canvas c, Layout.Course course) {
        boolean leaves = course.net().meetings().stream().anyMatch(m -> m.node().figure() instanceof MatchFigure);
        if (!leaves || cautioned.contains(course.net().name())) {
            return;
        }
        String words = built.caution(course.net()).orElse(null);
        Rectangle2D room = words == null ? null : room(course.points(), TextStack.loudWidthPt(words));
        if (room != null) {
            cautioned.add(course.net().name());
            taken.add(room);
            TextStack.loud(c, words, room.getX(), room.getY());
        }
    }

    /** There the number stands with the addresses. */
    private static boolean isAtCrossing(Layout.Course course) {
        return course.net().meetings().stream()
                .map(m -> m.node())
                .map(Node::figure)
                .anyMatch(CrossingFigure.class::isInstance);
    }

    /** Null where there is none. */
    private Rectangle2D room(List<Point2D> points, double widthPt) {
        for (int i = 1; i < points.size(); i++) {
            Point2D p = points.get(i - 1);
            Point2D q = points.get(i);
            if (Math.abs(p.getX() - q.getX()) > STRAIGHT_PT || p.distance(q) < HEIGHT_PT) {
                continue;
            }
            double y = (p.getY() + q.getY()) / 2 - HEIGHT_PT / 2;
            for (double x : new double[] {p.getX() + ASIDE_PT, p.getX() - ASIDE_PT - widthPt}) {
                Rectangle2D room = new Rectangle2D.Double(x, y, widthPt, HEIGHT_PT);
                if (isFree(room)) {
                    return room;
                }
            }
        }
        return null;
    }

    private boolean isFree(Rectangle2D room) {
        Rectangle2D wide = new Rectangle2D.Double(
                room.getX() - CLEAR_PT, room.getY(), room.getWidth() + 2 * CLEAR_PT, room.getHeight());
        if (wide.getMinX() < 0
                || wide.getMaxX() > layout.widthPt()
                || taken.stream().anyMatch(wide::intersects)
                || frames.stream().anyMatch(f -> f.intersects(wide) && !f.contains(wide))) {
            return false;
        }
        for (Layout.Course course : layout.courses()) {
            for (int i = 1; i < course.points().size(); i++) {
                Point2D p = course.points().get(i - 1);
                Point2D q = course.points().get(i);
                if (wide.intersectsLine(p.getX(), p.getY(), q.getX(), q.getY())) {
                    return false;
                }
            }
        }
        return true;
    }
}
