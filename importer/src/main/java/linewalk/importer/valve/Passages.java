package linewalk.importer.valve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linewalk.drawing.Passage;
import linewalk.drawing.Port;

/** Ways between places to passages between ports. */
final class Passages {

    private final Map<Place, Port> ports;
    private final Map<Place, Integer> into = new LinkedHashMap<>();
    private final Map<Place, Integer> outOf = new LinkedHashMap<>();

    /** @param squares all squares: arrows tell which port oil always comes from and which it always goes to */
    Passages(Map<Place, Port> ports, List<List<Way>> squares) {
        this.ports = ports;
        squares.stream()
                .flatMap(List::stream)
                .filter(w -> w.places().size() == 2 && w.heads().size() == 1)
                .forEach(
                        w -> w.places().forEach(p -> (w.heads().contains(p) ? outOf : into).merge(p, 1, Integer::sum)));
    }

    List<Passage> of(List<Way> ways) {
        List<Passage> out = new ArrayList<>();
        for (Way w : inOrder(ways)) {
            List<Place> ends = w.places().stream()
                    .filter(ports::containsKey)
                    .sorted(order(w))
                    .toList();
            if (w.seat() != null && ends.size() == 2) {
                Place behind = ends.get(ends.get(0).equals(w.seat()) ? 1 : 0);
                out.add(new Passage(id(w.seat()), id(behind), true, w.throttled(), null));
            } else if (ends.size() == 2) {
                out.add(passage(ends.get(0), ends.get(1), w));
            } else if (ends.size() > 2) {
                several(ends, w, out);
            }
        }
        return out;
    }

    private static List<Way> inOrder(List<Way> ways) {
        return ways.stream()
                .sorted(Comparator.comparingDouble((Way w) ->
                                w.places().stream().mapToDouble(Place::alongPt).sum())
                        .thenComparingDouble(
                                w -> w.places().stream().filter(Place::upper).count()))
                .toList();
    }

    /** All to the tank, or all from the pump; where neither is known, each with each. */
    private void several(List<Place> ends, Way w, List<Passage> out) {
        Optional<Place> hub = hub(ends);
        for (int i = 0; i < ends.size(); i++) {
            for (int j = i + 1; j < ends.size(); j++) {
                Place a = ends.get(i);
                Place b = ends.get(j);
                if (hub.isEmpty() || hub.get().equals(a) || hub.get().equals(b)) {
                    out.add(passage(a, b, w));
                }
            }
        }
    }

    private Optional<Place> hub(List<Place> ends) {
        Optional<Place> tank = ends.stream().filter(this::tank).findFirst();
        if (tank.isPresent()) {
            return tank;
        }
        Optional<Place> pump = ends.stream().filter(this::pump).findFirst();
        if (pump.isPresent()) {
            return pump;
        }
        return ends.stream()
                .filter(p -> ends.size() == 3
                        && ends.stream().filter(q -> q.upper() == p.upper()).count() == 1)
                .findFirst();
    }

    private boolean tank(Place p) {
        String name = ports.get(p).name();
        return name != null ? name.matches("[TRS]\\d?") : outOf.containsKey(p) && !into.containsKey(p);
    }

    private boolean pump(Place p) {
        String name = ports.get(p).name();
        return name != null ? name.matches("P\\d?") : into.containsKey(p) && !outOf.containsKey(p);
    }

    /** From the tail of an arrow to its head; without arrows from the pump and to the tank. */
    private Comparator<Place> order(Way w) {
        boolean told = w.places().size() == 2 && w.heads().size() == 1;
        return Comparator.comparingInt(
                        (Place p) -> told ? (w.heads().contains(p) ? 1 : 0) : pump(p) ? 0 : tank(p) ? 2 : 1)
                .thenComparing((Place p) -> p.upper() ? 0 : 1)
                .thenComparingDouble(Place::alongPt);
    }

    private Passage passage(Place a, Place b, Way w) {
        return new Passage(id(a), id(b), false, w.throttled(), null);
    }

    private String id(Place p) {
        return ports.get(p).id();
    }
}
