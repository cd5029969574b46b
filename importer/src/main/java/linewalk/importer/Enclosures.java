package linewalk.importer;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;
import linewalk.drawing.Box;
import linewalk.drawing.Enclosure;
import linewalk.drawing.PageKey;
import linewalk.drawing.Point;
import linewalk.importer.lettering.Label;
import linewalk.importer.line.Net;
import linewalk.importer.page.Segment;
import linewalk.importer.reference.LineLabels;

/** Titles and face ports of the chain lines around blocks and units. */
final class Enclosures {

    private static final Pattern TITLE = Pattern.compile("(?=.*\\p{L}{2,}).{2,40}");

    /** How far a title stands from the upper or lower edge, and a port's name from its port, in text sizes. */
    private static final double BESIDE = 2.2;

    private final PageKey page;
    private final List<Label> labels;
    private final List<Segment> lines;

    /** @param taken labels that already say something else */
    Enclosures(PageKey page, List<Label> labels, Set<Label> taken, List<Net> nets) {
        this.page = page;
        this.labels = labels.stream().filter(l -> !taken.contains(l)).toList();
        this.lines = nets.stream()
                .flatMap(n -> n.runs().stream())
                .flatMap(r -> Segment.of(r.points()).stream())
                .toList();
    }

    Enclosure of(Box b) {
        return new Enclosure(title(b), page, b, ports(b));
    }

    /** In the upper left corner, else along the upper or lower edge, inside before outside. */
    private String title(Box b) {
        return labels.stream()
                .filter(l -> corner(l, b) || TITLE.matcher(l.text()).matches() && alongEdge(l, b))
                .min(Comparator.comparing((Label l) -> !corner(l, b))
                        .thenComparing(l -> !b.contains(l.center()))
                        .thenComparingDouble(l -> edgePt(l, b)))
                .map(Label::text)
                .orElse(null);
    }

    private static boolean corner(Label l, Box b) {
        return b.contains(l.center())
                && l.box().y0Pt() - b.y0Pt() < 3 * l.sizePt()
                && l.box().x0Pt() - b.x0Pt() < 3 * l.sizePt();
    }

    private static boolean alongEdge(Label l, Box b) {
        return !l.upright()
                && l.box().x0Pt() > b.x0Pt() - l.sizePt()
                && l.box().x1Pt() < b.x1Pt() + l.sizePt()
                && edgePt(l, b) < BESIDE * l.sizePt();
    }

    private static double edgePt(Label l, Box b) {
        double y = l.center().yPt();
        return Math.min(Math.abs(y - b.y0Pt()), Math.abs(y - b.y1Pt()));
    }

    private List<Enclosure.FacePort> ports(Box b) {
        List<Segment> faces = faces(b);
        return lines.stream()
                .flatMap(s -> faces.stream().map(f -> f.crossing(s)).filter(Objects::nonNull))
                .flatMap(x -> labels.stream()
                        .filter(l -> LineLabels.isPortName(l) && l.box().distancePt(x) < BESIDE * l.sizePt())
                        .min(Comparator.comparingDouble(l -> l.box().distancePt(x)))
                        .map(l -> new Enclosure.FacePort(l.text(), x))
                        .stream())
                .distinct()
                .toList();
    }

    private static List<Segment> faces(Box b) {
        Point[] c = {
            new Point(b.x0Pt(), b.y0Pt()), new Point(b.x1Pt(), b.y0Pt()),
            new Point(b.x1Pt(), b.y1Pt()), new Point(b.x0Pt(), b.y1Pt())
        };
        return List.of(
                new Segment(c[0], c[1]), new Segment(c[1], c[2]), new Segment(c[2], c[3]), new Segment(c[3], c[0]));
    }
}
