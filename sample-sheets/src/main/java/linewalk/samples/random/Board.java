package linewalk.samples.random;

import java.util.ArrayList;
import java.util.List;
import linewalk.samples.symbol.Spot;

/** What stands on a sheet so far, and whether one thing more finds room as a drafter would want it. */
final class Board {
    static final Area SHEET = new Area(2, 3, 66, 37);
    /** Between lines side by side: those from the two ports of one valve are 0.6 apart. */
    private static final double LINE_TO_LINE = 0.55;

    private static final double LINE_TO_CORNER = 0.5;
    private static final double LINE_TO_SOLID = 0.4;
    private static final double SHORTEST = 0.7;

    /** Taken room. {@code owner} may reach into it: a part's own line, a reference's own line. */
    record Solid(Area area, String owner) {}

    /** A straight piece of a line; {@code net} is its line. */
    record Leg(Spot a, Spot b, Area area, Object net) {
        Leg(Spot a, Spot b, Object net) {
            this(a, b, Area.of(a, b), net);
        }

        boolean level() {
            return a.y() == b.y();
        }

        double length() {
            return Math.abs(a.x() - b.x()) + Math.abs(a.y() - b.y());
        }
    }

    private final List<Solid> solids = new ArrayList<>();
    private final List<Leg> legs = new ArrayList<>();
    private final List<Spot> corners = new ArrayList<>();

    void take(Area area, String owner) {
        solids.add(new Solid(area, owner));
    }

    void free(String owner) {
        solids.removeIf(solid -> solid.owner().equals(owner));
    }

    List<Leg> legs() {
        return List.copyOf(legs);
    }

    List<Solid> solids() {
        return List.copyOf(solids);
    }

    List<Spot> corners() {
        return List.copyOf(corners);
    }

    void draw(List<Spot> path, Object net) {
        for (int i = 1; i < path.size(); i++) {
            legs.add(new Leg(path.get(i - 1), path.get(i), net));
        }
        corners.addAll(path);
    }

    /** Nothing within that room but what the owner has there himself. */
    boolean hasRoom(Area area, double room, String owner) {
        return area.isWithin(SHEET)
                && solids.stream()
                        .noneMatch(solid ->
                                !solid.owner().equals(owner) && solid.area().distance(area) < room)
                && legs.stream().noneMatch(leg -> leg.area().distance(area) < room);
    }

    /** Whether a line may run so. */
    boolean lets(List<Spot> path, Tip from, Tip to, Object net) {
        for (int i = 1; i < path.size(); i++) {
            Leg leg = new Leg(path.get(i - 1), path.get(i), net);
            Tip first = i == 1 ? from : null;
            Tip last = i == path.size() - 1 ? to : null;
            if (!leg.area().isWithin(SHEET)
                    || path.size() > 2 && leg.length() < SHORTEST
                    || !isOffSolids(leg, first, last)
                    || !isOffLegs(leg, first, last)
                    || !isOffItself(path, i)) {
                return false;
            }
        }
        return path.stream().allMatch(corner -> isOffLegs(corner, from, to));
    }

    private boolean isOffSolids(Leg leg, Tip first, Tip last) {
        Area area = leg.area();
        Area beyond = Area.of(first == null ? leg.a() : first.exit(), last == null ? leg.b() : last.exit());
        for (Solid solid : solids) {
            if (solid.area().distance(area) >= LINE_TO_SOLID || isPortOf(first, solid) || isPortOf(last, solid)) {
                continue;
            }
            boolean own = owns(first, solid) || owns(last, solid);
            if (!own || solid.area().distance(beyond) < LINE_TO_SOLID) {
                return false;
            }
        }
        return true;
    }

    private static boolean owns(Tip tip, Solid solid) {
        return tip != null && solid.owner().equals(tip.owner());
    }

    private static boolean isPortOf(Tip tip, Solid solid) {
        return tip != null && solid.owner().equals(tip.port());
    }

    private boolean isOffLegs(Leg leg, Tip first, Tip last) {
        for (Leg other : legs) {
            if (other.area().distance(leg.area()) < LINE_TO_LINE
                    && !crosses(leg, other)
                    && !joins(first, other)
                    && !joins(last, other)) {
                return false;
            }
        }
        for (Spot corner : corners) {
            if (leg.area().distance(corner) < LINE_TO_CORNER && !isAt(first, corner) && !isAt(last, corner)) {
                return false;
            }
        }
        return true;
    }

    private static boolean joins(Tip tip, Leg leg) {
        return tip != null && tip.isJoin() && leg.area().distance(tip.at()) < 1e-6;
    }

    private static boolean isAt(Tip tip, Spot corner) {
        return tip != null && tip.isJoin() && tip.at().equals(corner);
    }

    /** At a right angle, as two lines that are not joined. */
    private static boolean crosses(Leg leg, Leg other) {
        return leg.net() != other.net()
                && leg.level() != other.level()
                && leg.area().distance(other.area()) == 0;
    }

    private static boolean isOffItself(List<Spot> path, int i) {
        Area leg = Area.of(path.get(i - 1), path.get(i));
        for (int k = i + 2; k < path.size(); k++) {
            if (Area.of(path.get(k - 1), path.get(k)).distance(leg) < SHORTEST) {
                return false;
            }
        }
        return true;
    }

    private boolean isOffLegs(Spot corner, Tip from, Tip to) {
        if (isAt(from, corner) || isAt(to, corner)) {
            return true;
        }
        for (Leg leg : legs) {
            if (leg.area().distance(corner) < LINE_TO_CORNER) {
                return false;
            }
        }
        return true;
    }
}
