package linewalk.renderer;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.function.Consumer;
import linewalk.renderer.ink.ChangeMark;
import linewalk.renderer.ink.LinePattern;
import linewalk.renderer.ink.LineStyle;
import linewalk.renderer.iso.Duty;
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
    private static final double RIM_PT = 3;
    private static final double RIM_OF_PLAIN_PT = 1.6;

    private final PrintJob job;
    private final Layout layout;
    private final SchemeBuilder.Built built;
    private final SideLines sides;
    private final LineSigns signs;
    private final LineCrossings crossings;
    private final DrilledLines drilled;

    SchemePainter(PrintJob job, Layout layout, SchemeBuilder.Built built, FlowWays ways, DrilledLines drilled) {
        this.job = job;
        this.layout = layout;
        this.built = built;
        this.drilled = drilled;
        sides = new SideLines(layout);
        crossings = new LineCrossings(layout, c -> style(c).bareWidthPt(), c -> style(c).breadthPt());
        this.signs = LineSigns.of(layout, ways::at, this::style, c -> look(c).changed());
    }

    /** @param field of the page, as the layout measures */
    void paint(Canvas c, Rectangle2D field) {
        PlaceFrames frames = new PlaceFrames(layout, built, job.set().enclosures());
        frames.paint(c, field);
        channels(c);
        for (Layout.Course course : crossings.order()) {
            onLayer(
                    c,
                    strand(course),
                    on -> Marked.line(on, course.net().name(), course.points(), k -> line(k, course)));
        }
        for (Point2D dot : layout.dots()) {
            c.fill(Ink.BLACK, Canvas.disc(dot.getX(), dot.getY(), DOT_PT));
        }
        signs.arrows().forEach(a -> onLayer(c, strand(a.course()), on -> arrow(on, a)));
        signs.changes()
                .forEach(x ->
                        onLayer(c, strand(x.course()), on -> ChangeMark.paintOnLine(on, x.at().getX(), x.at().getY())));
        new LineLabels(layout, built, new SetIndex(job.set()), frames.frames()).paint(c);
        layout.places().forEach((node, at) -> node(c, node, at));
    }

    private void line(Canvas c, Layout.Course course) {
        crossings.open(c, course);
        for (SideLines.Run run : sides.of(course)) {
            style(course, run.duty())
                    .paint(
                            c,
                            run.points(),
                            (p, breadthPt) -> signs.isFree(p, breadthPt) && crossings.isFree(p, breadthPt));
        }
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

    /** Of its heaviest part. */
    private LineStyle style(Layout.Course course) {
        List<SideLines.Run> runs = sides.of(course);
        boolean aside = runs.stream().allMatch(r -> r.duty() != Duty.WORKING);
        return style(course, aside ? runs.get(0).duty() : Duty.WORKING);
    }

    private LineStyle style(Layout.Course course, Duty duty) {
        return look(course).style(job.facts().palette(), duty);
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

    private void arrow(Canvas c, LineSigns.Arrow arrow) {
        LineStyle style = style(arrow.course());
        clear(c, style, arrow.tip(), arrow.way(), arrow.sizePt());
        c.pen(style.color(), Ink.line(1));
        c.arrow(
                arrow.tip().getX(),
                arrow.tip().getY(),
                arrow.way().getX(),
                arrow.way().getY(),
                arrow.sizePt());
    }

    /** The arrow stands in a gap of its line: it would be a swelling of a heavy one, and marks of a pattern part of it. */
    private static void clear(Canvas c, LineStyle style, Point2D tip, Point2D way, double size) {
        double rim = style.pattern() == LinePattern.SOLID ? RIM_OF_PLAIN_PT : RIM_PT;
        c.pen(Color.WHITE, Ink.line(1));
        c.arrow(tip.getX() + rim * way.getX(), tip.getY() + rim * way.getY(), way.getX(), way.getY(), size + 2 * rim);
    }
}
