package linewalk.renderer;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linewalk.drawing.Component;
import linewalk.drawing.Passage;
import linewalk.drawing.Position;
import linewalk.linker.Leg;
import linewalk.renderer.iso.Standing;

/** Which position each part is shown in: what the path needs, else what the step brings about, else rest. */
final class Stands {

    private final PrintJob job;
    private final Map<String, Position> onPath = new HashMap<>();
    private final Map<String, Position> shifts = new HashMap<>();
    private final Set<String> unread = new HashSet<>();

    Stands(PrintJob job) {
        this.job = job;
        for (Leg leg : job.subject().legs()) {
            if (leg instanceof Leg.Through t) {
                note(t);
            }
        }
    }

    private void note(Leg.Through t) {
        String id = t.component().id();
        if (t.shift() != null) {
            shifts.put(id, t.shift());
        } else if (t.passage() != null) {
            Position holding = holding(t.component(), t.passage());
            if (holding != null) {
                onPath.putIfAbsent(id, holding);
            }
        }
        if (Words.isWayUnread(t)) {
            unread.add(id);
        }
    }

    /** The position that the step brings about and that holds the passage; else rest if it does, else any. */
    private Position holding(Component c, Passage passage) {
        List<Position> holding = c.positions().stream()
                .filter(p -> p.passages().contains(passage))
                .toList();
        Position known =
                job.moment().state() == null ? null : job.moment().state().position(c);
        if (known != null && holding.contains(known)) {
            return known;
        }
        Set<String> on = energised();
        return holding.stream()
                .filter(p -> p.by().stream().anyMatch(on::contains))
                .findFirst()
                .or(() -> holding.stream().filter(Position::isRest).findFirst())
                .orElse(holding.isEmpty() ? null : holding.get(0));
    }

    private Set<String> energised() {
        return job.step() == null ? Set.of() : job.step().energised();
    }

    /** The position that must be brought about by hand for the path to be open, or null. */
    Position shift(Component c) {
        return shifts.get(c.id());
    }

    boolean isWayUnread(Component c) {
        return unread.contains(c.id());
    }

    /** Null where it is not known. */
    Position position(Component c) {
        if (shifts.containsKey(c.id())) {
            return shifts.get(c.id());
        }
        if (onPath.containsKey(c.id())) {
            return onPath.get(c.id());
        }
        return job.moment().state() == null
                ? c.rest().orElse(null)
                : job.moment().state().position(c);
    }

    Standing of(Component c) {
        return new Standing(position(c), energised(), job.moment().hasChanged(c));
    }
}
