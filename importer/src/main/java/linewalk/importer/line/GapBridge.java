package linewalk.importer.line;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.lettering.Label;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Near;
import linewalk.importer.page.Segment;

/**
 * Bridges gaps that a drafter left in a line for a text. Two free ends of one style that face each other in one straight
 * line, with a label between them that fills the gap, or a crossing line, or the gap of a dashed line, are one line.
 */
final class GapBridge {

    /** How much longer than its text a gap may be, in text sizes. */
    private static final double SLACK = 3;

    private static final double LONGEST_PT = 400;

    /** How wide a gap at a crossing may be, in tolerances. */
    private static final double CROSSING_TOL = 24;

    /** How long a dash at a corner is at most, in dashes of its line. */
    private static final double ONE_DASH = 1.5;

    private final List<Node> nodes;
    private final Near<Label> labels;
    private final Near<Segment> pieces;
    private final double tolPt;

    GapBridge(List<Node> nodes, List<Label> labels, double tolPt) {
        this.nodes = nodes;
        this.labels = new Near<>(labels, Label::box);
        this.tolPt = tolPt;
        List<Segment> all = new ArrayList<>();
        for (Node n : nodes) {
            for (Run r : n.runs()) {
                for (int i = 1; i < r.points().size() && r.from() == n; i++) {
                    all.add(new Segment(r.points().get(i - 1), r.points().get(i)));
                }
            }
        }
        this.pieces = new Near<>(all, Segment::box);
    }

    void bridge() {
        List<Node> free = nodes.stream().filter(Node::free).toList();
        Near<Node> near = new Near<>(free, n -> Box.around(n.place()));
        for (Node a : free) {
            if (!a.free()) {
                continue;
            }
            Direction out = a.run().outward(a);
            Node best = null;
            for (Node b : near.touching(ahead(a.place(), out))) {
                if (b != a && b.free() && faces(a, b, out) && (best == null || closer(a, b, best))) {
                    best = b;
                }
            }
            if (best != null
                    && (textBetween(a.place(), best.place())
                            || crossedBetween(a, best)
                            || dashBetween(a, best)
                            || dashBetween(best, a)
                            || lastGap(a, best)
                            || lastGap(best, a))) {
                join(a, best);
            }
        }
    }

    private Box ahead(Point p, Direction d) {
        return Box.around(p)
                .union(Box.around(p.plus(d.dx() * LONGEST_PT, d.dy() * LONGEST_PT)))
                .grow(2 * tolPt);
    }

    private static boolean closer(Node a, Node b, Node best) {
        return a.place().distancePt(b.place()) < a.place().distancePt(best.place());
    }

    private boolean faces(Node a, Node b, Direction out) {
        boolean oneStyle = (a.run().dash().solid() == b.run().dash().solid() || lastGap(a, b) || lastGap(b, a))
                && Math.abs(a.run().widthPt() - b.run().widthPt())
                        <= 0.5 * Math.max(a.run().widthPt(), b.run().widthPt());
        return oneStyle
                && out.ahead(a.place(), b.place()) > 0
                && out.aside(a.place(), b.place()) < 1.5 * tolPt
                && out.along(b.run().outward(b)) < -0.98;
    }

    /** A dashed line's last gap, before what is drawn solid: its stub at a port, the shaft of its arrow. */
    private static boolean lastGap(Node dashed, Node solid) {
        return solid.run().dash().solid()
                && dashed.place().distancePt(solid.place())
                        < dashed.run().dash().onPt();
    }

    private boolean textBetween(Point a, Point b) {
        double gap = a.distancePt(b);
        Segment between = new Segment(a, b);
        return labels.touching(between.box().grow(tolPt)).stream().anyMatch(l -> {
            double text = Math.max(l.box().widthPt(), l.box().heightPt());
            return gap < text + SLACK * l.sizePt()
                    && l.box().grow(0.2 * l.sizePt()).contains(between.nearest(l.center()));
        });
    }

    /** A line may be broken where another one crosses it. */
    private boolean crossedBetween(Node a, Node b) {
        double gap = a.place().distancePt(b.place());
        if (gap > CROSSING_TOL * tolPt) {
            return false;
        }
        Segment between = new Segment(a.place(), b.place());
        return pieces.touching(between.box()).stream().anyMatch(s -> {
            Point x = s.crossing(between);
            return x != null && x.distancePt(a.place()) > 0.2 * gap && x.distancePt(b.place()) > 0.2 * gap;
        });
    }

    /** The last dash of a dashed line, around its corner, leads on over a gap of its own. */
    private static boolean dashBetween(Node a, Node b) {
        double gap = a.place().distancePt(b.place());
        Run dash = a.run();
        return dash.dash().solid()
                && dash.other(a).runs().stream()
                        .filter(r -> !r.dash().solid())
                        .anyMatch(r -> gap < r.dash().onPt()
                                && dash.lengthPt() < ONE_DASH * r.dash().onPt());
    }

    private static void join(Node a, Node b) {
        Run like = a.run();
        Run bridge = new Run(a, b, List.of(a.place(), b.place()), like.widthPt(), like.dash(), true);
        a.runs().add(bridge);
        b.runs().add(bridge);
    }
}
