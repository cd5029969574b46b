package linewalk.samples.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import linewalk.samples.machine.Run;
import linewalk.samples.symbol.Spot;

/**
 * Where lines of a sheet cross without being joined, and which of the two hops over the other: the level one, or the
 * upright one where the level one has no room.
 */
final class Crossings {
    static final double RADIUS = 0.24;

    /** {@code along} is the way from the hopping run's start. */
    record Hop(Run run, Spot at, double along, boolean upright) {}

    private record Segment(Run run, Spot a, Spot b, double along) {
        boolean level() {
            return Math.abs(a.y() - b.y()) < 1e-6;
        }

        /** Inside by more than the room given. */
        boolean holds(Spot at, double room) {
            return level()
                    ? inside(at.x(), a.x(), b.x(), room) && Math.abs(at.y() - a.y()) < 1e-6
                    : inside(at.y(), a.y(), b.y(), room) && Math.abs(at.x() - a.x()) < 1e-6;
        }

        private static boolean inside(double value, double from, double to, double room) {
            return value > Math.min(from, to) + room && value < Math.max(from, to) - room;
        }
    }

    private final List<Segment> segments = new ArrayList<>();
    private final List<Hop> hops = new ArrayList<>();

    Crossings(List<Run> runs) {
        for (Run run : runs) {
            double along = 0;
            for (int i = 1; i < run.points().size(); i++) {
                Spot a = run.points().get(i - 1);
                Spot b = run.points().get(i);
                segments.add(new Segment(run, a, b, along));
                along += Gaps.distance(a, b);
            }
        }
        for (Segment level : segments) {
            for (Segment upright : segments) {
                if (level.level() && !upright.level()) {
                    cross(level, upright);
                }
            }
        }
    }

    private void cross(Segment level, Segment upright) {
        Spot at = new Spot(upright.a().x(), level.a().y());
        if (level.holds(at, 1e-6) && upright.holds(at, 1e-6)) {
            Segment hopper = hasRoom(level, at) || !hasRoom(upright, at) ? level : upright;
            double along = hopper.along() + Gaps.distance(hopper.a(), at);
            hops.add(new Hop(hopper.run(), at, along, hopper == upright));
        }
    }

    /** No bend, join or end under the hop or beside it. */
    private boolean hasRoom(Segment segment, Spot at) {
        double room = RADIUS + 0.1;
        return segment.holds(at, room)
                && segments.stream()
                        .flatMap(other -> List.of(other.a(), other.b()).stream())
                        .noneMatch(end -> segment.holds(end, 0) && Gaps.distance(end, at) < room);
    }

    /** In the order along the run. */
    List<Hop> of(Run run) {
        return hops.stream()
                .filter(hop -> hop.run() == run)
                .sorted(Comparator.comparingDouble(Hop::along))
                .toList();
    }
}
