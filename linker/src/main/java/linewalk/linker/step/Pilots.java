package linewalk.linker.step;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Component;
import linewalk.drawing.Passage;
import linewalk.drawing.Point;
import linewalk.drawing.Port;
import linewalk.drawing.Position;

/** By which of its ports a part's pilot line brings a position about. */
final class Pilots {

    private Pilots() {}

    /** Volumes at the pilot ports; empty where the position is not brought about by a pilot, or no line was read there. */
    static List<Integer> of(Part p, Position x) {
        List<Integer> found = new ArrayList<>();
        boolean other =
                x.how() == Position.How.SOLENOID || x.how() == Position.How.LEVER || x.how() == Position.How.SPRING;
        for (String by : other ? List.<String>of() : x.by()) {
            if (by.equalsIgnoreCase("pilot")) {
                found.addAll(atEnd(p, x));
            } else if (p.named(by) >= 0) {
                found.add(p.named(by));
            }
        }
        return found;
    }

    /**
     * Where pilots without names stand at both ends, a pilot moves the square beside it (ISO 1219-1): positions are listed
     * as their squares stand, from left to right or from above.
     */
    private static List<Integer> atEnd(Part p, Position x) {
        List<Integer> ports = ports(p);
        Component c = p.component();
        long piloted = c.positions().stream().filter(o -> o.by().equals(x.by())).count();
        if (piloted == 2 && ports.size() > 1) {
            boolean first = c.positions().stream()
                    .filter(o -> o.by().equals(x.by()))
                    .findFirst()
                    .orElseThrow()
                    .equals(x);
            Box around =
                    Box.around(ports.stream().map(i -> c.ports().get(i).place()).toList());
            List<Integer> near = ports.stream()
                    .filter(i -> {
                        Point port = c.ports().get(i).place();
                        double off = around.widthPt() > around.heightPt()
                                ? port.xPt() - c.place().xPt()
                                : port.yPt() - c.place().yPt();
                        return first ? off < 0 : off > 0;
                    })
                    .toList();
            ports = near.isEmpty() ? ports : near;
        }
        return volumes(p, ports);
    }

    /** Volumes at ports named for it, else at those that no passage uses and that are no drain. */
    static List<Integer> unnamed(Part p) {
        return volumes(p, ports(p));
    }

    private static List<Integer> volumes(Part p, List<Integer> ports) {
        return ports.stream().map(i -> p.volumes()[i]).toList();
    }

    private static List<Integer> ports(Part p) {
        List<Integer> named = new ArrayList<>();
        List<Integer> unused = new ArrayList<>();
        for (int i = 0; i < p.volumes().length; i++) {
            Port port = p.component().ports().get(i);
            if (p.lined()[i] && Words.pilot(port)) {
                named.add(i);
            } else if (p.lined()[i] && !Words.aside(port) && !passed(p, port)) {
                unused.add(i);
            }
        }
        return named.isEmpty() ? unused : named;
    }

    private static boolean passed(Part p, Port port) {
        for (Position x : p.component().positions()) {
            for (Passage way : x.passages()) {
                if (way.from().equals(port.id()) || way.to().equals(port.id())) {
                    return true;
                }
            }
        }
        return p.component().positions().isEmpty();
    }

    /** A pilot opens it, but no line was read where it would come in. */
    static boolean unread(Part p) {
        return Kinds.PILOT_OPENED.contains(p.kind())
                && p.component().positions().stream()
                        .anyMatch(x -> x.how() == Position.How.PILOT && of(p, x).isEmpty());
    }
}
