package linewalk.importer;

import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import linewalk.importer.line.Net;
import linewalk.importer.line.Node;
import linewalk.importer.symbol.Body;
import linewalk.importer.symbol.Designations;
import linewalk.importer.symbol.Designations.Named;

/** Rods of level switches and temperature sensors that hang into a reservoir, and floats in it: no pipes. */
final class Probes {

    /** The letters of sensors (ISO 1219-2, IEC 81346-2), or those of instruments. */
    private static final Pattern SENSOR = Pattern.compile("-?(?:\\d{1,2}-)?\\d{0,2}(?:[LTP]?S|[LT]T|B[LT]?)\\d.*");

    private Probes() {}

    /** Nets without those that join nothing but a reservoir and a sensor that has no other line. */
    static List<Net> without(List<Net> nets, Map<Body, Named> named) {
        return nets.stream()
                .filter(n -> !isRod(n, nets, named) && !isFloat(n, named))
                .toList();
    }

    /** It lies in a reservoir and leads to nothing that has a name. */
    private static boolean isFloat(Net n, Map<Body, Named> named) {
        List<Body> ends = n.contacts().stream().map(Node::body).toList();
        return ends.stream().allMatch(b -> b.reservoir() || !named.containsKey(b))
                && ends.stream().filter(Body::reservoir).anyMatch(b -> n.runs().stream()
                        .allMatch(r -> r.points().stream().allMatch(b.box()::contains)));
    }

    /** It leads from a sensor that has no other line into a reservoir. */
    private static boolean isRod(Net n, List<Net> nets, Map<Body, Named> named) {
        List<Body> ends = n.contacts().stream().map(Node::body).toList();
        return ends.size() == 2
                && ends.stream().filter(b -> isIn(b, nets, named)).count() == 1
                && ends.stream()
                        .filter(b -> !isIn(b, nets, named))
                        .allMatch(b -> named.containsKey(b)
                                && SENSOR.matcher(Designations.of(named.get(b).label()))
                                        .matches()
                                && nets.stream().filter(o -> o != n).noneMatch(o -> o.contacts().stream()
                                        .anyMatch(c -> c.body() == b)));
    }

    /** A reservoir, or a float that lies in one. */
    private static boolean isIn(Body b, List<Net> nets, Map<Body, Named> named) {
        return b.reservoir()
                || !named.containsKey(b)
                        && nets.stream()
                                .flatMap(n -> n.contacts().stream())
                                .anyMatch(c ->
                                        c.body().reservoir() && c.body().box().contains(b.box()));
    }
}
