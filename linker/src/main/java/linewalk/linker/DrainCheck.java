package linewalk.linker;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import linewalk.drawing.Component;
import linewalk.drawing.End;
import linewalk.drawing.Finding;
import linewalk.drawing.Kind;
import linewalk.drawing.Line;
import linewalk.drawing.Port;
import linewalk.drawing.Rule;

/**
 * Drains that share a line with the returns of valves and reach the tank only through what holds oil up: a filter, a
 * cooler, a check valve. The pressure of the return then stands in the housings that the drain should relieve (common
 * practice, no source).
 */
final class DrainCheck {

    /** ISO 9461: Y is a pilot drain, L a leakage port. */
    private static final Pattern DRAIN = Pattern.compile("(?i)(?:L|Y|DR)\\d?");

    private static final Pattern RETURN = Pattern.compile("(?i)(?:T|R|TA|TB)\\d?");
    private static final Set<Kind> HOLDS_UP = EnumSet.of(Kind.FILTER, Kind.COOLER, Kind.CHECK_VALVE, Kind.ORIFICE);
    private static final Set<Kind> OPEN = EnumSet.of(Kind.SHUT_OFF_VALVE, Kind.HOSE, Kind.SWIVEL);

    private record At(PageDraft page, Component part, Port port) {
        String said() {
            return part.tag() + " port " + port.name() + " on " + page.address(port.place());
        }
    }

    private final Map<String, String> root = new HashMap<>();
    private final Map<String, List<At>> byVolume = new HashMap<>();
    private final Map<Component, List<String>> volumes = new HashMap<>();

    private DrainCheck() {}

    static void check(List<PageDraft> pages, Mates mates, MateLines lines, List<Finding> findings) {
        DrainCheck check = new DrainCheck();
        for (Pairing p : mates.pairings) {
            lines.line(p.a().ref()).ifPresent(a -> lines.line(p.b().ref())
                    .ifPresent(b -> check.root.put(check.find(a.id()), check.find(b.id()))));
        }
        pages.forEach(check::collect);
        check.byVolume.keySet().stream().sorted().forEach(v -> check.check(v, findings));
    }

    private String find(String line) {
        String at = line;
        while (root.containsKey(at) && !root.get(at).equals(at)) {
            at = root.get(at);
        }
        return at;
    }

    private void collect(PageDraft page) {
        Map<String, At> ports = new HashMap<>();
        page.components.forEach(c -> c.ports().forEach(p -> ports.put(p.id(), new At(page, c, p))));
        for (Line l : page.lines) {
            for (End e : l.ends()) {
                if (e instanceof End.AtPort p && ports.containsKey(p.port())) {
                    At at = ports.get(p.port());
                    byVolume.computeIfAbsent(find(l.id()), k -> new ArrayList<>())
                            .add(at);
                    volumes.computeIfAbsent(at.part, k -> new ArrayList<>()).add(find(l.id()));
                }
            }
        }
    }

    private void check(String volume, List<Finding> findings) {
        List<At> drains = named(volume, DRAIN);
        List<At> returns = named(volume, RETURN);
        if (drains.isEmpty() || returns.isEmpty() || tank(volume)) {
            return;
        }
        Component held = heldUpBy(volume);
        if (held != null) {
            At drain = drains.get(0);
            findings.add(new Finding(
                    Rule.DRAIN_ON_RETURN,
                    drain.page.page,
                    drain.port.place(),
                    List.of(),
                    List.of(drain.part.tag(), held.tag()),
                    "The drain from " + drain.said() + " joins the return from "
                            + returns.get(0).said() + " and reaches the tank only through " + held.tag()
                            + ", so return pressure stands in it.",
                    "lead the drain to the tank by a line of its own"));
        }
    }

    private List<At> named(String volume, Pattern port) {
        return byVolume.get(volume).stream()
                .filter(a -> a.part.kind() != Kind.TANK && a.port.name() != null)
                .filter(a -> port.matcher(a.port.name().strip()).matches())
                .toList();
    }

    private boolean tank(String volume) {
        return byVolume.getOrDefault(volume, List.of()).stream().anyMatch(a -> a.part.kind() == Kind.TANK);
    }

    /** The first part that every way to the tank leads through, or null where an open way does, or none. */
    private Component heldUpBy(String start) {
        Map<String, Component> by = new HashMap<>();
        Set<String> seen = new HashSet<>(Set.of(start));
        Deque<String> queue = new ArrayDeque<>(List.of(start));
        Component first = null;
        while (!queue.isEmpty()) {
            String v = queue.remove();
            if (tank(v)) {
                if (by.get(v) == null) {
                    return null;
                }
                first = first == null ? by.get(v) : first;
                continue;
            }
            for (At a : byVolume.getOrDefault(v, List.of())) {
                boolean holds = HOLDS_UP.contains(a.part.kind());
                if ((holds || OPEN.contains(a.part.kind()))
                        && volumes.get(a.part).size() == 2) {
                    for (String next : volumes.get(a.part)) {
                        if (seen.add(next)) {
                            by.put(next, by.get(v) != null || !holds ? by.get(v) : a.part);
                            queue.add(next);
                        }
                    }
                }
            }
        }
        return first;
    }
}
