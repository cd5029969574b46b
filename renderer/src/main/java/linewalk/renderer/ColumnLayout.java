package linewalk.renderer;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import linewalk.renderer.symbol.Side;

/**
 * The stops in their columns and the lines between them: straight down a column, otherwise by right-angled ways through
 * the lanes. Between pages, and where no way is found, an edge is cut and a stub stands at each of its ends.
 */
final class ColumnLayout {

    private static final double PITCH_PT = 11;
    /** How far a line runs straight on from a port. */
    private static final double STUB_PT = 8;

    /** A line on one page, from port to port. */
    record Drawn(int page, List<Point2D> course) {}

    /** One end of a cut edge: from the port outwards. */
    record Stub(int page, Point2D port, Point2D out) {}

    final Map<StopFigure, ColumnPacking.Placed> boxes;
    final Map<FlowGraph.Edge, Drawn> lines = new LinkedHashMap<>();
    /** Two stubs an edge: where it is left and where it is taken up. */
    final Map<FlowGraph.Edge, List<Stub>> cuts = new LinkedHashMap<>();

    private final ColumnPacking packing;
    private final PrintAreas areas;
    private final Map<FlowGraph.Stop, StopFigure> figureOf = new HashMap<>();

    ColumnLayout(List<StopFigure> figures, List<FlowGraph.Edge> edges, PrintAreas areas) {
        this.areas = areas;
        packing = new ColumnPacking(figures, edges, areas);
        boxes = packing.places;
        figures.forEach(f -> figureOf.put(f.stop, f));
        for (int page = 0; page < pages(); page++) {
            route(page, edges);
        }
        for (FlowGraph.Edge e : edges) {
            if (!lines.containsKey(e)) {
                cuts.put(e, List.of(stub(e.from(), e.fromKey()), stub(e.to(), e.toKey())));
            }
        }
    }

    int pages() {
        return boxes.values().stream().mapToInt(p -> p.page() + 1).max().orElse(1);
    }

    private void route(int page, List<FlowGraph.Edge> edges) {
        List<FlowGraph.Edge> here = edges.stream()
                .filter(e -> isOn(page, e.from()) && isOn(page, e.to()))
                .toList();
        LaneRouter router = router(page, edges);
        for (FlowGraph.Edge e : here) {
            if (isStraight(e)) {
                Point2D from = port(e.from(), e.fromKey());
                Point2D to = port(e.to(), e.toKey());
                lines.put(e, new Drawn(page, List.of(from, to)));
                router.use(from, to);
            }
        }
        for (FlowGraph.Edge e : here) {
            if (!lines.containsKey(e)) {
                Stub from = stub(e.from(), e.fromKey());
                Stub to = stub(e.to(), e.toKey());
                router.route(from.out(), to.out())
                        .ifPresent(way -> lines.put(e, new Drawn(page, whole(from.port(), way, to.port()))));
            }
        }
    }

    private boolean isOn(int page, FlowGraph.Stop stop) {
        return boxes.get(figureOf.get(stop)).page() == page;
    }

    private boolean isStraight(FlowGraph.Edge e) {
        StopFigure upper = figureOf.get(e.from());
        StopFigure lower = figureOf.get(e.to());
        Point2D from = port(e.from(), e.fromKey());
        Point2D to = port(e.to(), e.toKey());
        return e.equals(packing.chain(upper, lower))
                && Math.abs(from.getX() - to.getX()) < 0.01
                && from.getY() < to.getY()
                && boxes.values().stream()
                        .filter(p -> p.page() == boxes.get(upper).page())
                        .noneMatch(p -> p.box().intersectsLine(from.getX(), from.getY() + 1, to.getX(), to.getY() - 1));
    }

    private static List<Point2D> whole(Point2D from, List<Point2D> way, Point2D to) {
        List<Point2D> all = new ArrayList<>(List.of(from));
        all.addAll(way);
        all.add(to);
        for (int i = all.size() - 2; i > 0; i--) {
            Point2D a = all.get(i - 1);
            Point2D b = all.get(i);
            Point2D c = all.get(i + 1);
            if (a.getX() == b.getX() && b.getX() == c.getX() || a.getY() == b.getY() && b.getY() == c.getY()) {
                all.remove(i);
            }
        }
        return all;
    }

    private Point2D port(FlowGraph.Stop stop, String key) {
        StopFigure f = figureOf.get(stop);
        Rectangle2D box = boxes.get(f).box();
        return new Point2D.Double(
                box.getX() + f.offsetPt(key), f.side(key) == Side.TOP ? box.getMinY() : box.getMaxY());
    }

    private Stub stub(FlowGraph.Stop stop, String key) {
        StopFigure f = figureOf.get(stop);
        int page = boxes.get(f).page();
        Point2D port = port(stop, key);
        double top = areas.on(page).getY();
        double y = f.side(key) == Side.TOP
                ? top + Math.floor((port.getY() - STUB_PT - top) / PITCH_PT) * PITCH_PT
                : top + Math.ceil((port.getY() + STUB_PT - top) / PITCH_PT) * PITCH_PT;
        return new Stub(page, port, new Point2D.Double(port.getX(), y));
    }

    /** Level lanes evenly spaced; upright ones through all ports, and evenly spaced where there is none. */
    private LaneRouter router(int page, List<FlowGraph.Edge> edges) {
        Rectangle2D area = areas.on(page);
        List<Rectangle2D> obstacles = new ArrayList<>();
        TreeSet<Double> ports = new TreeSet<>();
        boxes.forEach((f, placed) -> {
            if (placed.page() == page) {
                Rectangle2D b = placed.box();
                obstacles.add(new Rectangle2D.Double(b.getX() - 3, b.getY(), b.getWidth() + 6, b.getHeight()));
                f.stop.uses.forEach(u -> ports.add(port(f.stop, u.key()).getX()));
            }
        });
        for (FlowGraph.Edge e : edges) {
            if (isOn(page, e.from()) != isOn(page, e.to())) {
                Stub s = isOn(page, e.from()) ? stub(e.from(), e.fromKey()) : stub(e.to(), e.toKey());
                double away = Math.signum(s.out().getY() - s.port().getY()) * MatchMarks.STUB_PT;
                double r = MatchMarks.RADIUS_PT;
                obstacles.add(
                        new Rectangle2D.Double(s.port().getX() - r, s.port().getY() + away - r, 2 * r, 2 * r));
            }
        }
        TreeSet<Double> xs = new TreeSet<>(ports);
        for (double x = area.getX(); x <= area.getMaxX(); x += PITCH_PT) {
            double at = x;
            if (ports.stream().noneMatch(p -> Math.abs(p - at) < PITCH_PT - 1)) {
                xs.add(x);
            }
        }
        int rows = (int) (area.getHeight() / PITCH_PT) + 1;
        double[] ys = new double[rows];
        for (int i = 0; i < rows; i++) {
            ys[i] = area.getY() + i * PITCH_PT;
        }
        return new LaneRouter(xs.stream().mapToDouble(x -> x).toArray(), ys, obstacles);
    }

    /** Whether anything drawn on the page lies in the way of a word. */
    boolean isFree(int page, Rectangle2D room) {
        return boxes.values().stream()
                        .noneMatch(p -> p.page() == page && p.box().intersects(room))
                && lines.values().stream().noneMatch(l -> l.page() == page && passes(l.course(), room));
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

    /** Whether another line than the edge's own passes. */
    boolean isCrossed(FlowGraph.Edge edge, Rectangle2D room) {
        return lines.entrySet().stream()
                .anyMatch(l -> l.getKey() != edge
                        && l.getValue().page() == lines.get(edge).page()
                        && passes(l.getValue().course(), room));
    }
}
