package linewalk.importer.line;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import linewalk.drawing.Point;
import linewalk.importer.page.Direction;
import linewalk.importer.symbol.Outline;

/**
 * Shafts are no lines: two parallel strokes of one length that leave a machine's circle side by side, in line with its
 * centre (ISO 1219-1).
 */
final class Shafts {

    private static final double WIDEST = 0.5;

    /** Edges this close are a shaft whatever their lengths, in diameters. */
    private static final double CLOSE = 0.25;
    /** Edges shorter than this are a shaft only where they lead no further. */
    private static final double STUB = 0.15;

    private static final double OFF_CENTRE = 0.15;
    private static final double UNLIKE = 0.3;

    /**
     * A leg of line work out of a circle.
     *
     * @param endsAlone nothing else is joined to its other end
     */
    private record Edge(
            List<Run> leg, Outline circle, Point at, Direction inward, double lengthPt, boolean endsAlone) {}

    private final Set<Run> driving = Collections.newSetFromMap(new IdentityHashMap<>());
    private final double tolPt;

    Shafts(List<Net> nets, double tolPt) {
        this.tolPt = tolPt;
        List<Edge> edges = new ArrayList<>();
        nets.forEach(n -> edges(n, edges));
        for (Edge a : edges) {
            for (Edge b : edges) {
                if (a != b && a.circle() == b.circle() && pair(a, b)) {
                    driving.addAll(a.leg());
                    driving.addAll(b.leg());
                    driving.addAll(behindShoe(a, b, nets));
                }
            }
        }
    }

    /** Runs of a net that are a shaft's edges. */
    Set<Run> of(Net n) {
        Set<Run> found = new HashSet<>(n.runs());
        found.retainAll(driving);
        return found;
    }

    private void edges(Net n, List<Edge> out) {
        for (Node contact : n.contacts()) {
            for (Outline o : contact.body().outlines()) {
                if (o.circle() && contact.runs().size() == 1 && o.edgeDistancePt(contact.place()) <= 2 * tolPt) {
                    List<Run> leg = Net.leg(contact);
                    if (!isStraight(leg, contact) && end(leg, contact).body() != contact.body()) {
                        continue;
                    }
                    double lengthPt = leg.stream().mapToDouble(Run::lengthPt).sum();
                    out.add(new Edge(
                            leg,
                            o,
                            contact.place(),
                            contact.run().outward(contact),
                            lengthPt,
                            endsAlone(leg, contact, n)));
                }
            }
        }
    }

    private static boolean endsAlone(List<Run> leg, Node from, Net net) {
        return end(leg, from).free() || net.contacts().stream().allMatch(c -> c.body() == from.body());
    }

    private static Node end(List<Run> leg, Node from) {
        Node end = from;
        for (Run r : leg) {
            end = r.other(end);
        }
        return end;
    }

    /** A shaft's end may be closed: then its edges are one leg, out and back. */
    private boolean isStraight(List<Run> leg, Node from) {
        Direction ahead = from.run().outward(from);
        return leg.stream().flatMap(r -> r.points().stream()).allMatch(p -> ahead.aside(from.place(), p) <= 2 * tolPt);
    }

    /** What is left of the shorter edge beyond a brake's shoe that hides some of it. */
    private List<Run> behindShoe(Edge a, Edge b, List<Net> nets) {
        Edge shorter = a.lengthPt() < b.lengthPt() ? a : b;
        double to = Math.max(a.lengthPt(), b.lengthPt()) + tolPt;
        return nets.stream()
                .flatMap(n -> n.runs().stream())
                .filter(r -> r.points().stream().allMatch(p -> {
                    double ahead = -shorter.inward().ahead(shorter.at(), p);
                    return ahead > shorter.lengthPt() - tolPt
                            && ahead < to
                            && shorter.inward().aside(shorter.at(), p) < tolPt;
                }))
                .toList();
    }

    private static boolean pair(Edge a, Edge b) {
        double diameter = a.circle().box().widthPt();
        Point centre = a.circle().box().center();
        double apart = a.at().distancePt(b.at());
        Point middle = new Point((a.at().xPt() + b.at().xPt()) / 2, (a.at().yPt() + b.at().yPt()) / 2);
        return a.inward().along(b.inward()) > 0.99
                && apart < WIDEST * diameter
                && a.inward().aside(middle, centre) < OFF_CENTRE * diameter
                && (a.endsAlone() && b.endsAlone() || Math.min(a.lengthPt(), b.lengthPt()) > STUB * diameter)
                && (apart < CLOSE * diameter
                        || Math.abs(a.lengthPt() - b.lengthPt()) < UNLIKE * Math.max(a.lengthPt(), b.lengthPt()));
    }
}
