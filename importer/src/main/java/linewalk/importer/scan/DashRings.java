package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.page.Near;

/** Short pieces that lie around a circle with even gaps: a dashed circle, such as the ring of a detail. */
final class DashRings {

    private static final int PIECES = 8;

    /** The longest bow without a piece. */
    private static final double GAP = Math.toRadians(50);

    /** Longest piece, in widths. */
    private static final double LONGEST = 40;

    private static final double OFF_PX = 2.2;

    /** A circle and the pieces along it. */
    record Ring(Round round, List<Piece> pieces) {

        List<double[]> points() {
            List<double[]> points = new ArrayList<>();
            for (int i = 0; i < 32; i++) {
                double a = Math.PI * i / 16;
                points.add(new double[] {round.x() + round.r() * Math.cos(a), round.y() + round.r() * Math.sin(a)});
            }
            return points;
        }

        double onPx() {
            return pieces.stream().mapToDouble(Piece::length).max().orElse(1);
        }
    }

    private final List<Piece> pieces;
    private final Near<Piece> near;
    private final Set<Piece> used = Collections.newSetFromMap(new IdentityHashMap<>());

    private DashRings(List<Piece> pieces) {
        this.pieces = pieces;
        this.near = new Near<>(pieces, DashRings::box);
    }

    /** @param pieces those that are no dash of a straight row */
    static List<Ring> of(Collection<Piece> pieces) {
        DashRings all = new DashRings(pieces.stream()
                .filter(p -> !p.ring() && p.count() > 3 && p.length() < LONGEST * p.a.thick)
                .toList());
        List<Ring> rings = new ArrayList<>();
        for (Piece p : all.pieces) {
            Ring ring = all.used.contains(p) ? null : all.ring(p);
            if (ring != null) {
                rings.add(ring);
                all.used.addAll(ring.pieces);
            }
        }
        return rings;
    }

    private static Box box(Piece p) {
        int n = p.count() - 1;
        return Box.around(
                List.of(new Point(p.xs[0], p.ys[0]), new Point(p.xs[n / 2], p.ys[n / 2]), new Point(p.xs[n], p.ys[n])));
    }

    private Ring ring(Piece start) {
        double reach = 2.5 * start.length();
        List<Piece> around = near.touching(box(start).grow(reach)).stream()
                .filter(p -> p != start && !used.contains(p) && p.length() > 0.4 * start.length())
                .filter(p -> p.length() < 2.5 * start.length())
                .toList();
        for (int i = 0; i < around.size(); i++) {
            for (int k = i + 1; k < around.size(); k++) {
                Ring ring = through(start, around.get(i), around.get(k));
                if (ring != null) {
                    return ring;
                }
            }
        }
        return null;
    }

    private Ring through(Piece a, Piece b, Piece c) {
        Round round = circle(List.of(a, b, c));
        if (round == null || round.r() < 2 * a.length() / 3 || round.r() > 8 * a.length()) {
            return null;
        }
        // three neighbours tell the circle hardly better than to its next dashes: it grows with what lies on it
        List<Piece> on = List.of();
        for (int known = 3; round != null; round = circle(on)) {
            on = on(round, 2 * OFF_PX);
            if (on.size() <= known) {
                break;
            }
            known = on.size();
        }
        round = on.size() < PIECES || !allAround(round, on) ? null : circle(on);
        if (round == null) {
            return null;
        }
        List<Piece> all = on(round, OFF_PX);
        return all.size() < PIECES || !allAround(round, all) ? null : new Ring(round, all);
    }

    private static Round circle(List<Piece> of) {
        Piece first = of.get(0);
        Round.Sums sums = new Round.Sums(first.xs[0], first.ys[0]);
        for (Piece p : of) {
            for (int i = 0; i < p.count(); i++) {
                sums.add(p.xs[i], p.ys[i]);
            }
        }
        return sums.circle();
    }

    private List<Piece> on(Round round, double off) {
        return near
                .touching(new Box(
                        round.x() - round.r() - off,
                        round.y() - round.r() - off,
                        round.x() + round.r() + off,
                        round.y() + round.r() + off))
                .stream()
                .filter(p -> !used.contains(p))
                .filter(p -> {
                    for (int i = 0; i < p.count(); i += Math.max(1, p.count() / 6)) {
                        if (round.off(p.xs[i], p.ys[i]) > off) {
                            return false;
                        }
                    }
                    return true;
                })
                .toList();
    }

    private static boolean allAround(Round round, List<Piece> on) {
        double[] angles = on.stream()
                .mapToDouble(p -> round.angle(p.xs[p.count() / 2], p.ys[p.count() / 2]))
                .sorted()
                .toArray();
        double widest = angles[0] + 2 * Math.PI - angles[angles.length - 1];
        for (int i = 1; i < angles.length; i++) {
            widest = Math.max(widest, angles[i] - angles[i - 1]);
        }
        return widest < GAP;
    }
}
