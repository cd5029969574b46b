package linewalk.importer.symbol;

import java.util.List;
import java.util.Optional;
import linewalk.drawing.Point;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Stroke;

/**
 * An open bend to one side: the wall of a throttle, drawn as a curve, as short pieces or as a chevron.
 *
 * @param bulge the point furthest from the chord
 * @param sharp two straight arms
 */
public record Arc(Point from, Point to, Point bulge, boolean sharp) {

    private static final double LEAST_TURN = Math.toRadians(35);

    public static Optional<Arc> of(Stroke s) {
        List<Point> p = s.points();
        if (s.closed() || p.size() < 3 || !s.dash().solid()) {
            return Optional.empty();
        }
        double turn = 0;
        for (int i = 1; i + 1 < p.size(); i++) {
            Direction a = Direction.of(p.get(i - 1), p.get(i));
            Direction b = Direction.of(p.get(i), p.get(i + 1));
            double t = Math.atan2(a.dx() * b.dy() - a.dy() * b.dx(), a.along(b));
            if (turn * t < -0.001) {
                return Optional.empty();
            }
            boolean corner = Math.abs(t) > Math.toRadians(75);
            if (corner && p.size() > 3) {
                return Optional.empty();
            }
            turn += t;
        }
        if (Math.abs(turn) < LEAST_TURN || Math.abs(turn) > Math.toRadians(200)) {
            return Optional.empty();
        }
        return Optional.of(new Arc(p.get(0), p.get(p.size() - 1), furthest(p), p.size() == 3));
    }

    private static Point furthest(List<Point> p) {
        Direction chord = Direction.of(p.get(0), p.get(p.size() - 1));
        Point best = p.get(1);
        for (Point x : p) {
            best = chord.aside(p.get(0), x) > chord.aside(p.get(0), best) ? x : best;
        }
        return best;
    }

    public double chordPt() {
        return from.distancePt(to);
    }

    public Point middle() {
        return new Point((from.xPt() + to.xPt()) / 2, (from.yPt() + to.yPt()) / 2);
    }

    /** Bulges towards the other, of the same size, straight across. */
    public boolean faces(Arc o) {
        double apart = middle().distancePt(o.middle());
        Direction across = Direction.of(middle(), o.middle());
        Direction chord = Direction.of(from, to);
        return Math.abs(chordPt() - o.chordPt()) < 0.15 * chordPt()
                && apart < 1.6 * chordPt()
                && Math.abs(across.along(chord)) < 0.2
                && bulge.distancePt(o.bulge()) < apart - 0.15 * chordPt()
                && bulge.distancePt(middle()) > 0.08 * chordPt();
    }
}
