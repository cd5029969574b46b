package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linewalk.importer.page.Fields;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.polygonize.Polygonizer;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/**
 * Small circles that lines cut through, such as ports on an outline: too little is left between two lines to tell a bow
 * from a straight piece, but the fields that the lines cut it into are a disc together, with ink all around it.
 */
final class Discs {

    /** Largest diameter, in widths of the ink. */
    private static final double LARGEST = 16;

    /** Smallest radius, in widths of the ink. */
    private static final double SMALLEST = 2.2;

    private static final double LIES = 0.6;

    /** A thick line through the middle draws the fields out along itself. */
    private static final double UNEVEN = 0.4;

    private static final int STEPS = 48;
    private static final double CLOSED = 0.93;

    /** Just inside and outside the ring there is paper but where lines cross. */
    private static final double BESIDE = 0.45;

    private final Gauge gauge;
    private final Upright upright;
    private final GeometryFactory factory = new GeometryFactory();
    private final Map<Set<Coordinate>, Piece> sides = new HashMap<>();

    private Discs(Gauge gauge, Upright upright) {
        this.gauge = gauge;
        this.upright = upright;
    }

    /** Rings around discs of fields, each with the pieces that lie along it. */
    static List<Rounds.Curve> of(Collection<Piece> pieces, Gauge gauge, Upright upright) {
        return new Discs(gauge, upright).find(pieces);
    }

    private List<Rounds.Curve> find(Collection<Piece> pieces) {
        Polygonizer polygonizer = new Polygonizer();
        for (Piece p : pieces) {
            if (!p.ring() && p.a != p.b && p.length() < LARGEST * Math.max(p.a.thick, p.b.thick)) {
                LineString side = factory.createLineString(Sides.course(p));
                Coordinate[] c = side.getCoordinates();
                for (int i = 1; i < c.length; i++) {
                    sides.put(Set.of(c[i - 1], c[i]), p);
                }
                polygonizer.add(side);
            }
        }
        List<Rounds.Curve> out = new ArrayList<>();
        for (List<Polygon> group : groups(polygonizer)) {
            Rounds.Curve ring = ring(UnaryUnionOp.union(group), group);
            for (int i = 0; ring == null && group.size() > 1 && i < group.size(); i++) {
                ring = ring(group.get(i), List.of(group.get(i)));
            }
            if (ring != null) {
                out.add(ring);
            }
        }
        return out;
    }

    /** Fields that share a side. */
    private List<List<Polygon>> groups(Polygonizer polygonizer) {
        List<List<Polygon>> groups = new ArrayList<>();
        Map<Piece, List<Polygon>> at = new IdentityHashMap<>();
        for (Polygon p : Fields.of(polygonizer)) {
            List<Polygon> own = new ArrayList<>(List.of(p));
            for (Piece side : sidesOf(p)) {
                List<Polygon> other = at.get(side);
                if (other != null && other != own) {
                    own.addAll(other);
                    groups.remove(other);
                    for (Polygon q : other) {
                        sidesOf(q).forEach(s -> at.put(s, own));
                    }
                }
                at.put(side, own);
            }
            groups.removeIf(g -> g == own);
            groups.add(own);
        }
        return groups;
    }

    private Set<Piece> sidesOf(Polygon p) {
        Set<Piece> out = new LinkedHashSet<>();
        Coordinate[] c = p.getExteriorRing().getCoordinates();
        for (int i = 1; i < c.length; i++) {
            Piece side = sides.get(Set.of(c[i - 1], c[i]));
            if (side != null) {
                out.add(side);
            }
        }
        return out;
    }

    private Rounds.Curve ring(Geometry whole, List<Polygon> fields) {
        Envelope e = whole.getEnvelopeInternal();
        Set<Piece> near = new LinkedHashSet<>();
        fields.forEach(f -> near.addAll(sidesOf(f)));
        double thick = near.stream()
                .mapToDouble(p -> Math.max(p.a.thick, p.b.thick))
                .min()
                .orElse(1);
        double size = Math.max(e.getWidth(), e.getHeight());
        boolean even = Math.abs(e.getWidth() - e.getHeight()) < UNEVEN * size + 2;
        if (!(whole instanceof Polygon) || !even || size > LARGEST * thick || size < 2 * SMALLEST * thick) {
            return null;
        }
        Point middle = whole.getCentroid();
        Round best = null;
        double most = 0;
        double guess = size / 2;
        for (double r = Math.max(0.55 * guess, SMALLEST * thick / 2); r < 1.15 * guess; r += 0.5) {
            for (int dx = -3; dx <= 3; dx++) {
                for (int dy = -3; dy <= 3; dy++) {
                    Round round = new Round(middle.getX() + dx, middle.getY() + dy, r);
                    double inked = inked(round, 0);
                    if (inked > most) {
                        most = inked;
                        best = round;
                    }
                }
            }
        }
        best = best == null ? null : centred(best);
        double off = best == null ? 0 : 0.5 * pen(best) + 2;
        if (most < CLOSED || inked(best, -off) > BESIDE || inked(best, off) > BESIDE) {
            return null;
        }
        List<Piece> along = new ArrayList<>();
        for (Piece p : near) {
            if (lies(p, best, off)) {
                along.add(p);
            }
        }
        return along.size() < 2 ? null : Rounds.ring(best, along);
    }

    /** In the middle of the pen: the search stops at its inner edge. */
    private Round centred(Round round) {
        double sum = 0;
        int n = 0;
        for (double r = round.r() - 6; r <= round.r() + 6; r += 0.5) {
            Round other = new Round(round.x(), round.y(), r);
            if (inked(other, 0) >= CLOSED) {
                sum += r;
                n++;
            }
        }
        return n == 0 ? round : new Round(round.x(), round.y(), sum / n);
    }

    /** Across the ring where nothing meets it. */
    private double pen(Round round) {
        double[] all = new double[STEPS];
        for (int i = 0; i < STEPS; i++) {
            double a = 2 * Math.PI * i / STEPS;
            double x = round.x() + round.r() * Math.cos(a);
            double y = round.y() + round.r() * Math.sin(a);
            double bx = upright.backX(x, y);
            double by = upright.backY(x, y);
            double dx = upright.backX(x - Math.sin(a), y + Math.cos(a)) - bx;
            double dy = upright.backY(x - Math.sin(a), y + Math.cos(a)) - by;
            all[i] = gauge.across(bx, by, dx, dy);
        }
        java.util.Arrays.sort(all);
        return all[STEPS / 3];
    }

    private double inked(Round round, double off) {
        int seen = 0;
        for (int i = 0; i < STEPS; i++) {
            double a = 2 * Math.PI * i / STEPS;
            double r = round.r() + off;
            seen += gauge.ink(upright, round.x() + r * Math.cos(a), round.y() + r * Math.sin(a)) ? 1 : 0;
        }
        return (double) seen / STEPS;
    }

    /** But for its ends, which a thick line draws out. */
    private static boolean lies(Piece p, Round round, double off) {
        int on = 0;
        for (int i = 0; i < p.count(); i++) {
            on += round.off(p.xs[i], p.ys[i]) <= off ? 1 : 0;
        }
        return on > LIES * p.count();
    }
}
