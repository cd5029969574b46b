package linewalk.importer.kind;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import linewalk.drawing.Kind;
import linewalk.drawing.Point;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Segment;
import linewalk.importer.symbol.Arc;

/** Circles: pumps, motors and what drives them, gauges. */
final class RoundRule {

    /** How much larger than its control's squares a machine is drawn at least. */
    private static final double LARGER = 1.1;

    /** From the middle of a test point's ball to its arched cap, in balls. */
    private static final double LEAST_ARCH = 0.6;

    private static final double MOST_ARCH = 1.4;

    private final Picture p;

    RoundRule(Picture picture) {
        this.p = picture;
    }

    Optional<Verdict> read() {
        Optional<Shape> body = p.of(Form.CIRCLE, Form.HALF_DISC).stream()
                .filter(c -> p.outer().contains(c))
                .max(Comparator.comparingDouble(Shape::sizePt));
        if (body.isEmpty() || body.get().sizePt() < 0.5 * largestPt()) {
            return Optional.empty();
        }
        Shape c = body.get();
        if (c.form() == Form.HALF_DISC) {
            return signs(c).isEmpty()
                    ? Optional.empty()
                    : Optional.of(Verdict.of(Kind.ROTARY_ACTUATOR, 0.85, "half a circle with triangles"));
        }
        return machine(c).or(() -> lettered(c)).or(() -> gauge(c)).or(() -> capped(c));
    }

    /** A machine with its control in one envelope or box: its circle is larger than the squares of the control's valves. */
    Optional<Verdict> controlled() {
        return p.of(Form.CIRCLE).stream()
                .filter(c -> p.of(Form.SQUARE, Form.BOX).stream()
                        .allMatch(s -> s.holds(c) || c.sizePt() > LARGER * s.sizePt()))
                .max(Comparator.comparingDouble(Shape::sizePt))
                .flatMap(this::machine);
    }

    private double largestPt() {
        return p.outer().stream().mapToDouble(Shape::sizePt).max().orElse(0);
    }

    private Optional<Verdict> lettered(Shape c) {
        for (String word : p.words()) {
            if (word.matches("M|M ?[13] ?~?|M ?[=~-]+|EM|E\\.?M\\.?")) {
                return Optional.of(Verdict.of(Kind.ELECTRIC_MOTOR, 0.95, "circle with the letter M"));
            } else if (word.matches("PS|PSH|PSL|TS|LS|FS|LSL|LSH|TSH")) {
                return Optional.of(Verdict.of(Kind.SWITCH, 0.85, "circle with the letters " + word));
            } else if (word.matches("PI|PG|TI|LI|FI|LG")) {
                return Optional.of(Verdict.of(Kind.GAUGE, 0.85, "circle with the letters " + word));
            }
        }
        return Optional.empty();
    }

    /** The triangles at the rim, true where the tip points out. */
    private List<Boolean> signs(Shape c) {
        List<Boolean> out = new ArrayList<>();
        Point m = c.form() == Form.HALF_DISC ? c.center() : c.box().center();
        double r = c.sizePt() / 2;
        for (Triangle t : p.triangles()) {
            double[] d = t.corners().stream()
                    .mapToDouble(x -> -x.distancePt(m))
                    .sorted()
                    .map(x -> -x)
                    .toArray();
            boolean atRim = d[0] > 0.82 * r && d[0] < 1.13 * r && d[2] < 0.95 * r;
            boolean large = t.sizePt() > 0.26 * r && t.sizePt() < 1.3 * r;
            if (atRim && large && !needle(t, c)) {
                out.add(d[0] - d[1] > d[1] - d[2]);
            }
        }
        return out;
    }

    /** Head of an arrow that starts well inside on the other side of the middle. */
    private boolean needle(Triangle t, Shape c) {
        return p.arrows().stream()
                .anyMatch(a -> t.box().grow(p.tolPt()).contains(a.tip())
                        && a.lengthPt() > 1.6 * t.sizePt()
                        && c.box().grow(p.tolPt()).contains(a.tail())
                        && a.direction().aside(a.tail(), c.center()) < 0.25 * c.sizePt()
                        && a.lengthPt() > 0.5 * c.sizePt());
    }

    private Optional<Verdict> machine(Shape c) {
        List<Boolean> signs = signs(c);
        if (signs.isEmpty()) {
            return Optional.empty();
        }
        boolean out = signs.contains(true);
        boolean in = signs.contains(false);
        if (out && in) {
            return Optional.of(Verdict.of(Kind.MOTOR, 0.55, "circle with triangles that point in and out")
                    .or(Kind.PUMP, 0.45));
        }
        String how = signs.size() == 1 ? "a triangle that points " : signs.size() + " triangles that point ";
        return Optional.of(
                out
                        ? Verdict.of(Kind.PUMP, 0.95, "circle with " + how + "out")
                        : Verdict.of(Kind.MOTOR, 0.95, "circle with " + how + "in"));
    }

    private Optional<Verdict> gauge(Shape c) {
        double r = c.sizePt() / 2;
        boolean arrow = p.arrows().stream().anyMatch(a -> within(a.tip(), c) && within(a.tail(), c) && pointer(a, c));
        boolean hand = !arrow
                && p.contacts().size() < 2
                && p.anySolid(s -> within(s.a(), c)
                        && within(s.b(), c)
                        && s.lengthPt() > 0.8 * r
                        && s.distancePt(c.center()) < 0.25 * r
                        && oblique(s));
        if (!arrow && !hand) {
            return Optional.empty();
        }
        if (!arrow && crossed(c)) {
            return Optional.of(
                    Verdict.of(Kind.TEST_POINT, 0.75, "circle with a cross").or(Kind.GAUGE, 0.25));
        }
        double likely = arrow ? 0.93 : 0.6;
        String seen = arrow ? "circle with a needle" : "circle with a stroke like a needle";
        if (coupling(c)) {
            return Optional.of(Verdict.of(Kind.TEST_POINT, likely, seen + " on a test coupling")
                    .or(Kind.GAUGE, 1 - likely));
        }
        Verdict plain = Verdict.of(Kind.GAUGE, likely, seen).or(Kind.TEST_POINT, 1 - likely);
        return Optional.of(plain);
    }

    /** An empty circle where a line ends, and beyond it a bar on a stub. */
    private Optional<Verdict> capped(Shape c) {
        if (p.contacts().size() == 2 && barred(c)) {
            return Optional.of(Verdict.of(Kind.TEST_POINT, 0.7, "ball on a bar across the line")
                    .or(Kind.CHECK_VALVE, 0.2));
        } else if (p.contacts().size() != 1) {
            return Optional.empty();
        }
        Direction away = Direction.of(p.contacts().get(0).port().place(), c.center());
        boolean bar = p.anySolid(s -> Math.abs(Direction.of(s.a(), s.b()).along(away)) < 0.12
                && onWay(middle(s), c, away, 0.15)
                && s.lengthPt() > 0.5 * c.sizePt()
                && s.lengthPt() < 1.6 * c.sizePt());
        boolean inside = p.anySolid(s -> within(s.a(), c) && within(s.b(), c));
        boolean cap = bar || p.arcs().stream().anyMatch(a -> isArched(a, c, away));
        return cap && !inside ? Optional.of(Verdict.of(Kind.TEST_POINT, 0.75, "circle under a cap")) : Optional.empty();
    }

    /** About half a circle around the ball, on the side away from its line. */
    private static boolean isArched(Arc a, Shape c, Direction away) {
        double r = a.bulge().distancePt(c.center()) / c.sizePt();
        return !a.sharp()
                && r > LEAST_ARCH
                && r < MOST_ARCH
                && Direction.of(c.center(), a.bulge()).along(away) > 0.9
                && a.chordPt() > c.sizePt()
                && Stream.of(a.from(), a.to())
                        .allMatch(e -> Math.abs(e.distancePt(c.center()) / c.sizePt() - r) < 0.2 * r);
    }

    /** An empty circle in the line with a straight bar at its rim, where a check valve has a seat. */
    private boolean barred(Shape c) {
        Direction way = Direction.of(
                p.contacts().get(0).port().place(), p.contacts().get(1).port().place());
        boolean inside = p.anySolid(s -> within(s.a(), c) && within(s.b(), c));
        return !inside
                && p.anySolid(s -> Math.abs(Direction.of(s.a(), s.b()).along(way)) < 0.12
                        && s.lengthPt() > 0.9 * c.sizePt()
                        && s.lengthPt() < 2.2 * c.sizePt()
                        && Math.abs(s.distancePt(c.center()) - c.sizePt() / 2) < 0.15 * c.sizePt()
                        && middle(s).distancePt(c.center()) < 0.65 * c.sizePt());
    }

    /** Two oblique strokes through the centre, square to one another. */
    private boolean crossed(Shape c) {
        return p.anySolid(s -> through(s, c)
                && p.anySolid(o ->
                        through(o, c) && Math.abs(Direction.of(s.a(), s.b()).along(Direction.of(o.a(), o.b()))) < 0.2));
    }

    private static boolean through(Segment s, Shape c) {
        return within(s.a(), c)
                && within(s.b(), c)
                && oblique(s)
                && s.lengthPt() > 0.8 * c.sizePt()
                && s.distancePt(c.center()) < 0.1 * c.sizePt();
    }

    private static boolean within(Point x, Shape c) {
        return x.distancePt(c.center()) < 1.06 * c.sizePt() / 2;
    }

    private static boolean pointer(Arrow a, Shape c) {
        return a.lengthPt() > 0.4 * c.sizePt() / 2;
    }

    private static boolean oblique(Segment s) {
        Direction d = Direction.of(s.a(), s.b());
        return Math.min(Math.abs(d.dx()), Math.abs(d.dy())) > 0.25;
    }

    /** Bars across the line, chevrons on it, or a small ball between gauge and line. */
    private boolean coupling(Shape c) {
        List<Direction> ways = p.contacts().stream()
                .map(x -> Direction.of(c.center(), x.port().place()))
                .toList();
        for (Direction way : ways) {
            boolean ball = Stream.concat(p.of(Form.CIRCLE).stream(), p.beside().stream())
                    .anyMatch(o ->
                            o.form() == Form.CIRCLE && o.sizePt() < 0.6 * c.sizePt() && onWay(o.center(), c, way, 0.1));
            boolean bar = p.drawn()
                    .anyMatch(s -> Math.abs(Direction.of(s.a(), s.b()).along(way)) < 0.12
                            && onWay(middle(s), c, way, 0.15)
                            && s.lengthPt() > 0.12 * c.sizePt()
                            && s.lengthPt() < 1.3 * c.sizePt());
            boolean chevron = p.arcs().stream()
                    .anyMatch(a -> onWay(a.bulge(), c, way, 0.12)
                            && onWay(a.middle(), c, way, 0.12)
                            && Math.abs(Direction.of(a.from(), a.to()).along(way)) < 0.2
                            && a.chordPt() < 1.2 * c.sizePt());
            if (ball || bar || chevron || headOnWay(c, way) || arms(c, way)) {
                return true;
            }
        }
        return false;
    }

    /** A chevron with the line through it looks like an open arrowhead. */
    private boolean headOnWay(Shape c, Direction way) {
        return p.arrows().stream()
                .anyMatch(a -> Math.abs(a.direction().along(way)) > 0.97
                        && onWay(a.tip(), c, way, 0.1)
                        && a.headPt() > 0.2 * c.sizePt());
    }

    /** Two oblique strokes that meet on the way, one on each side. */
    private boolean arms(Shape c, Direction way) {
        return p.anySolid(s -> p.anySolid(o -> s != o && arm(s, o.a(), c, way) && mirrored(s, o, c, way)));
    }

    private boolean arm(Segment s, Point tip, Shape c, Direction way) {
        double slope = Math.abs(Direction.of(s.a(), s.b()).along(way));
        boolean meets = s.a().distancePt(tip) < p.tolPt() || s.b().distancePt(tip) < p.tolPt();
        return meets && onWay(tip, c, way, 0.08) && slope > 0.3 && slope < 0.95 && s.lengthPt() < 0.8 * c.sizePt();
    }

    private boolean mirrored(Segment s, Segment o, Shape c, Direction way) {
        Point far = s.a().distancePt(o.a()) > s.b().distancePt(o.a()) ? s.a() : s.b();
        double aside = way.aside(c.center(), far) - way.aside(c.center(), o.b());
        double ahead = way.ahead(c.center(), far) - way.ahead(c.center(), o.b());
        return far.distancePt(o.b()) > 0.1 * c.sizePt()
                && Math.abs(aside) < 0.05 * c.sizePt()
                && Math.abs(ahead) < 0.05 * c.sizePt()
                && way.aside(c.center(), far) > 0.08 * c.sizePt();
    }

    private static Point middle(Segment s) {
        return new Point((s.a().xPt() + s.b().xPt()) / 2, (s.a().yPt() + s.b().yPt()) / 2);
    }

    private static boolean onWay(Point x, Shape c, Direction way, double aside) {
        double ahead = way.ahead(c.center(), x);
        return ahead > 0.53 * c.sizePt() && ahead < 1.8 * c.sizePt() && way.aside(c.center(), x) < aside * c.sizePt();
    }
}
