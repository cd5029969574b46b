package linewalk.importer.kind;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import linewalk.drawing.Kind;
import linewalk.drawing.Passage;
import linewalk.drawing.Passage.Opens;
import linewalk.drawing.Point;
import linewalk.drawing.Position;
import linewalk.drawing.Position.How;
import linewalk.importer.kind.Control.PilotFrom;
import linewalk.importer.page.Direction;

/** What a part whose kind is read joins between its ports; empty unless every direction is seen. */
final class Passing {

    /** Two directions count as one where their cosine is above this. */
    private static final double ALONG = 0.92;

    private record Way(String from, String to) {}

    private final Motifs m;
    private final Picture p;
    private final Kind kind;

    Passing(Motifs motifs, Kind kind) {
        this.m = motifs;
        this.p = motifs.picture();
        this.kind = kind;
    }

    List<Position> positions() {
        return switch (kind) {
            case CHECK_VALVE -> free().map(w -> rest(oneWay(w))).orElse(List.of());
            case PILOT_CHECK_VALVE -> pilotCheck();
            case FLOW_CONTROL -> flowControl();
            case ORIFICE ->
                ends(p.contacts())
                        .map(w -> rest(new Passage(w.from, w.to, false, true, null)))
                        .orElse(List.of());
            case RELIEF_VALVE, SEQUENCE_VALVE, UNLOADING_VALVE ->
                control(PilotFrom.INLET)
                        .map(w -> rest(new Passage(w.from, w.to, true, false, Opens.PRESSURE)))
                        .orElse(List.of());
            case REDUCING_VALVE ->
                control(PilotFrom.OUTLET)
                        .map(w -> rest(new Passage(w.from, w.to, false, false, null)))
                        .orElse(List.of());
            case COUNTERBALANCE_VALVE -> counterbalance();
            case SHUTTLE_VALVE -> shuttle();
            case FLOW_DIVIDER -> divider();
            default -> List.of();
        };
    }

    private static Passage oneWay(Way w) {
        return new Passage(w.from, w.to, true, false, null);
    }

    private static Position restPosition(Passage... passages) {
        return new Position(List.of(Position.REST), How.SPRING, List.of(passages));
    }

    private static List<Position> rest(Passage... passages) {
        return List.of(restPosition(passages));
    }

    private static Position piloted(Way... ways) {
        return new Position(
                List.of("pilot"),
                How.PILOT,
                Stream.of(ways)
                        .map(w -> new Passage(w.from, w.to, false, false, null))
                        .toList());
    }

    private static Optional<Way> ends(List<Contact> c) {
        return c.size() != 2
                ? Optional.empty()
                : Optional.of(new Way(c.get(0).port().id(), c.get(1).port().id()));
    }

    /** The two working ports in the order in which they lie along a direction; empty where they lie across it. */
    private Optional<Way> along(Direction way) {
        List<Contact> c = p.working();
        if (c.size() != 2) {
            return Optional.empty();
        }
        Point a = c.get(0).port().place();
        Point b = c.get(1).port().place();
        double cosine = Direction.of(a, b).along(way);
        if (Math.abs(cosine) < ALONG) {
            return Optional.empty();
        }
        String one = c.get(0).port().id();
        String two = c.get(1).port().id();
        return Optional.of(cosine > 0 ? new Way(one, two) : new Way(two, one));
    }

    /** All checks of the figure, if they agree. */
    private Optional<Way> free() {
        if (m.checks().isEmpty()) {
            return Optional.empty();
        }
        Direction way = m.checks().get(0).free();
        boolean agree = m.checks().stream().allMatch(c -> c.free().along(way) > 0.95);
        return agree ? along(way) : Optional.empty();
    }

    /** One, or two side by side in one block, each between two ports of its own. */
    private List<Position> pilotCheck() {
        if (m.checks().size() != 2 || p.contacts().size() != 4) {
            return free().map(w -> List.of(restPosition(oneWay(w)), piloted(w))).orElse(List.of());
        }
        Optional<Way> one = through(m.checks().get(0));
        Optional<Way> two = through(m.checks().get(1));
        return one.isEmpty() || two.isEmpty()
                ? List.of()
                : List.of(restPosition(oneWay(one.get()), oneWay(two.get())), piloted(one.get(), two.get()));
    }

    /** Between the ports that lie before the seat and behind the ball, one each. */
    private Optional<Way> through(Check c) {
        List<Contact> on = p.contacts().stream()
                .filter(x -> c.free().aside(c.ball(), x.port().place()) < c.sizePt())
                .sorted(Comparator.comparingDouble(
                        x -> c.free().ahead(c.ball(), x.port().place())))
                .toList();
        boolean apart = on.size() == 2
                && c.free().ahead(c.ball(), on.get(0).port().place()) < 0
                && c.free().ahead(c.ball(), on.get(1).port().place()) > 0;
        return apart
                ? Optional.of(new Way(on.get(0).port().id(), on.get(1).port().id()))
                : Optional.empty();
    }

    private List<Position> flowControl() {
        boolean ball = p.shapes().stream().anyMatch(s -> s.form() == Form.CIRCLE || s.form() == Form.OTHER);
        if (m.checks().isEmpty() && ball) {
            return List.of();
        } else if (m.checks().isEmpty()) {
            return ends(p.working())
                    .map(w -> rest(new Passage(w.from, w.to, false, true, null)))
                    .orElse(List.of());
        }
        return free().map(w -> rest(oneWay(w), new Passage(w.from, w.to, false, true, null)))
                .orElse(List.of());
    }

    /** Nothing round stands in the figure: what is not understood may be a check that lets oil back. */
    private Optional<Way> control(PilotFrom pilot) {
        boolean other = p.shapes().stream()
                .anyMatch(s -> s.form() == Form.CIRCLE || s.form() == Form.OTHER || s.form() == Form.CAPSULE);
        return m.controls().size() == 1
                        && !other
                        && m.throttles().isEmpty()
                        && m.controls().get(0).own().filter(x -> x == pilot).isPresent()
                        && m.checks().isEmpty()
                ? through(m.controls().get(0))
                : Optional.empty();
    }

    /** From the one line at the arrow's tail to the one at its tip, be they dashed: a drain stands beside the spring. */
    private Optional<Way> through(Control c) {
        Optional<Contact> tail = atEnd(c, -1);
        Optional<Contact> tip = atEnd(c, 1);
        return tail.isPresent() && tip.isPresent()
                ? Optional.of(new Way(tail.get().port().id(), tip.get().port().id()))
                : along(c.arrow());
    }

    private Optional<Contact> atEnd(Control c, int sign) {
        Point middle = c.square().center();
        List<Contact> at = p.contacts().stream()
                .filter(x -> sign * c.arrow().ahead(middle, x.port().place())
                        > 2 * c.arrow().aside(middle, x.port().place()))
                .toList();
        return at.size() == 1 ? Optional.of(at.get(0)) : Optional.empty();
    }

    /** Free through the check; back through the spool, whose arrow must point the other way. */
    private List<Position> counterbalance() {
        if (m.controls().size() != 1 || m.checks().size() != 1) {
            return List.of();
        }
        Direction back = m.controls().get(0).arrow();
        if (back.along(m.checks().get(0).free()) > -0.9) {
            return List.of();
        }
        boolean outside = !p.pilots().isEmpty();
        return free().map(w -> outside
                        ? List.of(restPosition(oneWay(w)), piloted(w))
                        : rest(oneWay(w), new Passage(w.to, w.from, true, false, Opens.PRESSURE)))
                .orElse(List.of());
    }

    /** From the one port on its side to each of both on the other. */
    private List<Position> divider() {
        if (m.throttles().size() != 2 || p.contacts().size() != 3) {
            return List.of();
        }
        for (Contact one : p.contacts()) {
            List<Contact> others = p.contacts().stream().filter(c -> c != one).toList();
            Point a = others.get(0).port().place();
            Point b = others.get(1).port().place();
            Direction across = Direction.of(a, b);
            Direction in = new Direction(-across.dy(), across.dx());
            boolean between = across.ahead(a, one.port().place()) > 0
                    && across.ahead(b, one.port().place()) < 0;
            if (between
                    && Math.abs(in.ahead(a, one.port().place()))
                            > 0.5 * Math.min(p.core().widthPt(), p.core().heightPt())) {
                return rest(divided(one, others.get(0)), divided(one, others.get(1)));
            }
        }
        return List.of();
    }

    private static Passage divided(Contact from, Contact to) {
        return new Passage(from.port().id(), to.port().id(), false, true, null);
    }

    /** From either seat to the port between. */
    private List<Position> shuttle() {
        if (m.shuttle().size() != 2 || p.contacts().size() != 3) {
            return List.of();
        }
        Point ball = m.shuttle().get(0).ball();
        Direction axis = m.shuttle().get(0).free();
        Optional<Contact> one = end(ball, axis, 1);
        Optional<Contact> two = end(ball, axis, -1);
        List<Contact> out = p.contacts().stream()
                .filter(c -> one.stream().noneMatch(c::equals) && two.stream().noneMatch(c::equals))
                .toList();
        if (one.isEmpty() || two.isEmpty() || out.size() != 1) {
            return List.of();
        }
        String to = out.get(0).port().id();
        return rest(
                oneWay(new Way(one.get().port().id(), to)),
                oneWay(new Way(two.get().port().id(), to)));
    }

    /** The one contact that lies on the axis. */
    private Optional<Contact> end(Point ball, Direction axis, int sign) {
        List<Contact> at = p.contacts().stream()
                .filter(c -> sign * axis.along(Direction.of(ball, c.port().place())) > 0.9)
                .toList();
        return at.size() == 1 ? Optional.of(at.get(0)) : Optional.empty();
    }
}
