package linewalk.renderer.iso;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import linewalk.drawing.Component;
import linewalk.drawing.Passage;
import linewalk.drawing.Position;
import linewalk.renderer.iso.SpoolPorts.Spot;

/** What one position joins: arrows from port to port, a wall where a port is shut. */
final class SquareArt {

    static final double HEIGHT = 6;

    private final Component valve;
    private final Map<String, Spot> spots;
    private final double cell;
    private final SquareArrows arrows;

    SquareArt(Component valve, SpoolPorts ports) {
        this.valve = valve;
        spots = ports.spots();
        cell = ports.cell();
        arrows = new SquareArrows(valve);
    }

    void draw(Pen p, Position position) {
        List<Passage> placed = position.passages().stream()
                .filter(x -> spots.containsKey(x.from()) && spots.containsKey(x.to()))
                .filter(x -> !x.from().equals(x.to()))
                .toList();
        int loops = 0;
        for (List<Passage> group : groups(placed)) {
            if (isJoint(group)) {
                joint(p, group);
                continue;
            }
            for (Passage x : group) {
                boolean level = spots.get(x.from()).above() == spots.get(x.to()).above();
                if (level) {
                    loop(p, x, 1.9 + 0.8 * loops++);
                } else {
                    straight(p, x);
                }
            }
        }
        walls(p, position);
    }

    private void walls(Pen p, Position position) {
        Set<String> open = new HashSet<>();
        position.passages().forEach(x -> open.addAll(List.of(x.from(), x.to())));
        spots.forEach((id, s) -> {
            boolean told =
                    valve.findPort(id).filter(q -> !Roles.isAside(q.name())).isPresent();
            if (told && !open.contains(id)) {
                Signs.shut(p, s.x(), s.above() ? 0 : HEIGHT, s.above());
            }
        });
    }

    /** Passages that hang together by their ports. */
    private static List<List<Passage>> groups(List<Passage> passages) {
        List<List<Passage>> groups = new ArrayList<>();
        for (Passage x : passages) {
            List<Passage> merged = new ArrayList<>(List.of(x));
            groups.removeIf(g -> {
                boolean meets = g.stream().anyMatch(y -> meet(x, y));
                if (meets) {
                    merged.addAll(0, g);
                }
                return meets;
            });
            groups.add(merged);
        }
        return groups;
    }

    private static boolean meet(Passage x, Passage y) {
        return Stream.of(y.from(), y.to()).anyMatch(id -> id.equals(x.from()) || id.equals(x.to()));
    }

    /** Three ports or more that stand open to each other. */
    private boolean isJoint(List<Passage> group) {
        long ports = group.stream()
                .flatMap(x -> Stream.of(x.from(), x.to()))
                .distinct()
                .count();
        return ports > 2 && group.stream().noneMatch(this::isSeated);
    }

    /** A bar across with a leg to every port; a narrow way narrows the leg of the port that has it alone. */
    private void joint(Pen p, List<Passage> group) {
        Map<String, Integer> ways = new LinkedHashMap<>();
        group.forEach(x -> Stream.of(x.from(), x.to()).forEach(id -> ways.merge(id, 1, Integer::sum)));
        double middle = HEIGHT / 2;
        double from = ways.keySet().stream()
                .mapToDouble(id -> spots.get(id).x())
                .min()
                .orElseThrow();
        double to = ways.keySet().stream()
                .mapToDouble(id -> spots.get(id).x())
                .max()
                .orElseThrow();
        p.lines(from, middle, to, middle);
        for (String id : ways.keySet()) {
            Spot s = spots.get(id);
            p.lines(s.x(), s.above() ? 0 : HEIGHT, s.x(), middle);
        }
        for (Passage x : group) {
            if (x.throttled()) {
                Spot s = spots.get(ways.get(x.from()) <= ways.get(x.to()) ? x.from() : x.to());
                Signs.smallThrottle(p.turned(s.x(), s.above() ? 1.5 : 4.5, 0, -1, 0.8), 0, 0);
            }
        }
    }

    private void straight(Pen p, Passage x) {
        Spot a = spots.get(x.from());
        Spot b = spots.get(x.to());
        double y0 = a.above() ? 0 : HEIGHT;
        double y1 = b.above() ? 0 : HEIGHT;
        if (isSeated(x)) {
            seated(p, x, a.x(), y0, b.x(), y1);
        } else {
            boolean back = arrows.isBack(x);
            boolean both = !back && !arrows.isForth(x);
            arrow(p, back ? b.x() : a.x(), back ? y1 : y0, back ? a.x() : b.x(), back ? y0 : y1, both);
        }
        if (x.throttled() && !isSeated(x)) {
            double dx = b.x() - a.x();
            double share = dx == 0 ? 0.5 : 0.3; // ways that cross do so in the middle
            Signs.smallThrottle(p.turned(a.x() + share * dx, y0 + share * (y1 - y0), dx, y1 - y0, 0.85), 0, 0);
        }
    }

    private static void arrow(Pen p, double x0, double y0, double x1, double y1, boolean both) {
        if (both) {
            double mx = (x0 + x1) / 2;
            double my = (y0 + y1) / 2;
            p.arrow(mx, my, x0, y0);
            p.arrow(mx, my, x1, y1);
        } else {
            p.arrow(x0, y0, x1, y1);
        }
    }

    /**
     * One way may mean the arrow of an ordinary passage. Only where another position opens the same way in both
     * directions is it a check.
     */
    private boolean isSeated(Passage x) {
        return x.oneWay()
                && valve.positions().stream()
                        .flatMap(p -> p.passages().stream())
                        .anyMatch(y -> !y.oneWay()
                                && Set.of(x.from(), x.to()).equals(new HashSet<>(List.of(y.from(), y.to()))));
    }

    /** A check inside the square. */
    private static void seated(Pen p, Passage x, double x0, double y0, double x1, double y1) {
        double length = Math.hypot(x1 - x0, y1 - y0);
        Pen q = p.turned((x0 + x1) / 2, (y0 + y1) / 2, x1 - x0, y1 - y0, 1);
        double small = 0.65;
        Signs.check(q.turned(0, 0, 0, -1, small), 0, 0);
        q.lines(0, length / 2, 0, Signs.TIP * small);
        q.lines(0, -small * Signs.BALL, 0, -length / 2);
        if (x.throttled()) {
            Signs.smallThrottle(q.turned(0, -length / 2 + 1.2, 0, -1, 0.8), 0, 0);
        }
    }

    private void loop(Pen p, Passage x, double depth) {
        boolean back = arrows.isBack(x);
        Spot a = spots.get(back ? x.to() : x.from());
        Spot b = spots.get(back ? x.from() : x.to());
        double edge = a.above() ? 0 : HEIGHT;
        double inner = a.above() ? depth : HEIGHT - depth;
        p.lines(a.x(), edge, a.x(), inner, b.x(), inner, b.x(), edge + (inner - edge) * 0.3);
        p.head(b.x(), edge, 0, edge - inner);
        if (!back && !arrows.isForth(x)) {
            p.head(a.x(), edge, 0, edge - inner);
        }
    }

    /** What it joins is not known. */
    void unknown(Pen p) {
        p.text("?", cell / 2, HEIGHT / 2);
    }
}
