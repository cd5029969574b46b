package linewalk.tests.quality;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Finds the layers of a drawn page from what it says of itself: symbols that stand side by side form a band, and between
 * two bands lies a gap in which lines run. Each piece of the picture that no line joins to another has layers of its own.
 *
 * <p>A line that passes a band straight has a place of its own there. One that leaves a symbol sideways belongs to it.
 */
final class LayersOfPage {

    /** Nearer than this two ends of lines are one: a point where a net divides is two points high. */
    private static final double NEAR_PT = 3;

    private static final double TOUCH_PT = 0.7;

    private final List<Rectangle2D> symbols;
    private final List<Thing.Line> lines;
    private final List<double[]> bands = new ArrayList<>();
    private final List<Map<String, Double>> items = new ArrayList<>();
    private final List<Run> runs = new ArrayList<>();

    /** A part of a line within one gap, with the ends it has at the gap's sides. */
    private static final class Run {
        final String net;
        final int gap;
        final List<Point2D> course = new ArrayList<>();
        final List<Layers.End<String>> above = new ArrayList<>();
        final List<Layers.End<String>> below = new ArrayList<>();

        Run(String net, int gap) {
            this.net = net;
            this.gap = gap;
        }

        boolean touches(Run o) {
            for (int i = 1; i < course.size(); i++) {
                for (int k = 1; k < o.course.size(); k++) {
                    Line2D own = new Line2D.Double(course.get(i - 1), course.get(i));
                    Line2D other = new Line2D.Double(o.course.get(k - 1), o.course.get(k));
                    if (own.intersectsLine(other) || isNear(own, other)) {
                        return true;
                    }
                }
            }
            return false;
        }

        private static boolean isNear(Line2D a, Line2D b) {
            return Math.min(a.ptSegDist(b.getP1()), a.ptSegDist(b.getP2())) < NEAR_PT;
        }
    }

    private LayersOfPage(List<Rectangle2D> symbols, List<Thing.Line> lines) {
        this.symbols = symbols;
        this.lines = lines;
        symbols.stream()
                .sorted(Comparator.comparingDouble(Rectangle2D::getMinY))
                .forEach(s -> {
                    double[] last = bands.isEmpty() ? null : bands.get(bands.size() - 1);
                    if (last != null && s.getMinY() < last[1]) {
                        last[1] = Math.max(last[1], s.getMaxY());
                    } else {
                        bands.add(new double[] {s.getMinY(), s.getMaxY()});
                    }
                });
        bands.forEach(b -> items.add(new LinkedHashMap<>()));
        for (int i = 0; i < symbols.size(); i++) {
            Rectangle2D s = symbols.get(i);
            items.get(band(s.getCenterY())).put("symbol " + i, s.getCenterX());
        }
        lines.forEach(this::cut);
    }

    /** The layers of each piece of the picture. */
    static List<Layers<String>> of(PrintPage page) {
        List<Layers<String>> all = new ArrayList<>();
        for (Pieces.Piece piece : Pieces.of(page)) {
            all.add(new LayersOfPage(piece.symbols(), piece.lines()).layers());
        }
        return all;
    }

    private Layers<String> layers() {
        List<List<String>> order = new ArrayList<>();
        for (Map<String, Double> band : items) {
            order.add(band.keySet().stream()
                    .sorted(Comparator.comparingDouble(band::get))
                    .toList());
        }
        List<Layers.Tree<String>> trees = new ArrayList<>();
        List<Run> open = new ArrayList<>(runs);
        while (!open.isEmpty()) {
            List<Run> tree = new ArrayList<>(List.of(open.remove(0)));
            for (int i = 0; i < tree.size(); i++) {
                Run at = tree.get(i);
                List<Run> joined = open.stream()
                        .filter(r -> r.gap == at.gap && r.net.equals(at.net) && r.touches(at))
                        .toList();
                tree.addAll(joined);
                open.removeAll(joined);
            }
            trees.add(new Layers.Tree<>(
                    tree.get(0).gap,
                    tree.stream().flatMap(r -> r.above.stream()).distinct().toList(),
                    tree.stream().flatMap(r -> r.below.stream()).distinct().toList()));
        }
        return new Layers<>(order, trees);
    }

    /** -1 in a gap. */
    private int band(double y) {
        for (int i = 0; i < bands.size(); i++) {
            if (y >= bands.get(i)[0] - 1e-3 && y <= bands.get(i)[1] + 1e-3) {
                return i;
            }
        }
        return -1;
    }

    /** The gap below the last band that lies above; -1 over the first band. */
    private int gap(double y) {
        int gap = -1;
        while (gap + 1 < bands.size() && bands.get(gap + 1)[1] < y) {
            gap++;
        }
        return gap;
    }

    /** Points where the course comes to the edge of a band are put in; then it is cut there. */
    private void cut(Thing.Line line) {
        List<Point2D> points = new ArrayList<>();
        for (int i = 0; i < line.course().size(); i++) {
            if (i > 0) {
                points.addAll(edges(line.course().get(i - 1), line.course().get(i)));
            }
            points.add(line.course().get(i));
        }
        int i = 0;
        while (i + 1 < points.size()) {
            int from = i;
            int region = region(points, i);
            while (i + 1 < points.size() && region(points, i) == region) {
                i++;
            }
            List<Point2D> part = points.subList(from, i + 1);
            if (region < 0) {
                run(line, points, from, i);
            } else {
                pass(line, part, region);
            }
        }
    }

    private int region(List<Point2D> points, int i) {
        return band((points.get(i).getY() + points.get(i + 1).getY()) / 2);
    }

    private List<Point2D> edges(Point2D p, Point2D q) {
        TreeMap<Double, Point2D> between = new TreeMap<>();
        for (double[] b : bands) {
            for (double y : b) {
                if (y > Math.min(p.getY(), q.getY()) && y < Math.max(p.getY(), q.getY())) {
                    between.put(p.getY() < q.getY() ? y : -y, new Point2D.Double(p.getX(), y));
                }
            }
        }
        return List.copyOf(between.values());
    }

    /** A stretch in a band that ends at no symbol there has a place in the layer. */
    private void pass(Thing.Line line, List<Point2D> part, int band) {
        if (symbolAt(part.get(0), band) == null && symbolAt(part.get(part.size() - 1), band) == null) {
            items.get(band).put(passing(line, part.get(0)), part.get(0).getX());
        }
    }

    private static String passing(Thing.Line line, Point2D at) {
        return "line " + line.name() + " at " + Math.round(at.getX());
    }

    private String symbolAt(Point2D p, int band) {
        for (int i = 0; i < symbols.size(); i++) {
            Rectangle2D s = symbols.get(i);
            Rectangle2D near = new Rectangle2D.Double(
                    s.getX() - TOUCH_PT,
                    s.getY() - TOUCH_PT,
                    s.getWidth() + 2 * TOUCH_PT,
                    s.getHeight() + 2 * TOUCH_PT);
            if (near.contains(p) && band(s.getCenterY()) == band) {
                return "symbol " + i;
            }
        }
        return null;
    }

    private void run(Thing.Line line, List<Point2D> points, int from, int to) {
        Run run = new Run(
                line.name(), gap((points.get(from).getY() + points.get(from + 1).getY()) / 2));
        run.course.addAll(points.subList(from, to + 1));
        runs.add(run);
        end(run, line, points, from, -1);
        end(run, line, points, to, 1);
    }

    /** What the line comes to where it leaves the gap: a symbol at once or within the band, else its own place there. */
    private void end(Run run, Thing.Line line, List<Point2D> points, int at, int way) {
        Point2D edge = points.get(at);
        int band = band(edge.getY());
        if (band < 0) {
            return;
        }
        int i = at;
        while (i + way >= 0
                && i + way < points.size()
                && band((points.get(i).getY() + points.get(i + way).getY()) / 2) == band) {
            i += way;
        }
        String symbol = symbolAt(points.get(i), band);
        if (symbol == null && i == at && (at == 0 || at == points.size() - 1)) {
            return;
        }
        String item = symbol == null ? passing(line, edge) : symbol;
        items.get(band).putIfAbsent(item, edge.getX());
        (band == run.gap ? run.above : run.below).add(new Layers.End<>(item, edge.getX()));
    }
}
