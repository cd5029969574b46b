package linewalk.linker.step;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Passage;
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
                found.addAll(unnamed(p));
            } else if (p.named(by) >= 0) {
                found.add(p.named(by));
            }
        }
        return found;
    }

    /** Ports named for it, else those that no passage uses and that are no drain. */
    static List<Integer> unnamed(Part p) {
        List<Integer> named = new ArrayList<>();
        List<Integer> unused = new ArrayList<>();
        for (int i = 0; i < p.volumes().length; i++) {
            Port port = p.component().ports().get(i);
            if (p.lined()[i] && Words.pilot(port)) {
                named.add(p.volumes()[i]);
            } else if (p.lined()[i] && !Words.aside(port) && !passed(p, port)) {
                unused.add(p.volumes()[i]);
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
