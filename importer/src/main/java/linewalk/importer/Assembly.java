package linewalk.importer;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import linewalk.drawing.Component;
import linewalk.drawing.End;
import linewalk.drawing.Kind;
import linewalk.drawing.Line;
import linewalk.drawing.LineKind;
import linewalk.drawing.PageKey;
import linewalk.drawing.Point;
import linewalk.drawing.ReferenceReading;
import linewalk.importer.line.Net;
import linewalk.importer.line.Node;
import linewalk.importer.line.Run;
import linewalk.importer.reference.LineLabels;
import linewalk.importer.reference.References;

/** Nets, ports and references to the lines of a reading. */
final class Assembly {

    /** Dashes of one sheet that differ by more than this are two kinds of line. */
    private static final double TWO_KINDS = 1.5;

    private final PageKey page;
    private final Ids ids;
    private static final Set<Kind> ALONE = EnumSet.of(Kind.TANK, Kind.SWITCH, Kind.GAUGE);

    private final Parts parts;
    private final References references;
    private final LineLabels numbers;
    private final double tolPt;

    Assembly(PageKey page, Ids ids, Parts parts, References references, LineLabels numbers, double tolPt) {
        this.page = page;
        this.ids = ids;
        this.parts = parts;
        this.references = references;
        this.numbers = numbers;
        this.tolPt = tolPt;
    }

    /** Candidates with the line number that stands nearest on their line. */
    List<ReferenceReading> references(List<Net> nets) {
        Map<ReferenceReading, String> labels = new IdentityHashMap<>();
        for (Net n : nets) {
            for (Node node : n.nodes()) {
                ReferenceReading r = references.at().get(node);
                if (r != null && r.label() == null) {
                    numbers.numberAt(node).ifPresent(l -> labels.put(r, l));
                }
            }
        }
        return references.all().stream()
                .map(r -> labels.containsKey(r) ? labelled(r, labels.get(r)) : r)
                .toList();
    }

    private static ReferenceReading labelled(ReferenceReading r, String label) {
        return new ReferenceReading(
                r.id(),
                r.place(),
                r.box(),
                r.text(),
                r.form(),
                r.readings(),
                label,
                r.flow(),
                r.tip(),
                r.evidence(),
                r.origin(),
                r.confidence());
    }

    /**
     * Lines that reach a port or a reference; other line work joins nothing, nor does what leads from a tank or a sensor to
     * itself: the level of the oil, a capillary.
     */
    List<Line> lines(List<Net> nets, List<Component> components) {
        Set<String> alone = components.stream()
                .filter(c -> ALONE.contains(c.kind()))
                .map(Component::id)
                .collect(Collectors.toSet());
        double limit = dashLimit(nets);
        List<Line> lines = new ArrayList<>();
        for (Net n : nets) {
            List<End> ends = ends(n);
            if (ends.stream().anyMatch(e -> !(e instanceof End.Open)) && !withinOne(ends, alone)) {
                Point start = n.nodes().stream()
                        .map(Node::place)
                        .min(Comparator.comparingDouble(Point::xPt).thenComparingDouble(Point::yPt))
                        .orElseThrow();
                lines.add(new Line(
                        ids.of("l", start),
                        page,
                        kind(n, limit),
                        numbers.number(n).orElse(null),
                        numbers.size(n).orElse(null),
                        n.confidence(),
                        ends,
                        n.runs().stream().map(Run::points).toList()));
            }
        }
        return lines;
    }

    private static boolean withinOne(List<End> ends, Set<String> alone) {
        return ends.size() > 1
                && ends.get(0) instanceof End.AtPort first
                && alone.contains(first.component())
                && ends.stream()
                        .allMatch(
                                e -> e instanceof End.AtPort p && p.component().equals(first.component()));
    }

    private List<End> ends(Net n) {
        List<End> ends = new ArrayList<>();
        Set<String> seen = new LinkedHashSet<>();
        for (Node node : n.nodes()) {
            ReferenceReading r = references.at().get(node);
            if (r != null) {
                ends.add(new End.AtReference(r.id(), node.place()));
            } else if (node.body() != null) {
                parts.port(node)
                        .filter(p -> seen.add(p.id()))
                        .ifPresent(p -> ends.add(new End.AtPort(parts.owner(node), p.id(), node.place())));
            } else if (node.free() && node.run().lengthPt() > 4 * tolPt) {
                ends.add(new End.Open(node.place()));
            }
        }
        return ends;
    }

    private LineKind kind(Net n, double limitPt) {
        double solid = n.runs().stream()
                .filter(r -> r.dash().solid())
                .mapToDouble(Run::lengthPt)
                .sum();
        double dashed = n.runs().stream()
                .filter(r -> !r.dash().solid())
                .mapToDouble(Run::lengthPt)
                .sum();
        if (solid >= dashed || joinedSolidly(n)) {
            return LineKind.WORKING;
        }
        double on = n.runs().stream()
                .filter(r -> !r.dash().solid())
                .max(Comparator.comparingDouble(Run::lengthPt))
                .map(r -> r.dash().onPt())
                .orElse(0.0);
        return on > limitPt ? LineKind.PILOT : LineKind.DRAIN;
    }

    /** A solid way leads from one part or reference to another, however long the pilot line is that starts from it. */
    private boolean joinedSolidly(Net n) {
        Set<Node> seen = new HashSet<>();
        for (Node start : n.nodes()) {
            Set<Object> ends = new HashSet<>();
            Deque<Node> open = new ArrayDeque<>(List.of(start));
            while (!open.isEmpty()) {
                Node at = open.pop();
                if (seen.add(at)) {
                    Optional.<Object>ofNullable(at.body())
                            .or(() -> Optional.ofNullable(references.at().get(at)))
                            .ifPresent(ends::add);
                    at.runs().stream().filter(r -> r.dash().solid()).forEach(r -> open.add(r.other(at)));
                }
            }
            if (ends.size() > 1) {
                return true;
            }
        }
        return false;
    }

    /** Long dashes are pilot lines and short ones drain lines (ISO 1219-1); with one length only, all are drain lines. */
    private static double dashLimit(List<Net> nets) {
        double[] on = nets.stream()
                .flatMap(n -> n.runs().stream())
                .filter(r -> !r.dash().solid())
                .mapToDouble(r -> r.dash().onPt())
                .sorted()
                .toArray();
        if (on.length == 0 || on[on.length - 1] < TWO_KINDS * on[0]) {
            return Double.MAX_VALUE;
        }
        return Math.sqrt(on[0] * on[on.length - 1]);
    }
}
