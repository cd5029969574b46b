package linewalk.linker;

import java.util.List;
import java.util.Set;
import linewalk.drawing.Component;
import linewalk.drawing.Kind;

/** Which pumps feed a part in a step: told to who asked for the wrong one. */
record FeedingPumps(Circuit circuit, Steps steps) {

    /** Words to be added where no way was found; empty where the pump that was asked for is as good as any. */
    String instead(Route route, String step) {
        Component from = route.from().get(0);
        if (from.kind() != Kind.PUMP || route.via().isEmpty()) {
            return "";
        }
        List<Component> part = circuit.tagged(route.via().get(route.via().size() - 1));
        List<String> pumps = circuit.set.components().stream()
                .filter(c -> c.kind() == Kind.PUMP)
                .map(Component::tag)
                .distinct()
                .filter(pump -> feeds(pump, part, step))
                .toList();
        return pumps.isEmpty() || pumps.contains(from.tag())
                ? ""
                : "; in this step " + part.get(0).tag() + " is fed by " + String.join(" and ", pumps);
    }

    private boolean feeds(String pump, List<Component> part, String step) {
        Set<String> fed = steps.fedBy(step, pump);
        return part.stream()
                .flatMap(c -> c.ports().stream())
                .flatMap(p -> circuit.atPort(p).stream())
                .anyMatch(s -> fed.contains(circuit.lines.get(s.line()).id()));
    }
}
