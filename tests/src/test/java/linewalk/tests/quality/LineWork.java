package linewalk.tests.quality;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The flow lines of one page, a net at a time: lines of one net may run together, and what they share is counted once.
 */
final class LineWork {

    private final PrintPage page;
    private final Map<Thing.Line, List<Segment>> segments = new HashMap<>();
    private final List<List<Thing.Line>> nets = new ArrayList<>();

    LineWork(PrintPage page) {
        this.page = page;
        Map<String, List<Thing.Line>> named = new HashMap<>();
        for (Thing.Line line : page.lines()) {
            segments.put(line, Segment.of(line));
            List<Thing.Line> net = line.name().isEmpty() ? null : named.get(line.name());
            if (net == null) {
                net = new ArrayList<>();
                nets.add(net);
                named.put(line.name(), net);
            }
            net.add(line);
        }
    }

    private List<Segment> of(List<Thing.Line> net) {
        return net.stream().flatMap(l -> segments.get(l).stream()).toList();
    }

    /** Corners; one shared by lines of a net counts once. */
    int bends() {
        int bends = 0;
        for (List<Thing.Line> net : nets) {
            Set<String> corners = new HashSet<>();
            for (Thing.Line line : net) {
                List<Segment> s = segments.get(line);
                for (int i = 1; i < s.size(); i++) {
                    if (!s.get(i).isAlong(s.get(i - 1))) {
                        Point2D p = s.get(i).from();
                        corners.add(Math.round(p.getX()) + " " + Math.round(p.getY()));
                    }
                }
            }
            bends += corners.size();
        }
        return bends;
    }

    /** Places where lines of two nets pass through each other. */
    int crossings() {
        int crossings = 0;
        for (int i = 0; i < nets.size(); i++) {
            for (int k = i + 1; k < nets.size(); k++) {
                crossings += crossings(of(nets.get(i)), of(nets.get(k)));
            }
        }
        return crossings;
    }

    private static int crossings(List<Segment> a, List<Segment> b) {
        Set<String> places = new HashSet<>();
        for (Segment s : a) {
            for (Segment t : b) {
                if (s.crosses(t)) {
                    Point2D p = meeting(s, t);
                    places.add(Math.round(p.getX()) + " " + Math.round(p.getY()));
                }
            }
        }
        return places.size();
    }

    private static Point2D meeting(Segment s, Segment t) {
        double dx = s.to().getX() - s.from().getX();
        double dy = s.to().getY() - s.from().getY();
        double ex = t.to().getX() - t.from().getX();
        double ey = t.to().getY() - t.from().getY();
        double u = ((t.from().getX() - s.from().getX()) * ey
                        - (t.from().getY() - s.from().getY()) * ex)
                / (dx * ey - dy * ex);
        return new Point2D.Double(s.from().getX() + u * dx, s.from().getY() + u * dy);
    }

    double lengthPt() {
        double length = 0;
        for (List<Thing.Line> net : nets) {
            List<Segment> drawn = new ArrayList<>();
            for (Segment s : of(net)) {
                length += s.lengthPt() - covered(s, drawn);
                drawn.add(s);
            }
        }
        return length;
    }

    /** How much of a segment others drawn before have drawn already. */
    private static double covered(Segment s, List<Segment> drawn) {
        List<double[]> spans = new ArrayList<>();
        for (Segment d : drawn) {
            if (s.sharedPt(d) > 0) {
                double a = s.along(d.from());
                double b = s.along(d.to());
                spans.add(new double[] {Math.max(0, Math.min(a, b)), Math.min(s.lengthPt(), Math.max(a, b))});
            }
        }
        spans.sort((x, y) -> Double.compare(x[0], y[0]));
        double covered = 0;
        double end = 0;
        for (double[] span : spans) {
            covered += Math.max(0, span[1] - Math.max(end, span[0]));
            end = Math.max(end, span[1]);
        }
        return covered;
    }

    /** Lines of two nets that run on top of each other, and lines that run through a symbol. */
    List<Overlap> overlaps() {
        List<Overlap> found = new ArrayList<>();
        for (int i = 0; i < nets.size(); i++) {
            for (int k = i + 1; k < nets.size(); k++) {
                shared(nets.get(i), nets.get(k), found);
            }
        }
        for (Thing.Line line : page.lines()) {
            for (Thing.Symbol symbol : page.symbols()) {
                through(line, symbol, found);
            }
        }
        return found;
    }

    private void shared(List<Thing.Line> a, List<Thing.Line> b, List<Overlap> found) {
        for (Segment s : of(a)) {
            for (Segment t : of(b)) {
                if (s.sharedPt(t) > 2 * Segment.NEAR_PT) {
                    Rectangle2D place = box(s).createIntersection(box(t));
                    String what = named(a.get(0)) + " and " + named(b.get(0));
                    found.add(new Overlap("line-line", page.number(), place, what));
                    return;
                }
            }
        }
    }

    private void through(Thing.Line line, Thing.Symbol symbol, List<Overlap> found) {
        Rectangle2D b = symbol.box();
        Rectangle2D inner = new Rectangle2D.Double(b.getX() + 1, b.getY() + 1, b.getWidth() - 2, b.getHeight() - 2);
        double inside =
                segments.get(line).stream().mapToDouble(s -> s.withinPt(inner)).sum();
        if (inside > 1) {
            found.add(new Overlap("line-symbol", page.number(), b, named(line) + " and " + symbol.name()));
        }
    }

    private static String named(Thing.Line line) {
        return line.name().isEmpty() ? "a line" : line.name();
    }

    private static Rectangle2D box(Segment s) {
        Rectangle2D box = new Rectangle2D.Double();
        box.setFrameFromDiagonal(s.from(), s.to());
        return new Rectangle2D.Double(box.getX() - 1, box.getY() - 1, box.getWidth() + 2, box.getHeight() + 2);
    }
}
