package linewalk.importer.line;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.lettering.Label;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Near;
import linewalk.importer.page.Segment;
import linewalk.importer.symbol.Arrowhead;

/** Dimension lines are no lines: two arrowheads point away from each other and a number stands between them. */
final class Dimensions {

    private static final Pattern MEASURE =
            Pattern.compile("(?i)[(]?[\u00d8\u2300R]?\\d[\\d .,/'\"-]*(?:mm|cm|m|ft|in|\u00b0)?(?: \\d+ ?in)?[\"')]?");

    private static final double AT_TOL = 3;

    private final Near<Arrowhead> arrows;
    private final Near<Label> labels;
    private final double tolPt;

    Dimensions(Near<Arrowhead> arrows, Near<Label> labels, double tolPt) {
        this.arrows = arrows;
        this.labels = labels;
        this.tolPt = tolPt;
    }

    /** The runs of a net that are dimension lines. */
    Set<Run> of(Net n) {
        List<Node> tips = n.nodes().stream()
                .filter(x -> !arrows.within(x.place(), AT_TOL * tolPt).isEmpty())
                .toList();
        Set<Run> found = new HashSet<>();
        for (Node a : tips) {
            for (Node b : tips) {
                Direction d = Direction.of(a.place(), b.place());
                if (a != b && points(b.place(), d) && points(a.place(), back(d)) && numbered(a.place(), b.place())) {
                    n.runs().stream().filter(r -> between(r, a, b)).forEach(found::add);
                }
            }
        }
        return found;
    }

    private static Direction back(Direction d) {
        return new Direction(-d.dx(), -d.dy());
    }

    private boolean between(Run r, Node a, Node b) {
        Segment line = new Segment(a.place(), b.place());
        return r.points().stream().allMatch(p -> line.distancePt(p) <= tolPt);
    }

    private boolean points(Point tip, Direction d) {
        return arrows.within(tip, AT_TOL * tolPt).stream()
                .anyMatch(a -> a.tip().distancePt(tip) <= AT_TOL * tolPt
                        && a.direction().along(d) > 0.95);
    }

    private boolean numbered(Point a, Point b) {
        Point middle = new Point((a.xPt() + b.xPt()) / 2, (a.yPt() + b.yPt()) / 2);
        double reach = 0.4 * a.distancePt(b) + 20 * tolPt;
        return labels.touching(Box.around(middle).grow(reach)).stream()
                .anyMatch(l -> l.box().distancePt(middle) < 1.5 * l.sizePt()
                        && MEASURE.matcher(l.text()).matches());
    }
}
