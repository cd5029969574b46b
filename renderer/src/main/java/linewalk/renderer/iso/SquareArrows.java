package linewalk.renderer.iso;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import linewalk.drawing.Component;
import linewalk.drawing.Passage;

/**
 * Which way the arrows in a valve's squares point: from the supply and to the return. Letters tell these ports; else the
 * passages themselves, where they agree over all positions that oil comes in at one port alone, leaves at one alone, and
 * goes both ways at all others.
 */
final class SquareArrows {

    private final Component valve;
    private final Set<String> supply = new HashSet<>();
    private final Set<String> tank = new HashSet<>();

    SquareArrows(Component valve) {
        this.valve = valve;
        List<Passage> all =
                valve.positions().stream().flatMap(p -> p.passages().stream()).toList();
        Set<String> from = all.stream().map(Passage::from).collect(Collectors.toSet());
        Set<String> to = all.stream().map(Passage::to).collect(Collectors.toSet());
        boolean lettered = valve.ports().stream().anyMatch(p -> p.name() != null);
        Set<String> both = new HashSet<>(from);
        both.retainAll(to);
        from.removeAll(both);
        to.removeAll(both);
        if (!lettered && !both.isEmpty() && from.size() == 1 && to.size() == 1) {
            supply.addAll(from);
            tank.addAll(to);
        }
    }

    /** From the first port of a passage to its second. */
    boolean isForth(Passage x) {
        return x.oneWay() || isSupply(x.from()) || isTank(x.to());
    }

    boolean isBack(Passage x) {
        return !isForth(x) && (isSupply(x.to()) || isTank(x.from()));
    }

    private boolean isSupply(String port) {
        return supply.contains(port) || named(port, "P\\d?");
    }

    private boolean isTank(String port) {
        return tank.contains(port) || named(port, "[TRS]\\d?");
    }

    private boolean named(String id, String pattern) {
        return valve.findPort(id)
                .filter(q -> q.name() != null && q.name().strip().matches("(?i)" + pattern))
                .isPresent();
    }
}
