package linewalk.linker.step;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import linewalk.drawing.Component;
import linewalk.drawing.Position;

/**
 * Which position each part is in. In this order: what the chart says of a lever; energised solenoids, where a two-stage
 * valve's external pilot supply is fed; the pilot under the greater pressure; where a detent keeps it; rest. Null where
 * that tells nothing, and where a solenoid without a name may move it.
 */
final class Positions {

    /** The pressure rank of each volume; 0 where none is fed. */
    interface Ranks {
        int at(int volume);
    }

    private final Facts facts;
    private final Map<String, Position> before;

    /** @param before positions in the step before, by component id */
    Positions(Facts facts, Map<String, Position> before) {
        this.facts = facts;
        this.before = before;
    }

    Position[] choose(List<Part> parts, Ranks ranks) {
        Position[] chosen = new Position[parts.size()];
        for (Part p : parts) {
            if (!p.component().positions().isEmpty()) {
                chosen[p.index()] = of(p, ranks);
            }
        }
        return chosen;
    }

    private Position of(Part p, Ranks ranks) {
        Component c = p.component();
        String said = facts.position(c);
        if (said != null) {
            return c.positions().stream()
                    .filter(x -> x.by().stream().anyMatch(b -> Words.plain(b).equals(Words.plain(said))))
                    .findFirst()
                    .orElse(null);
        }
        List<Position> on = energised(c);
        if (on.size() > 1) {
            return null;
        } else if (on.size() == 1 && supplied(p, ranks)) {
            return on.get(0);
        } else if (on.isEmpty() && c.positions().stream().anyMatch(Position::isUnnamed)) {
            return null;
        }
        Position piloted = piloted(p, ranks);
        return piloted != null ? piloted : unmoved(c);
    }

    /** Those that most energised solenoids bring about: more than one where solenoids work against each other. */
    private List<Position> energised(Component c) {
        List<Position> best = new ArrayList<>();
        long most = 1;
        for (Position x : c.positions()) {
            long on = x.isRest() ? 0 : x.by().stream().filter(facts::on).count();
            if (on > most) {
                best.clear();
                most = on;
            }
            if (on == most) {
                best.add(x);
            }
        }
        return best;
    }

    /** A two-stage valve whose pilot supply comes from outside shifts only where that is fed. */
    private static boolean supplied(Part p, Ranks ranks) {
        if (!Kinds.SWITCHING.contains(p.kind())) {
            return true;
        }
        for (int i = 0; i < p.volumes().length; i++) {
            String name = p.component().ports().get(i).name();
            boolean supply = "X".equalsIgnoreCase(name)
                    && p.lined()[i]
                    && p.component().positions().stream().noneMatch(x -> x.by().contains(name));
            if (supply) {
                return ranks.at(p.volumes()[i]) > 0;
            }
        }
        return true;
    }

    private static Position piloted(Part p, Ranks ranks) {
        if (Kinds.BY_PRESSURE.contains(p.kind())) {
            return null;
        }
        Position best = null;
        int most = 0;
        for (Position x : p.component().positions()) {
            int rank = x.isRest()
                    ? 0
                    : Pilots.of(p, x).stream().mapToInt(ranks::at).max().orElse(0);
            if (rank > most) {
                best = x;
                most = rank;
            } else if (rank == most && rank > 0) {
                best = null;
            }
        }
        return best;
    }

    private Position unmoved(Component c) {
        Position rest = c.rest().orElse(null);
        Position was = before.get(c.id());
        if (was != null
                && (detent(was) || rest != null && detent(rest))
                && c.positions().contains(was)) {
            return was;
        }
        return rest;
    }

    private static boolean detent(Position x) {
        return x.how() == Position.How.DETENT;
    }
}
