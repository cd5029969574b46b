package linewalk.renderer;

import java.awt.Color;
import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linewalk.drawing.LineKind;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;
import linewalk.renderer.sheet.PdfBook;

/** The path drawn anew: laid out once, cut into tiles that fit the page, lines joined over the cuts by letters. */
final class DrawnPicture implements Picture {

    private static final double LINE_PT = 2.6;
    /** A match mark with its page. */
    private static final double WORDS_PT = 56;

    private final Doubts doubts;
    private final FlowGraph graph;
    private final LayeredLayout layout;
    private final List<Tile> tiles;
    private final LineLabels labels;
    private final MatchMarks marks = new MatchMarks();
    private final Map<String, List<Integer>> cutTiles = new HashMap<>();

    private DrawnPicture(PrintJob job, Doubts doubts, Rectangle2D area) {
        this.doubts = doubts;
        graph = new FlowGraph(job);
        List<StopFigure> figures = new ArrayList<>();
        for (FlowGraph.Stop s : graph.stops) {
            figures.add(new StopFigure(s, job, doubts));
        }
        layout = new LayeredLayout(figures, graph.edges);
        tiles = figures.isEmpty() ? List.of() : new Tiling(layout, area.getWidth(), area.getHeight()).tiles();
        labels = new LineLabels(layout, doubts);
        nameCuts();
    }

    static Picture layOut(PrintJob job, Doubts doubts, Rectangle2D area) {
        return new DrawnPicture(job, doubts, area);
    }

    /** Letters run in the order of the walk. */
    private void nameCuts() {
        for (int e = 0; e < graph.edges.size(); e++) {
            List<Point2D> course = layout.lines.get(graph.edges.get(e));
            Set<String> keys = new LinkedHashSet<>();
            Map<String, Double> order = new HashMap<>();
            for (int t = 0; t < tiles.size(); t++) {
                for (Clip.Cut cut : new Clip(course, tiles.get(t).part()).cuts) {
                    String key = key(e, cut);
                    keys.add(key);
                    order.put(key, cut.atPt());
                    cutTiles.computeIfAbsent(key, k -> new ArrayList<>()).add(t);
                }
            }
            keys.stream()
                    .sorted(java.util.Comparator.comparingDouble(order::get))
                    .forEach(marks::letter);
        }
    }

    private static String key(int edge, Clip.Cut cut) {
        return edge + ":" + Math.round(cut.atPt());
    }

    @Override
    public int pages() {
        return tiles.isEmpty() ? 1 : tiles.get(tiles.size() - 1).page() + 1;
    }

    @Override
    public void paint(int page, PdfBook.Page on, Rectangle2D area) {
        Canvas c = on.canvas();
        for (int t = 0; t < tiles.size(); t++) {
            if (tiles.get(t).page() == page) {
                paintLines(c, t, tiles.get(t).onPage(area));
                paintCuts(c, t, tiles.get(t).onPage(area));
            }
        }
        for (Tile tile : tiles) {
            if (tile.page() == page) {
                paintFigures(c, tile, tile.onPage(area));
            }
        }
    }

    private void paintLines(Canvas c, int t, AffineTransform at) {
        for (int e = 0; e < graph.edges.size(); e++) {
            FlowGraph.Edge edge = graph.edges.get(e);
            Clip clip = new Clip(layout.lines.get(edge), tiles.get(t).part());
            for (List<Point2D> piece : clip.pieces) {
                List<Point2D> placed =
                        piece.stream().map(p -> at.transform(p, null)).toList();
                // a line that crosses another interrupts it, so that nobody turns off at the crossing
                c.pen(Color.WHITE, Ink.line(LINE_PT + 6));
                c.polyline(placed);
                c.pen(Ink.PATH, stroke(edge));
                c.polyline(placed);
                arrow(c, placed);
            }
            doubtsOn(c, edge, clip, at);
            labels.paint(c, edge, clip, at);
        }
    }

    /** Marks that stand close together step outwards, the right-hand one first, so that their words have room. */
    private void paintCuts(Canvas c, int t, AffineTransform at) {
        List<Integer> edges = new ArrayList<>();
        List<Clip.Cut> cuts = new ArrayList<>();
        for (int e = 0; e < graph.edges.size(); e++) {
            for (Clip.Cut cut :
                    new Clip(layout.lines.get(graph.edges.get(e)), tiles.get(t).part()).cuts) {
                edges.add(e);
                cuts.add(cut);
            }
        }
        for (int i = 0; i < cuts.size(); i++) {
            paintCut(c, t, edges.get(i), cuts.get(i), step(cuts.get(i), cuts), at);
        }
    }

    private static int step(Clip.Cut cut, List<Clip.Cut> all) {
        return all.stream()
                .filter(o -> Math.abs(o.place().getY() - cut.place().getY()) < 0.01)
                .filter(o -> o.place().getX() > cut.place().getX()
                        && o.place().getX() < cut.place().getX() + WORDS_PT)
                .mapToInt(o -> step(o, all) + 1)
                .max()
                .orElse(0);
    }

    private void paintCut(Canvas c, int t, int edge, Clip.Cut cut, int step, AffineTransform at) {
        Point2D p = at.transform(cut.place(), null);
        Rectangle2D part = tiles.get(t).part();
        boolean left = Math.abs(cut.place().getX() - part.getMinX()) < 0.01;
        boolean right = Math.abs(cut.place().getX() - part.getMaxX()) < 0.01;
        double r = MatchMarks.RADIUS_PT;
        double dx = left ? -r : right ? r : 0;
        double out = r + step * Tiling.STEP_PT;
        double dy = dx != 0 ? 0 : cut.place().getY() > part.getCenterY() ? out : -out;
        c.pen(Ink.PATH, stroke(graph.edges.get(edge)));
        c.line(p.getX(), p.getY(), p.getX() + dx, p.getY() + dy);
        String key = key(edge, cut);
        int other = cutTiles.get(key).stream()
                .filter(o -> o != t)
                .map(o -> tiles.get(o).page())
                .findFirst()
                .orElse(tiles.get(t).page());
        int page = other == tiles.get(t).page() ? 0 : other + 1;
        MatchMarks.paint(c, marks.letter(key), p.getX() + dx, p.getY() + dy, page, dx != 0);
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

    /** At the middle of the longest straight part. */
    private static void arrow(Canvas c, List<Point2D> piece) {
        int longest = longest(piece);
        Point2D p = piece.get(longest - 1);
        Point2D q = piece.get(longest);
        double length = p.distance(q);
        if (length > 12) {
            double dx = (q.getX() - p.getX()) / length;
            double dy = (q.getY() - p.getY()) / length;
            c.pen(Ink.PATH, Ink.line(1));
            c.arrow((p.getX() + q.getX()) / 2 + dx * 6, (p.getY() + q.getY()) / 2 + dy * 6, dx, dy, 12);
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

    private void doubtsOn(Canvas c, FlowGraph.Edge edge, Clip clip, AffineTransform at) {
        if (edge.leg() < 0 || clip.pieces.isEmpty() || clip.cuts.stream().anyMatch(x -> !x.leaving())) {
            return;
        }
        List<Point2D> piece = clip.pieces.get(0);
        int l = longest(piece);
        Point2D p = at.transform(piece.get(l - 1), null);
        Point2D q = at.transform(piece.get(l), null);
        List<Doubts.Doubt> here = doubts.at(edge.leg());
        for (int i = 0; i < here.size(); i++) {
            double share = (i + 1.0) / (here.size() + 1);
            StopFigure.doubtMark(
                    c,
                    here.get(i).mark(),
                    p.getX() + share * (q.getX() - p.getX()),
                    p.getY() + share * (q.getY() - p.getY()));
        }
    }

    private void paintFigures(Canvas c, Tile tile, AffineTransform at) {
        layout.boxes.forEach((figure, box) -> {
            if (tile.part().contains(box.getCenterX(), box.getCenterY())) {
                Point2D corner = at.transform(new Point2D.Double(box.getX(), box.getY()), null);
                figure.paint(c, corner.getX(), corner.getY());
            }
        });
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
