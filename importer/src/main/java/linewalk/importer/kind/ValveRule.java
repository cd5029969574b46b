package linewalk.importer.kind;

import java.util.List;
import java.util.Optional;
import linewalk.drawing.Kind;
import linewalk.drawing.Point;
import linewalk.importer.kind.Control.PilotFrom;
import linewalk.importer.page.Direction;

/** Valves that pressure moves, throttles and checks. */
final class ValveRule {

    /** An arrow further from the middle than this, in sides, is drawn closed at rest. */
    private static final double ASIDE = 0.07;

    private final Motifs m;
    private final Picture p;

    ValveRule(Motifs motifs) {
        this.m = motifs;
        this.p = motifs.picture();
    }

    Optional<Verdict> control() {
        if (m.controls().isEmpty()) {
            return Optional.empty();
        }
        Control c = m.controls().get(0);
        if (!c.held() && !m.throttles().isEmpty()) {
            return Optional.empty();
        }
        Verdict v = m.checks().isEmpty() ? alone(c) : withCheck(c);
        return Optional.of(c.held() ? v : v.weaker(0.7, ", neither spring nor pilot seen"));
    }

    private Verdict withCheck(Control c) {
        if (c.own().filter(x -> x == PilotFrom.OUTLET).isPresent() && !c.outside()) {
            return Verdict.of(
                            Kind.REDUCING_VALVE, 0.75, "square with an arrow, pilot from its outlet, a check beside it")
                    .or(Kind.COUNTERBALANCE_VALVE, 0.25);
        } else if (drained(c) && p.pilots().size() == 1 && !c.outside()) {
            return Verdict.of(
                            Kind.SEQUENCE_VALVE,
                            0.5,
                            "square with an arrow, a check beside it and a drain at the spring")
                    .or(Kind.COUNTERBALANCE_VALVE, 0.45);
        }
        return Verdict.of(Kind.COUNTERBALANCE_VALVE, 0.9, "square with an arrow and a spring, a check beside it")
                .or(Kind.SEQUENCE_VALVE, 0.1);
    }

    private Verdict alone(Control c) {
        boolean aside = c.offset() > ASIDE;
        String arrow = aside ? "square with an arrow aside" : "square with an arrow in the middle";
        if (c.own().isEmpty()) {
            return c.outside() ? outside(arrow) : unseen(arrow, aside);
        } else if (c.own().get() == PilotFrom.OUTLET) {
            return Verdict.of(Kind.REDUCING_VALVE, aside ? 0.8 : 0.94, arrow + ", pilot from its outlet");
        }
        boolean relieves = !drained(c) || p.working().stream().anyMatch(x -> x.toTank() && atTip(c, x));
        return !relieves
                ? Verdict.of(Kind.SEQUENCE_VALVE, 0.6, arrow + ", pilot from its inlet, a drain at the spring")
                        .or(Kind.RELIEF_VALVE, 0.35)
                : Verdict.of(Kind.RELIEF_VALVE, 0.93, arrow + ", pilot from its inlet")
                        .or(Kind.SEQUENCE_VALVE, 0.07);
    }

    private static boolean atTip(Control c, Contact x) {
        return c.arrow().ahead(c.square().center(), x.port().place()) > 0;
    }

    private static Verdict outside(String arrow) {
        return Verdict.of(Kind.UNLOADING_VALVE, 0.6, arrow + ", pilot from outside")
                .or(Kind.SEQUENCE_VALVE, 0.2)
                .or(Kind.RELIEF_VALVE, 0.1)
                .or(Kind.COUNTERBALANCE_VALVE, 0.1);
    }

    private static Verdict unseen(String arrow, boolean aside) {
        return aside
                ? Verdict.of(Kind.RELIEF_VALVE, 0.6, arrow + ", its pilot not seen")
                        .or(Kind.SEQUENCE_VALVE, 0.2)
                        .or(Kind.UNLOADING_VALVE, 0.1)
                        .or(Kind.REDUCING_VALVE, 0.1)
                : Verdict.of(Kind.REDUCING_VALVE, 0.5, arrow + ", its pilot not seen")
                        .or(Kind.RELIEF_VALVE, 0.4)
                        .or(Kind.SEQUENCE_VALVE, 0.1);
    }

    /** A dashed line leaves at the spring's side. */
    private boolean drained(Control c) {
        Point m = c.square().center();
        double half = c.square().sizePt() / 2;
        Direction across = new Direction(-c.arrow().dy(), c.arrow().dx());
        return p.springs().stream().anyMatch(s -> {
            double side = Math.signum(across.ahead(m, s.middle()));
            return p.pilots().stream().map(x -> x.port().place()).anyMatch(x -> side * across.ahead(m, x) > 0.9 * half);
        });
    }

    Optional<Verdict> throttle() {
        List<Throttle> all = m.throttles();
        if (all.isEmpty()) {
            return Optional.empty();
        } else if (!m.checks().isEmpty()) {
            return Optional.of(Verdict.of(Kind.FLOW_CONTROL, 0.94, "throttle with a check beside it"));
        } else if (all.size() > 1 && p.contacts().size() == 3) {
            boolean boxed = p.of(Form.BOX, Form.SQUARE).stream()
                    .anyMatch(b -> all.stream().allMatch(t -> b.box().contains(t.place())));
            return Optional.of(
                    boxed
                            ? Verdict.of(Kind.FLOW_DIVIDER, 0.9, "two throttles in one box, three lines")
                            : Verdict.of(Kind.FLOW_DIVIDER, 0.75, "two throttles, three lines")
                                    .or(Kind.FLOW_CONTROL, 0.25));
        } else if (all.stream().anyMatch(Throttle::adjustable)) {
            return Optional.of(Verdict.of(Kind.FLOW_CONTROL, 0.92, "throttle with an arrow across")
                    .or(Kind.ORIFICE, 0.08));
        }
        boolean boxed = p.of(Form.BOX, Form.SQUARE).stream()
                .anyMatch(b -> b.sizePt() > 1.35 * all.get(0).sizePt());
        return Optional.of(
                boxed
                        ? Verdict.of(Kind.ORIFICE, 0.55, "throttle in a box").or(Kind.FLOW_CONTROL, 0.45)
                        : Verdict.of(Kind.ORIFICE, 0.93, "two walls that narrow a line")
                                .or(Kind.FLOW_CONTROL, 0.07));
    }

    Optional<Verdict> check() {
        if (p.contacts().size() == 3 && !m.shuttle().isEmpty()) {
            return Optional.of(Verdict.of(Kind.SHUTTLE_VALVE, 0.92, "a ball between two seats, three lines"));
        } else if (m.checks().isEmpty()) {
            return m.diodes().isEmpty()
                    ? Optional.empty()
                    : Optional.of(Verdict.of(Kind.CHECK_VALVE, 0.7, "a triangle against a bar"));
        }
        Check c = m.checks().get(0);
        boolean inner = p.dashed().stream()
                .anyMatch(s -> p.core().contains(s.a()) && p.core().contains(s.b()));
        boolean aside = p.contacts().stream().anyMatch(x -> x.dashed() && !inLine(c, x));
        boolean pilot = aside || !p.pilots().isEmpty() || inner && p.contacts().size() > 2;
        if (!pilot) {
            boolean boxed = p.shapes().stream().anyMatch(s -> s.form() != Form.CIRCLE && s.covers(c.ball()));
            if (!boxed && p.contacts().size() <= 2 && isCapped(c)) {
                return Optional.of(Verdict.of(Kind.TEST_POINT, 0.9, "a ball on a seat under a cap")
                        .or(Kind.CHECK_VALVE, 0.1));
            }
            Verdict plain = Verdict.of(Kind.CHECK_VALVE, 0.94, "a ball on a seat");
            return Optional.of(boxed ? plain.weaker(0.7, " in a box that should hold more") : plain);
        }
        boolean piston =
                p.of(Form.BOX, Form.SQUARE).stream().anyMatch(b -> b.sizePt() < 3 * c.sizePt() && !b.covers(c.ball()));
        boolean spring = !p.springs().isEmpty();
        if (piston && spring) {
            return Optional.of(
                    Verdict.of(Kind.PILOT_CHECK_VALVE, 0.55, "a ball on a seat, a spring, a piston with a pilot line")
                            .or(Kind.PREFILL_VALVE, 0.4)
                            .or(Kind.DECOMPRESSION_VALVE, 0.05));
        }
        return Optional.of(Verdict.of(Kind.PILOT_CHECK_VALVE, 0.93, "a ball on a seat with a pilot line")
                .or(Kind.PREFILL_VALVE, 0.05)
                .or(Kind.DECOMPRESSION_VALVE, 0.02));
    }

    /** A stroke as broad as the ball or broader lies across the way out. */
    private boolean isCapped(Check c) {
        return p.drawn()
                .anyMatch(s -> Math.abs(c.free().along(Direction.of(s.a(), s.b()))) < 0.1
                        && s.lengthPt() > c.sizePt()
                        && s.distancePt(c.ball()) > 0.45 * c.sizePt()
                        && c.free().ahead(c.ball(), s.nearest(c.ball())) > 0.45 * c.sizePt()
                        && c.free().aside(c.ball(), s.nearest(c.ball())) < 0.1 * c.sizePt());
    }

    /** Before the seat or behind the ball. */
    private static boolean inLine(Check c, Contact x) {
        return Math.abs(c.free().along(Direction.of(c.ball(), x.port().place()))) > 0.9;
    }
}
