package linewalk.importer.kind;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linewalk.drawing.Point;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Segment;
import linewalk.importer.symbol.Arrowhead;

/** Heads with the shafts that they stand on; a head without a shaft is no arrow. */
final class ArrowFinder {

    /** How far before its head a shaft may stop, in sizes of the head: the pen of the head may be thick. */
    private static final double GAP = 0.35;

    private final List<Triangle> triangles;
    private final List<Arrowhead> heads;
    private final List<Segment> solid;
    private final double tolPt;

    ArrowFinder(List<Triangle> triangles, List<Arrowhead> heads, List<Segment> solid, double tolPt) {
        this.triangles = triangles;
        this.heads = heads;
        this.solid = solid;
        this.tolPt = tolPt;
    }

    List<Arrow> find() {
        List<Arrow> found = new ArrayList<>();
        for (Triangle t : triangles) {
            ofTriangle(t).ifPresent(found::add);
        }
        for (Arrowhead h : heads) {
            double size = Math.max(h.box().widthPt(), h.box().heightPt());
            boolean known = triangles.stream()
                    .anyMatch(t -> t.center().distancePt(h.box().center()) < 0.5 * size);
            if (!known) {
                Point base =
                        h.tip().plus(-h.direction().dx() * size, -h.direction().dy() * size);
                shaft(h.tip(), base, size)
                        .map(tail -> new Arrow(tail, h.tip(), size))
                        .ifPresent(found::add);
            }
        }
        for (int i = 0; i < solid.size(); i++) {
            for (int j = i + 1; j < solid.size(); j++) {
                open(solid.get(i), solid.get(j))
                        .filter(a -> found.stream().noneMatch(f -> f.tip().distancePt(a.tip()) < tolPt))
                        .ifPresent(found::add);
            }
        }
        return found;
    }

    /** Two like arms that meet at the end of a shaft between them. */
    private Optional<Arrow> open(Segment one, Segment two) {
        for (Point tip : List.of(one.a(), one.b())) {
            Point a = tip == one.a() ? one.b() : one.a();
            Point b = two.a().distancePt(tip) < tolPt / 2
                    ? two.b()
                    : two.b().distancePt(tip) < tolPt / 2 ? two.a() : null;
            if (b == null || Math.abs(one.lengthPt() - two.lengthPt()) > 0.1 * one.lengthPt()) {
                continue;
            }
            double base = a.distancePt(b);
            Point middle = new Point((a.xPt() + b.xPt()) / 2, (a.yPt() + b.yPt()) / 2);
            if (base > 0.2 * one.lengthPt() && base < 1.3 * one.lengthPt()) {
                return shaft(tip, middle, one.lengthPt()).map(tail -> new Arrow(tail, tip, one.lengthPt()));
            }
        }
        return Optional.empty();
    }

    /** The tip is the corner that the shaft leads to, through the middle of the side across. */
    private Optional<Arrow> ofTriangle(Triangle t) {
        Arrow best = null;
        double size = t.sizePt();
        for (int i = 0; i < 3; i++) {
            Point tip = t.corners().get(i);
            double a = tip.distancePt(t.corners().get((i + 1) % 3));
            double b = tip.distancePt(t.corners().get((i + 2) % 3));
            if (Math.abs(a - b) > 0.2 * Math.max(a, b)) {
                continue;
            }
            Optional<Point> tail = shaft(tip, t.base(i), size);
            if (tail.isPresent() && (best == null || tail.get().distancePt(tip) > best.lengthPt())) {
                best = new Arrow(tail.get(), tip, size);
            }
        }
        return Optional.ofNullable(best);
    }

    private static boolean inLine(Segment s, Point base, double near) {
        return Direction.of(s.a(), s.b()).aside(s.a(), base) <= near;
    }

    /** The far end of the longest piece that comes from behind through the base. */
    private Optional<Point> shaft(Point tip, Point base, double sizePt) {
        Direction back = Direction.of(tip, base);
        double near = Math.max(0.6 * tolPt, 0.12 * sizePt);
        Point best = null;
        for (Segment s : solid) {
            boolean reaches = s.distancePt(base) <= near || s.distancePt(base) < GAP * sizePt && inLine(s, base, near);
            if (Math.abs(Direction.of(s.a(), s.b()).along(back)) < 0.97 || !reaches) {
                continue;
            }
            Point far = back.ahead(tip, s.a()) > back.ahead(tip, s.b()) ? s.a() : s.b();
            Point close = far == s.a() ? s.b() : s.a();
            boolean behind =
                    back.ahead(base, far) > 0.25 * sizePt && back.aside(tip, far) < 0.15 * tip.distancePt(far) + near;
            boolean ends = back.ahead(tip, close) > -1.5 * sizePt - tolPt;
            if (behind && ends && (best == null || far.distancePt(tip) > best.distancePt(tip))) {
                best = far;
            }
        }
        return Optional.ofNullable(best);
    }
}
