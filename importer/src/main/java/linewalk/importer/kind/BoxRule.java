package linewalk.importer.kind;

import java.util.List;
import java.util.Optional;
import linewalk.drawing.Kind;
import linewalk.drawing.Point;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Segment;
import linewalk.importer.symbol.Arc;

/** Diamonds, capsules, bowties and boxes with contacts: filters, coolers, accumulators, cocks, switches. */
final class BoxRule {

    /** A cock's triangles are most of it: smaller ones are what a line through a spring makes of it. In sizes of the figure. */
    private static final double LEAST_COCK = 0.2;

    /** Within a box is what stands this far from its walls, in its shorter sides. */
    private static final double DEEP = 0.1;

    /** Largest head with which pressure comes into a switch, and how far inside it stands, in the box's shorter sides. */
    private static final double ENTRANCE = 0.45;

    /** Least size of a poppet, in sizes of its box. */
    private static final double POPPET = 0.3;

    private final Picture p;

    BoxRule(Picture picture) {
        this.p = picture;
    }

    Optional<Verdict> diamond() {
        for (Shape d : p.of(Form.DIAMOND)) {
            if (p.shapes().stream().anyMatch(s -> s.form() == Form.CIRCLE && s.holds(d))) {
                continue;
            }
            int out = 0;
            int in = 0;
            for (Arrow a : p.arrows()) {
                if (d.box().grow(0.7 * d.sizePt()).contains(a.tip()) && heat(a, d)) {
                    boolean outward = a.direction().ahead(d.center(), a.tip()) > 0;
                    out += outward ? 1 : 0;
                    in += outward ? 0 : 1;
                }
            }
            for (Triangle t : out + in == 0 ? p.triangles() : List.<Triangle>of()) {
                Optional<Boolean> outward = throughCorners(t, d);
                out += outward.filter(o -> o).isPresent() ? 1 : 0;
                in += outward.filter(o -> !o).isPresent() ? 1 : 0;
            }
            if (p.dashed().stream().anyMatch(s -> diagonal(s, d))) {
                return Optional.of(Verdict.of(Kind.FILTER, 0.93, "diamond with a dashed diagonal")
                        .or(Kind.STRAINER, 0.07));
            } else if (out > 0 && in > 0) {
                return Optional.of(Verdict.of(Kind.COOLER, 0.6, "diamond with arrows in and out")
                        .or(Kind.HEATER, 0.4));
            } else if (out > 0) {
                return Optional.of(Verdict.of(Kind.COOLER, 0.94, "diamond with arrows that point out"));
            } else if (in > 0) {
                return Optional.of(Verdict.of(Kind.HEATER, 0.94, "diamond with arrows that point in"));
            } else if (brokenDiagonal(d)) {
                return Optional.of(Verdict.of(Kind.FILTER, 0.93, "diamond with a broken diagonal")
                        .or(Kind.STRAINER, 0.07));
            } else if (p.solid().stream().anyMatch(s -> diagonal(s, d))) {
                return Optional.of(Verdict.of(Kind.FILTER, 0.55, "diamond with a solid line across")
                        .or(Kind.COOLER, 0.25)
                        .or(Kind.STRAINER, 0.2));
            }
        }
        return Optional.empty();
    }

    /** On a diagonal of the diamond, away from the lines that go in and out. */
    /** A head on a line that goes on through the diamond's corners, and whether it points out; none beside that line. */
    private Optional<Boolean> throughCorners(Triangle t, Shape d) {
        if (!d.covers(t.center()) || t.sizePt() > 0.4 * d.sizePt()) {
            return Optional.empty();
        }
        Direction out = Direction.of(d.center(), t.center());
        boolean flow = p.working().stream()
                .anyMatch(
                        c -> Math.abs(Direction.of(d.center(), c.port().place()).along(out)) > 0.8);
        boolean level =
                d.corners().stream().anyMatch(c -> Direction.of(d.center(), c).along(out) > 0.97);
        double[] ahead = t.corners().stream()
                .mapToDouble(c -> out.ahead(d.center(), c))
                .sorted()
                .toArray();
        return flow || !level ? Optional.empty() : Optional.of(ahead[2] - ahead[1] > ahead[1] - ahead[0]);
    }

    private boolean heat(Arrow a, Shape d) {
        boolean level = d.corners().stream()
                .anyMatch(c -> Math.abs(Direction.of(d.center(), c).along(a.direction())) > 0.97);
        boolean through = level && a.direction().aside(a.tip(), d.center()) < 0.15 * d.sizePt();
        boolean flow = p.working().stream()
                .anyMatch(
                        c -> Math.abs(Direction.of(d.center(), c.port().place()).along(a.direction())) > 0.8
                                && c.port().place().distancePt(d.center()) < 1.2 * d.sizePt());
        return through && !flow;
    }

    /** Two or three dashes in one line from corner to corner. */
    private boolean brokenDiagonal(Shape d) {
        List<Segment> pieces = p.solid().stream()
                .filter(s -> d.box().grow(0.05 * d.sizePt()).contains(s.box()))
                .filter(s -> Direction.of(s.a(), s.b()).aside(s.a(), d.center()) < 0.12 * d.sizePt())
                .filter(s -> s.lengthPt() < 0.45 * d.sizePt())
                .toList();
        boolean level =
                pieces.stream().allMatch(Segment::horizontal) || pieces.stream().allMatch(Segment::vertical);
        double drawn = pieces.stream().mapToDouble(Segment::lengthPt).sum();
        return pieces.size() > 1 && level && drawn > 0.5 * d.sizePt();
    }

    private static boolean diagonal(Segment s, Shape d) {
        Direction along = Direction.of(s.a(), s.b());
        boolean axis = Math.min(Math.abs(along.dx()), Math.abs(along.dy())) < 0.2;
        return axis
                && along.aside(s.a(), d.center()) < 0.12 * d.sizePt()
                && s.distancePt(d.center()) < 0.3 * d.sizePt()
                && s.lengthPt() > 0.35 * d.sizePt()
                && s.lengthPt() < 1.25 * d.sizePt();
    }

    Optional<Verdict> capsule() {
        for (Shape c : p.of(Form.CAPSULE)) {
            boolean outer = p.outer().contains(c);
            boolean bar =
                    p.drawn().anyMatch(s -> across(s, c)) || p.arcs().stream().anyMatch(a -> within(a, c));
            boolean gas = p.triangles().stream().anyMatch(t -> c.covers(t.center()));
            boolean spring =
                    p.springs().stream().anyMatch(s -> c.box().contains(s.box().center()));
            if (outer && (bar || gas || spring)) {
                String seen = gas ? "a gas triangle" : spring ? "a spring" : "a bar across";
                return Optional.of(Verdict.of(Kind.ACCUMULATOR, bar && gas ? 0.96 : 0.9, "capsule with " + seen));
            } else if (outer) {
                return Optional.of(Verdict.of(Kind.ACCUMULATOR, 0.6, "empty capsule"));
            }
        }
        return Optional.empty();
    }

    private static boolean across(Segment s, Shape c) {
        boolean upright = c.box().heightPt() > c.box().widthPt();
        boolean turned = upright ? s.horizontal() : s.vertical();
        return turned
                && s.lengthPt() > 0.85 * c.smallPt()
                && s.lengthPt() < 1.1 * c.smallPt()
                && c.box().grow(0.05 * c.smallPt()).contains(s.box());
    }

    private static boolean within(Arc a, Shape c) {
        return c.box().grow(0.05 * c.smallPt()).contains(a.bulge()) && a.chordPt() > 0.8 * c.smallPt();
    }

    Optional<Verdict> cock() {
        boolean bow = !p.of(Form.BOWTIE).isEmpty();
        if (!bow) {
            bow = tipToTip();
        }
        return bow ? Optional.of(Verdict.of(Kind.SHUT_OFF_VALVE, 0.94, "two triangles tip to tip")) : Optional.empty();
    }

    private boolean tipToTip() {
        List<Triangle> t = p.triangles();
        for (int i = 0; i < t.size(); i++) {
            for (int j = i + 1; j < t.size(); j++) {
                double size = t.get(i).sizePt();
                if (size < LEAST_COCK * p.sizePt()) {
                    continue;
                }
                for (Point a : t.get(i).corners()) {
                    for (Point b : t.get(j).corners()) {
                        Direction one = Direction.of(t.get(i).center(), a);
                        Direction two = Direction.of(t.get(j).center(), b);
                        if (a.distancePt(b) < 0.4 * size
                                && one.along(two) < -0.95
                                && Math.abs(size - t.get(j).sizePt()) < 0.2 * size) {
                            return true;
                        }
                    }
                }
            }
        }
        return false;
    }

    /** A logic element: in a box a spring that pushes a poppet, which is no plain piston. */
    Optional<Verdict> poppet() {
        for (Shape b : p.of(Form.SQUARE, Form.BOX)) {
            boolean pushed = p.of(Form.OTHER).stream()
                    .filter(s -> b.holds(s) && s.corners().size() > 4 && s.sizePt() > POPPET * b.sizePt())
                    .anyMatch(s -> p.springs().stream()
                            .anyMatch(x -> b.covers(x.middle())
                                    && !s.covers(x.middle())
                                    && Math.min(s.edgePt(x.from()), s.edgePt(x.to())) < DEEP * b.smallPt()));
            if (p.outer().contains(b) && pushed) {
                return Optional.of(Verdict.of(Kind.CARTRIDGE_VALVE, 0.85, "box with a poppet that a spring pushes"));
            }
        }
        return Optional.empty();
    }

    /** A box with the oblique arm of an electric contact. */
    Optional<Verdict> contacts() {
        for (Shape b : p.of(Form.SQUARE, Form.BOX)) {
            boolean plain = p.shapes().stream().noneMatch(s -> b.holds(s) && !isContact(s, b) && !atEntrance(s, b))
                    && p.outer().contains(b);
            boolean arrows = p.arrows().stream().anyMatch(a -> reachesInto(a, b) && !atEntrance(a, b));
            boolean arm = p.anySolid(s -> b.covers(s.a()) && b.covers(s.b()) && isArm(s, b));
            boolean rest = p.springs().stream().anyMatch(s -> b.covers(s.middle()));
            if (plain && !arrows && arm && !rest && p.contacts().size() <= 2) {
                return Optional.of(Verdict.of(Kind.SWITCH, 0.85, "box with the arm of an electric contact"));
            }
            boolean lettered = p.words().stream().anyMatch(w -> w.matches("PS|TS|LS|FS"));
            if (plain && lettered) {
                return Optional.of(Verdict.of(Kind.SWITCH, 0.8, "box with the letters of a switch"));
            } else if (plain && p.words().contains("M") && p.contacts().isEmpty()) {
                return Optional.of(Verdict.of(Kind.ELECTRIC_MOTOR, 0.7, "box with the letter M"));
            }
        }
        return Optional.empty();
    }

    /** More than one that crosses a spring beside the box and touches its wall. */
    private static boolean reachesInto(Arrow a, Shape b) {
        return b.covers(a.middle()) || b.covers(a.tip()) && b.edgePt(a.tip()) > DEEP * b.smallPt();
    }

    /** The small head with which the pressure comes in. */
    private boolean atEntrance(Arrow a, Shape b) {
        return a.headPt() < ENTRANCE * b.smallPt() && atEntrance(a.tip(), b);
    }

    private boolean atEntrance(Shape s, Shape b) {
        return s.form() == Form.TRIANGLE && s.sizePt() < ENTRANCE * b.smallPt() && atEntrance(s.center(), b);
    }

    private boolean atEntrance(Point x, Shape b) {
        return p.contacts().stream().anyMatch(c -> c.port().place().distancePt(x) < ENTRANCE * b.smallPt());
    }

    /** The small circle that an arm closes on. */
    private static boolean isContact(Shape s, Shape b) {
        return s.form() == Form.CIRCLE && s.sizePt() < 0.25 * b.smallPt();
    }

    private static boolean isArm(Segment s, Shape b) {
        Direction d = Direction.of(s.a(), s.b());
        double slope = Math.min(Math.abs(d.dx()), Math.abs(d.dy()));
        return slope > 0.1 && s.lengthPt() > 0.25 * b.smallPt() && s.lengthPt() < 1.1 * b.smallPt();
    }
}
