package linewalk.importer.page;

import java.util.List;
import linewalk.drawing.Point;

/** Curves that a CAD program wrote as many short straight pieces are curves all the same. */
final class Smooth {

    private static final int BENDS = 4;
    private static final double LEAST_DEG = 0.6;
    private static final double MOST_DEG = 50;

    /** All bends together. */
    private static final double TURN_DEG = 25;

    /** Share of the length that lies between gentle bends. */
    private static final double SHARE = 0.8;

    private Smooth() {}

    static Stroke seen(Stroke s) {
        return !s.curved() && gentle(s.points(), s.closed())
                ? new Stroke(s.points(), s.closed(), true, s.widthPt(), s.dash(), s.filled())
                : s;
    }

    private static boolean gentle(List<Point> p, boolean ring) {
        int n = p.size();
        int pieces = ring ? n : n - 1;
        double whole = 0;
        double bent = 0;
        int bends = 0;
        double turned = 0;
        for (int i = 0; i < pieces; i++) {
            double length = p.get(i).distancePt(p.get((i + 1) % n));
            boolean before = (ring || i > 0) && bend(p.get((i + n - 1) % n), p.get(i), p.get((i + 1) % n));
            boolean after = (ring || i + 2 < n) && bend(p.get(i), p.get((i + 1) % n), p.get((i + 2) % n));
            whole += length;
            bent += before || after ? length : 0;
            bends += after ? 1 : 0;
            turned += after ? turnDeg(p.get(i), p.get((i + 1) % n), p.get((i + 2) % n)) : 0;
        }
        return bends >= BENDS && bent > SHARE * whole && turned > TURN_DEG;
    }

    private static boolean bend(Point a, Point b, Point c) {
        double deg = turnDeg(a, b, c);
        return deg > LEAST_DEG && deg < MOST_DEG;
    }

    private static double turnDeg(Point a, Point b, Point c) {
        double along = Direction.of(a, b).along(Direction.of(b, c));
        return Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, along))));
    }
}
