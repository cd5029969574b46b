package linewalk.importer.kind;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Point;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Segment;

/** Check valves after ISO 1219-1: a ball between the arms of a V; also a triangle against a bar. */
final class CheckFinder {

    /** How far from the ball's middle the tip of its seat may be, in radii; of the other seat of a shuttle valve. */
    private static final double CLOSE = 2.8;

    private static final double APART = 9;

    private final Picture picture;

    CheckFinder(Picture picture) {
        this.picture = picture;
    }

    List<Check> find() {
        List<Check> found = new ArrayList<>();
        for (Shape ball : picture.of(Form.CIRCLE)) {
            boolean marked = picture.triangles().stream().anyMatch(t -> ball.covers(t.center()));
            if (!marked) {
                seats(ball, CLOSE).forEach(seat -> found.add(new Check(seat, ball.center(), ball.sizePt())));
            }
        }
        return found;
    }

    /** One ball between two seats that open towards it, each with its own line. */
    List<Check> shuttle() {
        for (Shape ball : picture.of(Form.CIRCLE)) {
            List<Check> seats = seats(ball, APART).stream()
                    .map(seat -> new Check(seat, ball.center(), ball.sizePt()))
                    .toList();
            for (Check a : seats) {
                for (Check b : seats) {
                    if (a.free().along(b.free()) < -0.95) {
                        return List.of(a, b);
                    }
                }
            }
        }
        return List.of();
    }

    /** A triangle whose tip stands on the middle of a bar: the sign of some process diagrams. */
    List<Check> diodes() {
        List<Check> found = new ArrayList<>();
        for (Triangle t : picture.triangles()) {
            for (int i = 0; i < 3; i++) {
                Point tip = t.corners().get(i);
                Point base = t.base(i);
                if (bar(tip, Direction.of(base, tip), t.sizePt())) {
                    found.add(new Check(base, tip, t.sizePt()));
                }
            }
        }
        return found;
    }

    private boolean bar(Point tip, Direction way, double sizePt) {
        return picture.anySolid(s -> {
            Point m = middle(s.a(), s.b());
            return Math.abs(Direction.of(s.a(), s.b()).along(way)) < 0.15
                    && m.distancePt(tip) < 0.15 * sizePt + picture.tolPt() / 2
                    && s.lengthPt() > 0.6 * sizePt
                    && s.lengthPt() < 1.8 * sizePt;
        });
    }

    /** The tips of seats that hold the ball. */
    private List<Point> seats(Shape ball, double apart) {
        Point c = ball.center();
        double r = ball.sizePt() / 2;
        List<Segment> arms =
                picture.solid().stream().filter(s -> arm(s, c, r, apart)).toList();
        List<Point> tips = new ArrayList<>();
        for (int i = 0; i < arms.size(); i++) {
            for (int j = i + 1; j < arms.size(); j++) {
                Point tip = tip(arms.get(i), arms.get(j));
                if (tip != null
                        && holds(tip, arms.get(i), arms.get(j), c, r, apart)
                        && tips.stream().allMatch(t -> t.distancePt(tip) > 0.3 * r)) {
                    tips.add(tip);
                }
            }
        }
        for (Arrow head : picture.arrows()) {
            boolean filled = picture.triangles().stream()
                    .anyMatch(t -> t.box().grow(picture.tolPt()).contains(head.tip()));
            double d = head.tip().distancePt(c);
            if (!filled
                    && head.headPt() > 0.8 * r
                    && d > 0.8 * r
                    && d < Math.min(2.4, apart) * r
                    && head.direction().along(Direction.of(c, head.tip())) > 0.95
                    && tips.stream().allMatch(t -> t.distancePt(head.tip()) > 0.3 * r)) {
                tips.add(head.tip());
            }
        }
        return tips;
    }

    private static boolean arm(Segment s, Point c, double r, double apart) {
        double aside = Direction.of(s.a(), s.b()).aside(s.a(), c);
        return s.lengthPt() > 0.6 * r
                && s.lengthPt() < 6 * r
                && s.distancePt(c) < (apart - 0.6) * r
                && aside > 0.45 * r
                && aside < 0.75 * apart * r;
    }

    /** Where two arms meet or would meet. */
    private static Point tip(Segment a, Segment b) {
        double rx = a.b().xPt() - a.a().xPt();
        double ry = a.b().yPt() - a.a().yPt();
        double sx = b.b().xPt() - b.a().xPt();
        double sy = b.b().yPt() - b.a().yPt();
        double det = rx * sy - ry * sx;
        if (Math.abs(det) < 0.2 * a.lengthPt() * b.lengthPt()) {
            return null;
        }
        double t = ((b.a().xPt() - a.a().xPt()) * sy - (b.a().yPt() - a.a().yPt()) * sx) / det;
        return a.a().plus(t * rx, t * ry);
    }

    /** Two arms alike that open around the ball. */
    private static boolean holds(Point tip, Segment one, Segment two, Point c, double r, double apart) {
        double d = tip.distancePt(c);
        Point a = far(one, tip);
        Point b = far(two, tip);
        double la = tip.distancePt(a);
        double lb = tip.distancePt(b);
        double near = Math.max(tip.distancePt(near(one, tip)), tip.distancePt(near(two, tip)));
        Direction axis = Direction.of(tip, c);
        double cosA = axis.along(Direction.of(tip, a));
        double cosB = axis.along(Direction.of(tip, b));
        return d > 0.7 * r
                && d < apart * r
                && near < 1.3 * r
                && Math.abs(la - lb) < 0.25 * Math.max(la, lb)
                && Math.abs(cosA - cosB) < 0.12
                && cosA > 0.35
                && cosA < 0.93
                && Direction.of(tip, a).along(Direction.of(tip, b)) < 0.8;
    }

    private static Point far(Segment s, Point p) {
        return s.a().distancePt(p) > s.b().distancePt(p) ? s.a() : s.b();
    }

    private static Point near(Segment s, Point p) {
        return s.a().distancePt(p) > s.b().distancePt(p) ? s.b() : s.a();
    }

    private static Point middle(Point a, Point b) {
        return new Point((a.xPt() + b.xPt()) / 2, (a.yPt() + b.yPt()) / 2);
    }
}
