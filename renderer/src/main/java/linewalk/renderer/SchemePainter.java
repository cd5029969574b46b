package linewalk.renderer;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import linewalk.renderer.ink.ChangeMark;
import linewalk.renderer.ink.Palette;
import linewalk.renderer.scheme.Figure;
import linewalk.renderer.scheme.Layout;
import linewalk.renderer.scheme.Node;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;
import linewalk.renderer.sheet.Marked;

/** Paints one page of a scheme: lines with their arrows and marks first, then what stands at the nodes. */
final class SchemePainter {

    private static final double CHANNEL_PT = 11;
    private static final double WALL_PT = 0.6;
    static final double DOT_PT = 3.4;
    private static final double ARROW_PT = 11;

    private final PrintJob job;
    private final Layout layout;
    private final SchemeBuilder.Built built;
    private final FlowWays ways;
    private final DrilledLines drilled;

    SchemePainter(PrintJob job, Layout layout, SchemeBuilder.Built built, FlowWays ways, DrilledLines drilled) {
        this.job = job;
        this.layout = layout;
        this.built = built;
        this.ways = ways;
        this.drilled = drilled;
    }

    void paint(Canvas c) {
        PlaceFrames frames = new PlaceFrames(layout, built, job.set().enclosures());
        frames.paint(c);
        channels(c);
        Palette palette = job.facts().palette();
        for (Layout.Course course : layout.courses()) {
            onLayer(
                    c,
                    strand(course),
                    on -> Marked.line(on, course.net().name(), course.points(), k -> look(course)
                            .paint(k, palette, course.points())));
        }
        for (Point2D dot : layout.dots()) {
            c.fill(Ink.BLACK, Canvas.disc(dot.getX(), dot.getY(), DOT_PT));
        }
        layout.courses().forEach(course -> onLayer(c, strand(course), on -> marks(on, course)));
        new LineLabels(layout, built, frames.frames()).paint(c);
        layout.places().forEach((node, at) -> node(c, node, at));
    }

    /** A branch stands on its line's layer. */
    private void node(Canvas c, Node node, Point2D at) {
        Figure f = node.figure();
        Rectangle2D box = new Rectangle2D.Double(at.getX(), at.getY(), f.widthPt(), f.heightPt());
        Consumer<Canvas> drawing = on -> Marked.symbol(on, node.name(), box, k -> f.paint(k, at.getX(), at.getY()));
        if (f instanceof StubFigure) {
            onLayer(c, built.branches().get(node), drawing);
        } else {
            drawing.accept(c);
        }
    }

    /** Lines that a print can be read without stand on layers of their own. */
    private void onLayer(Canvas c, SchemeDraft.Strand strand, Consumer<Canvas> drawing) {
        Layer layer = LineLook.of(strand.line(), job.moment()).layer();
        if (layer == null) {
            drawing.accept(c);
        } else {
            c.layer(Words.capital(layer.words()), drawing);
        }
    }

    private SchemeDraft.Strand strand(Layout.Course course) {
        return built.strands().get(course.net().name());
    }

    private LineLook look(Layout.Course course) {
        return LineLook.of(strand(course).line(), job.moment());
    }

    /** Walls of drilled passages: all black first, then all white, so that they open into each other. */
    private void channels(Canvas c) {
        List<Layout.Course> inside = layout.courses().stream()
                .filter(x -> drilled.has(strand(x).line()))
                .toList();
        for (double width : new double[] {CHANNEL_PT, CHANNEL_PT - 2 * WALL_PT}) {
            c.pen(
                    width == CHANNEL_PT ? Ink.GREY : Color.WHITE,
                    new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
            inside.forEach(x -> c.polyline(x.points()));
        }
    }

    private void marks(Canvas c, Layout.Course course) {
        LineLook look = look(course);
        int way = ways.way(course);
        boolean changed = look.changed() && course == longest(course.net().name());
        int longest = longest(course.points());
        for (int i = 1; i < course.points().size(); i++) {
            Point2D p = course.points().get(i - 1);
            Point2D q = course.points().get(i);
            double length = p.distance(q);
            if (way != 0 && length > (i == longest ? 16 : 100)) {
                arrow(c, look, course, way > 0 ? p : q, way > 0 ? q : p);
            }
            if (changed && i == longest && length > 14) {
                double share = length > 40 ? 0.25 : 0.5;
                Point2D at = at(p, q, share);
                ChangeMark.paint(c, at.getX(), at.getY());
            }
        }
    }

    private void arrow(Canvas c, LineLook look, Layout.Course course, Point2D p, Point2D q) {
        double length = p.distance(q);
        double dx = (q.getX() - p.getX()) / length;
        double dy = (q.getY() - p.getY()) / length;
        for (double share : new double[] {0.5, 0.62, 0.38, 0.74, 0.26}) {
            Point2D tip = at(p, q, Math.min(1, share + ARROW_PT / 2 / length));
            Point2D tail = at(p, q, Math.max(0, share - ARROW_PT / 2 / length));
            if (!isCrossed(course, tip, tail) && !isContradicted(course, at(p, q, share), dx, dy)) {
                c.pen(look.style(job.facts().palette()).color(), Ink.line(1));
                c.arrow(tip.getX(), tip.getY(), dx, dy, ARROW_PT);
                return;
            }
        }
    }

    /** Another line's stretch or a dot lies too close for an arrow to be read. */
    private boolean isCrossed(Layout.Course own, Point2D tip, Point2D tail) {
        Rectangle2D room = new Rectangle2D.Double(
                Math.min(tip.getX(), tail.getX()) - 5,
                Math.min(tip.getY(), tail.getY()) - 5,
                Math.abs(tip.getX() - tail.getX()) + 10,
                Math.abs(tip.getY() - tail.getY()) + 10);
        for (Layout.Course other : layout.courses()) {
            for (int i = 1;
                    i < other.points().size()
                            && !other.net().name().equals(own.net().name());
                    i++) {
                Point2D p = other.points().get(i - 1);
                Point2D q = other.points().get(i);
                if (room.intersectsLine(p.getX(), p.getY(), q.getX(), q.getY())) {
                    return true;
                }
            }
        }
        return layout.dots().stream().anyMatch(room::contains);
    }

    /** Another way of the same net shares the stretch, and its oil does not surely go the same way. */
    private boolean isContradicted(Layout.Course own, Point2D on, double dx, double dy) {
        for (Layout.Course other : layout.courses()) {
            for (int i = 1; i < other.points().size() && other != own; i++) {
                Point2D p = other.points().get(i - 1);
                Point2D q = other.points().get(i);
                double along = ways.way(other) * ((q.getX() - p.getX()) * dx + (q.getY() - p.getY()) * dy);
                boolean shared = Line2D.ptSegDist(p.getX(), p.getY(), q.getX(), q.getY(), on.getX(), on.getY()) < 0.5;
                if (shared && other.net().name().equals(own.net().name()) && along <= 0) {
                    return true;
                }
            }
        }
        return false;
    }

    private static Point2D at(Point2D p, Point2D q, double share) {
        return new Point2D.Double(p.getX() + share * (q.getX() - p.getX()), p.getY() + share * (q.getY() - p.getY()));
    }

    /** One mark a line is enough: on its longest way. */
    private Layout.Course longest(String net) {
        return layout.courses().stream()
                .filter(x -> x.net().name().equals(net))
                .max(Comparator.comparingDouble(x -> length(x.points(), longest(x.points()))))
                .orElseThrow();
    }

    private static double length(List<Point2D> course, int i) {
        return course.get(i).distance(course.get(i - 1));
    }

    private static int longest(List<Point2D> course) {
        int best = 1;
        for (int i = 2; i < course.size(); i++) {
            if (course.get(i).distance(course.get(i - 1)) > course.get(best).distance(course.get(best - 1)) + 1) {
                best = i;
            }
        }
        return best;
    }
}
