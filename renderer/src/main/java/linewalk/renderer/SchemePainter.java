package linewalk.renderer;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import linewalk.renderer.ink.ChangeMark;
import linewalk.renderer.ink.LinePattern;
import linewalk.renderer.ink.LineStyle;
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
    /** Arrows stand out from heavy lines as from fine ones. */
    private static final double ARROW_PT = 9;

    private static final double ARROW_PER_WIDTH = 1.5;
    private static final double CLEAR_PT = 13;

    /** Where arrows stand on a stretch, as shares of it; on a short one beside a mark of change. */
    private static final double[] SHARES = {0.5, 0.62, 0.38, 0.74, 0.26};

    private static final double[] AT_ENDS = {0.3, 0.7};
    private static final double SHORT_PT = 45;
    private static final double LONG_PT = 240;
    private static final double RIM_PT = 3;
    private static final double LEAST_MARKED_PT = 14;

    private final PrintJob job;
    private final Layout layout;
    private final SchemeBuilder.Built built;
    private final FlowWays ways;
    private final DrilledLines drilled;
    private final Map<String, NetTree> trees = new HashMap<>();
    /** Where arrows stand. */
    private final List<Point2D> taken = new ArrayList<>();

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
        layout.courses().forEach(course -> onLayer(c, strand(course), on -> arrows(on, course)));
        layout.courses().forEach(course -> onLayer(c, strand(course), on -> change(on, course)));
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

    private static List<Integer> byLength(List<Point2D> points) {
        return IntStream.range(1, points.size())
                .boxed()
                .sorted(Comparator.comparingDouble(i -> -Math.round(length(points, i))))
                .toList();
    }

    /** Beside arrows and off other lines where there is room. */
    private void change(Canvas c, Layout.Course course) {
        if (!look(course).changed() || course != longest(course.net().name())) {
            return;
        }
        List<Point2D> points = course.points();
        int longest = longest(points);
        double most = length(points, longest);
        Point2D at = byLength(points).stream()
                .filter(i -> length(points, i) > LEAST_MARKED_PT)
                .flatMap(i -> DoubleStream.of(0.25, 0.75, 0.5, 0.82, 0.18)
                        .mapToObj(share -> at(points.get(i - 1), points.get(i), share)))
                .filter(x -> taken.stream().allMatch(t -> t.distance(x) > CLEAR_PT))
                .filter(x -> !isCrossed(course, aside(x, -ChangeMark.SIZE_PT), aside(x, ChangeMark.SIZE_PT)))
                .findFirst()
                .orElse(at(points.get(longest - 1), points.get(longest), most > 40 ? 0.25 : 0.5));
        if (most > LEAST_MARKED_PT) {
            ChangeMark.paint(c, at.getX(), at.getY());
        }
    }

    /** On the longest stretch on which a way is known, and on all other long ones. */
    private void arrows(Canvas c, Layout.Course course) {
        List<Point2D> points = course.points();
        boolean shown = false;
        for (int i : byLength(points)) {
            if (length(points, i) > (shown ? 60 : 16)) {
                shown |= arrow(c, course, points.get(i - 1), points.get(i));
            }
            if (length(points, i) > LONG_PT) {
                // a long way is not left with one alone
                arrow(c, course, points.get(i - 1), at(points.get(i - 1), points.get(i), 0.5));
                arrow(c, course, at(points.get(i - 1), points.get(i), 0.5), points.get(i));
            }
        }
    }

    private NetTree tree(String net) {
        return trees.computeIfAbsent(
                net,
                k -> new NetTree(layout.courses().stream()
                        .filter(c -> c.net().name().equals(k))
                        .toList()));
    }

    /** Whether there is one. */
    private boolean arrow(Canvas c, Layout.Course course, Point2D p, Point2D q) {
        double length = p.distance(q);
        LineStyle style = look(course).style(job.facts().palette());
        double size = ARROW_PT + ARROW_PER_WIDTH * style.widthPt();
        for (double share : length > SHORT_PT ? SHARES : AT_ENDS) {
            Point2D on = at(p, q, share);
            Point2D way = ways.at(course.net(), tree(course.net().name()), on);
            if (way == null || taken.stream().anyMatch(x -> x.distance(on) < size + CLEAR_PT)) {
                continue;
            }
            boolean along = way.getX() * (q.getX() - p.getX()) + way.getY() * (q.getY() - p.getY()) > 0;
            Point2D near = at(p, q, Math.max(0, share - size / 2 / length));
            Point2D far = at(p, q, Math.min(1, share + size / 2 / length));
            Point2D tip = along ? far : near;
            if (!isCrossed(course, near, far)) {
                clear(c, style, tip, way, size);
                c.pen(style.color(), Ink.line(1));
                c.arrow(tip.getX(), tip.getY(), way.getX(), way.getY(), size);
                taken.add(on);
                return true;
            }
        }
        return false;
    }

    /** The marks of a line's pattern would be taken for part of the arrow. */
    private static void clear(Canvas c, LineStyle style, Point2D tip, Point2D way, double size) {
        if (style.pattern() != LinePattern.SOLID) {
            c.pen(Color.WHITE, Ink.line(1));
            c.arrow(
                    tip.getX() + RIM_PT * way.getX(),
                    tip.getY() + RIM_PT * way.getY(),
                    way.getX(),
                    way.getY(),
                    size + 2 * RIM_PT);
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

    private static Point2D aside(Point2D p, double byPt) {
        return new Point2D.Double(p.getX() + byPt / 2, p.getY() + byPt / 2);
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
