package linewalk.renderer;

import java.awt.Color;
import java.awt.Stroke;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.LineKind;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;
import linewalk.renderer.sheet.Lettering;
import linewalk.renderer.sheet.Page;

/** The path drawn anew in columns; lines from page to page are joined by letters. */
final class DrawnPicture implements Picture {

    private static final double LINE_PT = 2.6;

    private final Doubts doubts;
    private final FlowGraph graph;
    private final ColumnLayout layout;
    private final LineLabels labels;
    private final MatchMarks marks = new MatchMarks();

    private DrawnPicture(PrintJob job, Doubts doubts, PrintAreas areas) {
        this.doubts = doubts;
        graph = new FlowGraph(job);
        List<StopFigure> figures = new ArrayList<>();
        for (FlowGraph.Stop s : graph.stops) {
            figures.add(new StopFigure(s, job, doubts));
        }
        layout = new ColumnLayout(figures, graph.edges, areas);
        labels = new LineLabels(layout, doubts);
        layout.cuts.keySet().forEach(e -> marks.letter(key(e)));
    }

    static Picture layOut(PrintJob job, Doubts doubts, PrintAreas areas) {
        return new DrawnPicture(job, doubts, areas);
    }

    /** Letters run in the order of the walk. */
    private String key(FlowGraph.Edge e) {
        return "edge " + graph.edges.indexOf(e);
    }

    @Override
    public int pages() {
        return layout.pages();
    }

    @Override
    public void paint(int page, Page on, Rectangle2D area) {
        Canvas c = on.canvas();
        layout.lines.forEach((edge, drawn) -> {
            if (drawn.page() == page) {
                paintLine(c, edge, drawn);
            }
        });
        layout.boxes.forEach((figure, placed) -> {
            if (placed.page() == page) {
                figure.paint(c, placed.box().getX(), placed.box().getY());
            }
        });
        layout.cuts.forEach((edge, ends) -> {
            for (int i = 0; i < 2; i++) {
                if (ends.get(i).page() == page) {
                    paintCut(c, edge, ends.get(i), ends.get(1 - i).page());
                }
            }
        });
    }

    private void paintLine(Canvas c, FlowGraph.Edge edge, ColumnLayout.Drawn drawn) {
        // a line that crosses another interrupts it, so that nobody turns off at the crossing
        c.pen(Color.WHITE, Ink.line(LINE_PT + 6));
        c.polyline(drawn.course());
        c.pen(Ink.PATH, stroke(edge));
        c.polyline(drawn.course());
        List<Doubts.Doubt> here = edge.leg() < 0 ? List.of() : doubts.at(edge.leg());
        arrows(c, edge, drawn);
        int l = longest(drawn.course());
        Point2D p = drawn.course().get(l - 1);
        Point2D q = drawn.course().get(l);
        for (int i = 0; i < here.size(); i++) {
            double share = (i + 1.0) / (here.size() + 1);
            StopFigure.doubtMark(
                    c,
                    here.get(i).mark(),
                    p.getX() + share * (q.getX() - p.getX()),
                    p.getY() + share * (q.getY() - p.getY()));
        }
        labels.paint(c, edge, drawn);
    }

    /** The letter stands at the stub's end; its page beside it, on the side away from the part's other ports. */
    private void paintCut(Canvas c, FlowGraph.Edge edge, ColumnLayout.Stub stub, int otherPage) {
        Point2D p = stub.port();
        double away = Math.signum(stub.out().getY() - p.getY());
        Point2D at = new Point2D.Double(p.getX(), p.getY() + away * MatchMarks.STUB_PT);
        c.pen(Ink.PATH, stroke(edge));
        c.line(p.getX(), p.getY(), at.getX(), at.getY());
        String letter = marks.letter(key(edge));
        MatchMarks.paint(c, letter, at.getX(), at.getY(), 0, false);
        if (otherPage != stub.page()) {
            String text = "page " + (otherPage + 1);
            double w = Lettering.widthPt(text, Lettering.TEXT_PT);
            Rectangle2D right = new Rectangle2D.Double(at.getX() + MatchMarks.RADIUS_PT + 3, at.getY() - 6, w, 12);
            boolean isFree = layout.isFree(stub.page(), right) && noneOf(edge, stub, right);
            double x = isFree ? right.getX() : at.getX() - MatchMarks.RADIUS_PT - 3 - w;
            c.pen(Ink.BLACK, Ink.line(1));
            c.text(text, x, at.getY() + 3.6, Lettering.TEXT_PT);
        }
        for (Doubts.Doubt d : edge.leg() < 0 ? List.<Doubts.Doubt>of() : doubts.at(edge.leg())) {
            StopFigure.doubtMark(c, d.mark(), at.getX() - 30, at.getY());
        }
    }

    private boolean noneOf(FlowGraph.Edge edge, ColumnLayout.Stub stub, Rectangle2D room) {
        return layout.cuts.entrySet().stream()
                .filter(e -> e.getKey() != edge)
                .flatMap(e -> e.getValue().stream())
                .filter(s -> s.page() == stub.page())
                .noneMatch(s -> room.intersects(
                        s.port().getX() - 10, Math.min(s.port().getY(), s.out().getY()) - 10, 20, 40));
    }

    private static Stroke stroke(FlowGraph.Edge edge) {
        if (edge.along() != null && edge.along().line().runs().isEmpty()) {
            return Ink.dashed(LINE_PT, 14, 4, 2.6f, 4);
        }
        LineKind kind =
                edge.along() == null ? LineKind.WORKING : edge.along().line().kind();
        if (kind == LineKind.PILOT) {
            return Ink.dashed(LINE_PT, 10, 4);
        }
        return kind == LineKind.DRAIN ? Ink.dashed(LINE_PT, 4, 3) : Ink.line(LINE_PT);
    }

    /** On every long straight part, so that the direction is never far to seek; not where another line passes. */
    private void arrows(Canvas c, FlowGraph.Edge edge, ColumnLayout.Drawn drawn) {
        List<Point2D> course = drawn.course();
        int longest = longest(course);
        for (int i = 1; i < course.size(); i++) {
            Point2D p = course.get(i - 1);
            Point2D q = course.get(i);
            double length = p.distance(q);
            if (length > (i == longest ? 12 : 90)) {
                double dx = (q.getX() - p.getX()) / length;
                double dy = (q.getY() - p.getY()) / length;
                for (double share : new double[] {0.5, 0.35, 0.65, 0.2, 0.8}) {
                    double x = p.getX() + share * length * dx + dx * 6;
                    double y = p.getY() + share * length * dy + dy * 6;
                    Rectangle2D room = new Rectangle2D.Double(x - dx * 6 - 9, y - dy * 6 - 9, 18, 18);
                    if (share == 0.8 || !layout.isCrossed(edge, room)) {
                        c.pen(Ink.PATH, Ink.line(1));
                        c.arrow(x, y, dx, dy, 12);
                        break;
                    }
                }
            }
        }
    }

    private static int longest(List<Point2D> piece) {
        int best = 1;
        for (int i = 2; i < piece.size(); i++) {
            if (piece.get(i).distance(piece.get(i - 1)) > piece.get(best).distance(piece.get(best - 1)) + 1) {
                best = i;
            }
        }
        return best;
    }

    @Override
    public List<Mark> legend() {
        return DrawnLegend.of(graph, doubts, !marks.isEmpty());
    }

    @Override
    public List<String> remarks() {
        List<String> remarks = new ArrayList<>();
        for (FlowGraph.Edge e : graph.edges) {
            if (e.along() != null && e.along().line().runs().isEmpty()) {
                remarks.add("A line was joined by hand ("
                        + Words.called(e.along().line()) + "): nobody has followed its course on the drawing.");
            }
        }
        return remarks;
    }
}
