package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** Round pieces to whole circles, where lines that meet a circle cut it into arcs, and to arcs. */
final class Rounds {

    /** Arcs of one circle agree in middle and radius to this share of the radius. */
    private static final double SAME = 0.14;

    /** So much of the way around must be drawn. */
    private static final double CLOSED = Math.toRadians(285);

    private static final double STEP = Math.toRadians(12);

    /** Points of a closed ring, or of an arc from joint to joint; registered pixels. */
    record Curve(List<double[]> points, boolean closed, List<Piece> pieces) {}

    private Rounds() {}

    static List<Curve> of(Collection<Piece> pieces) {
        List<Piece> arcs = new ArrayList<>();
        List<Curve> out = new ArrayList<>();
        for (Piece p : pieces) {
            if (p.round != null && p.ring()) {
                out.add(ring(p.round, List.of(p)));
            } else if (p.round != null) {
                arcs.add(p);
            }
        }
        arcs.sort((a, b) -> b.count() - a.count());
        while (!arcs.isEmpty()) {
            Piece first = arcs.remove(0);
            List<Piece> same = new ArrayList<>(List.of(first));
            Round round = gather(first, arcs, same);
            if (covered(round, same) > CLOSED) {
                arcs.removeAll(same);
                out.add(ring(round, same));
            } else {
                out.add(arc(first));
            }
        }
        return out;
    }

    private static Round gather(Piece first, List<Piece> arcs, List<Piece> same) {
        Round round = first.round;
        Round.Sums sums = new Round.Sums(round.x(), round.y());
        addTo(sums, first);
        for (Piece p : arcs) {
            boolean fits = true;
            for (int i = 0; i < p.count() && fits; i++) {
                fits = round.off(p.xs[i], p.ys[i]) < Math.max(1.5, SAME * round.r());
            }
            if (fits) {
                same.add(p);
                addTo(sums, p);
                Round better = sums.circle();
                round = better == null ? round : better;
            }
        }
        return round;
    }

    private static void addTo(Round.Sums sums, Piece p) {
        for (int i = 0; i < p.count(); i++) {
            sums.add(p.xs[i], p.ys[i]);
        }
    }

    /** How much of the way around has ink, radians. */
    private static double covered(Round round, List<Piece> arcs) {
        boolean[] seen = new boolean[36];
        for (Piece p : arcs) {
            for (int i = 0; i < p.count(); i++) {
                double a = round.angle(p.xs[i], p.ys[i]) + Math.PI;
                seen[(int) Math.min(35, a / (2 * Math.PI) * 36)] = true;
            }
        }
        int n = 0;
        for (boolean s : seen) {
            n += s ? 1 : 0;
        }
        return n * 2 * Math.PI / 36;
    }

    private static Curve ring(Round round, List<Piece> pieces) {
        List<double[]> points = new ArrayList<>();
        for (double a = 0; a < 2 * Math.PI - 1e-6; a += Math.PI / 16) {
            points.add(new double[] {round.x() + round.r() * Math.cos(a), round.y() + round.r() * Math.sin(a)});
        }
        return new Curve(points, true, pieces);
    }

    static Curve arc(Piece p) {
        Round c = p.round;
        double from = c.angle(p.xs[0], p.ys[0]);
        double sweep = 0;
        for (int i = 1; i < p.count(); i++) {
            double turn = c.angle(p.xs[i], p.ys[i]) - c.angle(p.xs[i - 1], p.ys[i - 1]);
            sweep += Math.atan2(Math.sin(turn), Math.cos(turn));
        }
        int n = Math.max(4, (int) Math.ceil(Math.abs(sweep) / STEP));
        List<double[]> points = new ArrayList<>();
        points.add(new double[] {p.a.x, p.a.y});
        for (int i = 1; i < n; i++) {
            double a = from + sweep * i / n;
            points.add(new double[] {c.x() + c.r() * Math.cos(a), c.y() + c.r() * Math.sin(a)});
        }
        points.add(new double[] {p.b.x, p.b.y});
        return new Curve(points, false, List.of(p));
    }
}
