package linewalk.renderer.iso;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import linewalk.drawing.Component;
import linewalk.drawing.Passage;
import linewalk.drawing.Position;

/** What is to be drawn, with what its positions tell. */
record Drafting(Component part, List<PortUse> uses, Standing standing) {

    Drafting(Component part, List<PortUse> uses, Standing standing) {
        this.part = part;
        this.standing = standing;
        Map<String, PortUse> once = new LinkedHashMap<>();
        uses.forEach(u -> once.putIfAbsent(u.id(), u));
        this.uses = List.copyOf(once.values());
    }

    Roles roles() {
        return new Roles(this);
    }

    Stream<Passage> passages() {
        return part.positions().stream().flatMap(p -> p.passages().stream());
    }

    /** Of the position at rest; where none is told to be at rest, of all. */
    List<Passage> atRest() {
        return part.rest().map(Position::passages).orElseGet(() -> passages().toList());
    }

    /** The position shown: as told, else at rest. */
    Optional<Position> shown() {
        Position told = standing.active();
        return told != null && part.positions().contains(told) ? Optional.of(told) : part.rest();
    }

    List<PortUse> on(boolean up) {
        List<PortUse> found = new ArrayList<>(uses);
        found.removeIf(u -> u.up() != up);
        return found;
    }
}
