package linewalk.importer.reference;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Flow;
import linewalk.drawing.Point;
import linewalk.importer.lettering.Label;
import linewalk.importer.lettering.ReferenceGrammar;
import linewalk.importer.line.Node;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Near;
import linewalk.importer.symbol.Arrowhead;
import linewalk.importer.symbol.Outline;

/**
 * Which way the oil goes at a line end: a filled triangle in the flag, an arrow character or word in the text, or an
 * arrowhead on the line. What the tip of a flag would say is kept apart.
 */
final class FlowMarks {

    private final Near<Arrowhead> arrows;

    FlowMarks(List<Arrowhead> arrows) {
        this.arrows = new Near<>(arrows, Arrowhead::box);
    }

    Flow at(Node end, Outline flag, Label label) {
        if (end == null || end.runs().isEmpty()) {
            return byWords(label.text(), null, null);
        }
        Direction out = end.run().outward(end);
        Flow said = byWords(label.text(), Direction.ofAngle(label.angleDeg()), out);
        if (said != Flow.UNKNOWN) {
            return said;
        }
        Box around = flag == null ? label.box().grow(label.sizePt()) : flag.box();
        Flow drawn = within(around, out);
        if (drawn != Flow.UNKNOWN) {
            return drawn;
        }
        return onLine(end, out, label.sizePt());
    }

    private static Flow byWords(String text, Direction reading, Direction out) {
        Flow worded = ReferenceGrammar.flow(text);
        if (worded != Flow.UNKNOWN || reading == null || out == null) {
            return worded;
        }
        double along = reading.along(out);
        if (text.contains("\u2192") || text.contains("->")) {
            return along > 0 ? Flow.OUT : Flow.IN;
        }
        if (text.contains("\u2190") || text.contains("<-")) {
            return along > 0 ? Flow.IN : Flow.OUT;
        }
        return Flow.UNKNOWN;
    }

    private Flow within(Box around, Direction out) {
        return arrows.touching(around).stream()
                .filter(a -> around.grow(0.5).contains(a.box()))
                .findFirst()
                .map(a -> flow(a.direction(), out))
                .orElse(Flow.UNKNOWN);
    }

    private Flow onLine(Node end, Direction out, double sizePt) {
        Box last = Box.around(end.place())
                .union(Box.around(end.place().plus(-out.dx() * 5 * sizePt, -out.dy() * 5 * sizePt)))
                .union(Box.around(end.place().plus(out.dx() * 3 * sizePt, out.dy() * 3 * sizePt)))
                .grow(0.6 * sizePt);
        return arrows.touching(last).stream()
                .filter(a -> last.contains(a.box().center()) && a.box().widthPt() < 2 * sizePt)
                .map(a -> flow(a.direction(), out))
                .filter(f -> f != Flow.UNKNOWN)
                .findFirst()
                .orElse(Flow.UNKNOWN);
    }

    /** What the flag's tip would say. */
    static Flow byTip(Node end, Outline flag) {
        Direction tip = flag == null || end == null || end.runs().isEmpty() ? null : tip(flag);
        return tip == null ? Flow.UNKNOWN : flow(tip, end.run().outward(end));
    }

    private static Flow flow(Direction arrow, Direction out) {
        double along = arrow.along(out);
        return along > 0.8 ? Flow.OUT : along < -0.8 ? Flow.IN : Flow.UNKNOWN;
    }

    /** A pentagon's tip; null for outlines with no tip or two. */
    private static Direction tip(Outline flag) {
        List<Point> p = corners(flag.stroke().points());
        if (p.size() != 5) {
            return null;
        }
        Point c = flag.box().center();
        Point far = p.get(0);
        for (Point q : p) {
            boolean onAxis = Math.abs(q.xPt() - c.xPt()) < 0.1 * flag.box().widthPt()
                    || Math.abs(q.yPt() - c.yPt()) < 0.1 * flag.box().heightPt();
            if (onAxis && (q.distancePt(c) > far.distancePt(c) || !onAxis(far, flag))) {
                far = q;
            }
        }
        return onAxis(far, flag) ? Direction.of(c, far) : null;
    }

    /** Points at which the outline turns. */
    private static List<Point> corners(List<Point> ring) {
        List<Point> corners = new ArrayList<>();
        int n = ring.size();
        for (int i = 0; i < n; i++) {
            Direction in = Direction.of(ring.get((i + n - 1) % n), ring.get(i));
            Direction on = Direction.of(ring.get(i), ring.get((i + 1) % n));
            if (in.along(on) < 0.99) {
                corners.add(ring.get(i));
            }
        }
        return corners;
    }

    private static boolean onAxis(Point q, Outline flag) {
        Point c = flag.box().center();
        return Math.abs(q.xPt() - c.xPt()) < 0.1 * flag.box().widthPt()
                || Math.abs(q.yPt() - c.yPt()) < 0.1 * flag.box().heightPt();
    }
}
