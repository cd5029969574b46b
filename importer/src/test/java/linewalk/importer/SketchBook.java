package linewalk.importer;

import static linewalk.drawing.Kind.*;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import linewalk.drawing.Kind;

/**
 * Symbols drawn by the rules of ISO 1219-1 (from memory), several ways a kind, flow upwards. Passages as {@code A>B} one
 * way, {@code A-B} both ways, {@code ~} throttled, {@code !} opened by pressure or a pilot.
 */
final class SketchBook {

    /** @param passages at rest; null where none are expected */
    record Sketch(Kind kind, String way, String passages, UnaryOperator<SymbolSketch> drawing) {}

    private final List<Sketch> all = new ArrayList<>();

    static List<Sketch> all() {
        SketchBook book = new SketchBook();
        book.machines();
        book.actuators();
        book.conditioners();
        book.checks();
        book.throttles();
        book.pressure();
        book.measuring();
        return book.all;
    }

    private void add(Kind kind, String way, String passages, UnaryOperator<SymbolSketch> drawing) {
        all.add(new Sketch(kind, way, passages, drawing));
    }

    private static SymbolSketch inLine(SymbolSketch s, double half) {
        return s.port("A", 0, half, 0, 1).port("B", 0, -half, 0, -1);
    }

    private void machines() {
        add(PUMP, "fixed", null, s -> inLine(s.circle(0, 0, 1.5).triangle(-0.45, -0.72, 0.45, -0.72, 0, -1.5), 1.5));
        add(
                PUMP,
                "variable, shaft, small sign",
                null,
                s -> inLine(
                        s.circle(0, 0, 1.5)
                                .triangle(-0.3, -1.0, 0.3, -1.0, 0, -1.48)
                                .arrow(-1.5, 1.5, 1.6, -1.6)
                                .line(-1.5, -0.12, -2.5, -0.12)
                                .line(-1.5, 0.12, -2.5, 0.12),
                        1.5));
        add(
                PUMP,
                "both ways, with a drain",
                null,
                s -> inLine(
                        s.circle(0, 0, 1.5)
                                .triangle(-0.4, -0.75, 0.4, -0.75, 0, -1.5)
                                .triangle(-0.4, 0.75, 0.4, 0.75, 0, 1.5)
                                .pilotPort("L", 1.5, 0, 1, 0),
                        1.5));
        add(MOTOR, "one way", null, s -> inLine(s.circle(0, 0, 1.5).triangle(-0.42, 1.44, 0.42, 1.44, 0, 0.7), 1.5));
        add(
                MOTOR,
                "both ways",
                null,
                s -> inLine(
                        s.circle(0, 0, 1.5)
                                .triangle(-0.42, 1.44, 0.42, 1.44, 0, 0.7)
                                .triangle(-0.42, -1.44, 0.42, -1.44, 0, -0.7),
                        1.5));
        add(
                MOTOR,
                "both ways, small signs, shaft",
                null,
                s -> inLine(
                        s.circle(0, 0, 1.5)
                                .triangle(-0.3, 1.47, 0.3, 1.47, 0, 0.95)
                                .triangle(-0.3, -1.47, 0.3, -1.47, 0, -0.95)
                                .line(1.5, -0.1, 2.4, -0.1)
                                .line(1.5, 0.1, 2.4, 0.1),
                        1.5));
        add(ELECTRIC_MOTOR, "M", null, s -> s.circle(0, 0, 1.4)
                .text(0, 0, 1, "M")
                .line(1.4, -0.12, 3, -0.12)
                .line(1.4, 0.12, 3, 0.12));
        add(ELECTRIC_MOTOR, "M 3~", null, s -> s.circle(0, 0, 1.4)
                .text(0, -0.4, 0.8, "M")
                .text(0, 0.5, 0.6, "3~")
                .line(1.4, 0, 3, 0));
        add(ELECTRIC_MOTOR, "large M", null, s -> s.circle(0, 0, 1.1)
                .text(0, 0, 1.2, "M")
                .line(1.1, 0, 3, 0));
    }

    private void actuators() {
        add(CYLINDER, "double lines", null, s -> s.box(-3, -0.9, 3, 0.9)
                .line(-1, -0.9, -1, 0.9)
                .line(-0.6, -0.9, -0.6, 0.9)
                .line(-0.6, -0.2, 4.4, -0.2, 4.4, 0.2, -0.6, 0.2)
                .port("A", -2.7, 0.9, 0, 1)
                .port("B", 2.7, 0.9, 0, 1));
        add(CYLINDER, "single lines", null, s -> s.box(-2.5, -0.6, 2.5, 0.6)
                .line(0.4, -0.6, 0.4, 0.6)
                .line(0.4, 0, 4, 0)
                .port("A", -2.2, 0.6, 0, 1)
                .port("B", 2.2, 0.6, 0, 1));
        add(CYLINDER, "single acting, spring", null, s -> s.box(-2.5, -0.7, 2.5, 0.7)
                .line(-0.5, -0.7, -0.5, 0.7)
                .line(-0.5, 0, 4, 0)
                .spring(-0.5, 0.35, 2.5, 0.35, 0.25)
                .port("A", -2.2, 0.7, 0, 1));
        add(CYLINDER, "rod on both sides", null, s -> s.box(-2.5, -0.7, 2.5, 0.7)
                .line(-0.2, -0.7, -0.2, 0.7)
                .line(0.2, -0.7, 0.2, 0.7)
                .line(0.2, -0.15, 4, -0.15)
                .line(0.2, 0.15, 4, 0.15)
                .line(-0.2, -0.15, -4, -0.15)
                .line(-0.2, 0.15, -4, 0.15)
                .port("A", -2.2, 0.7, 0, 1)
                .port("B", 2.2, 0.7, 0, 1));
        add(CYLINDER, "plunger", null, s -> s.box(-1, -2, 1, 3)
                .box(-0.6, -4, 0.6, 2)
                .port("A", 0, 3, 0, 1));
        add(CYLINDER, "plunger in an open barrel", null, s -> s.line(-0.6, -2, -1, -2, -1, 3, 1, 3, 1, -2, 0.6, -2)
                .box(-0.6, -4, 0.6, 2)
                .port("A", 0, 3, 0, 1));
        add(BRAKE, "shoe as a box", null, s -> s.box(-1.5, -0.8, 1.5, 0.8)
                .line(0.2, -0.8, 0.2, 0.8)
                .line(0.5, -0.8, 0.5, 0.8)
                .spring(-1.5, 0, 0.2, 0, 0.5)
                .line(0.5, -0.12, 2.4, -0.12)
                .line(0.5, 0.12, 2.4, 0.12)
                .box(2.4, -0.7, 2.7, 0.7)
                .port("A", 1.1, 0.8, 0, 1));
        add(BRAKE, "shoe as a bar", null, s -> s.box(-1.5, -0.7, 1.5, 0.7)
                .line(0, -0.7, 0, 0.7)
                .spring(0, 0.3, 1.5, 0.3, 0.25)
                .line(0, 0, 2.2, 0)
                .line(2.2, -0.8, 2.2, 0.8)
                .port("A", -1.1, 0.7, 0, 1));
        add(BRAKE, "spring behind the piston", null, s -> s.box(-1.6, -0.7, 1.6, 0.7)
                .line(0.2, -0.7, 0.2, 0.7)
                .line(-0.1, -0.7, -0.1, 0.7)
                .spring(-0.1, 0, -1.6, 0, 0.4)
                .line(0.2, 0, 2.4, 0)
                .line(2.4, -0.7, 2.4, 0.7)
                .port("A", 1.2, 0.7, 0, 1));
    }

    private static SymbolSketch diamond(SymbolSketch s) {
        return inLine(s.closed(0, -1.2, 1.2, 0, 0, 1.2, -1.2, 0), 1.2);
    }

    private void conditioners() {
        add(FILTER, "dashes", null, s -> diamond(s).dash(-1.2, 0, 1.2, 0));
        add(FILTER, "dashes inside", null, s -> diamond(s).dash(-0.9, 0, 0.9, 0));
        add(FILTER, "with a bypass check", null, s -> diamond(s)
                .dash(-1.2, 0, 1.2, 0)
                .chainBox(-1.8, -2.2, 3.2, 2.2)
                .line(0, 1.8, 2.3, 1.8, 2.3, 0.3)
                .line(0, -1.8, 2.3, -1.8, 2.3, -0.34)
                .check(2.3, 0.3, 0, -1, 0.27));
        add(COOLER, "arrows inside", null, s -> diamond(s)
                .arrow(0.2, 0, 0.95, 0)
                .arrow(-0.2, 0, -0.95, 0));
        add(COOLER, "arrows leave", null, s -> diamond(s).arrow(0.4, 0, 1.9, 0).arrow(-0.4, 0, -1.9, 0));
        add(COOLER, "one line through", null, s -> diamond(s)
                .arrow(0, 0, 1.8, 0)
                .arrow(0, 0, -1.8, 0));
        add(HEATER, "arrows inside", null, s -> diamond(s)
                .arrow(0.95, 0, 0.2, 0)
                .arrow(-0.95, 0, -0.2, 0));
        add(HEATER, "arrows enter", null, s -> diamond(s).arrow(1.9, 0, 0.4, 0).arrow(-1.9, 0, -0.4, 0));
        add(HEATER, "arrows meet the corner", null, s -> diamond(s)
                .arrow(2.2, 0, 1.2, 0)
                .arrow(-2.2, 0, -1.2, 0));
        add(ACCUMULATOR, "bar and gas", null, s -> s.capsule(0.8, 1.8)
                .line(-0.8, 0, 0.8, 0)
                .closed(-0.3, -1.1, 0.3, -1.1, 0, -0.6)
                .port("P", 0, 1.8, 0, 1));
        add(ACCUMULATOR, "gas sign alone", null, s -> s.capsule(0.8, 1.6)
                .triangle(-0.3, -0.6, 0.3, -0.6, 0, -0.1)
                .port("P", 0, 1.6, 0, 1));
        add(ACCUMULATOR, "spring", null, s -> s.capsule(0.8, 2)
                .line(-0.8, 0.2, 0.8, 0.2)
                .spring(0, 0.2, 0, -1.9, 0.4)
                .port("P", 0, 2, 0, 1));
        add(
                SHUT_OFF_VALVE,
                "one outline",
                null,
                s -> inLine(s.closed(-0.5, -0.8, 0.5, -0.8, -0.5, 0.8, 0.5, 0.8), 0.8));
        add(
                SHUT_OFF_VALVE,
                "two triangles",
                null,
                s -> inLine(s.closed(-0.5, -0.9, 0.5, -0.9, 0, 0).closed(-0.5, 0.9, 0.5, 0.9, 0, 0), 0.9));
        add(
                SHUT_OFF_VALVE,
                "with a handle",
                null,
                s -> inLine(
                        s.closed(-0.5, -0.8, 0.5, -0.8, -0.5, 0.8, 0.5, 0.8)
                                .line(0, 0, 0.8, 0)
                                .line(0.8, -0.35, 0.8, 0.35),
                        0.8));
    }

    private void checks() {
        add(CHECK_VALVE, "ball", "A>B", s -> inLine(s.check(0, 0.4, 0, -1, 0.28), 0.4)
                .line(0, -0.28, 0, -0.4));
        add(CHECK_VALVE, "ball and spring", "A>B", s -> s.check(0, 0.42, 0, -1, 0.3)
                .spring(0, -0.3, 0, -1.2, 0.2)
                .port("A", 0, 0.42, 0, 1)
                .port("B", 0, -1.2, 0, -1));
        add(CHECK_VALVE, "wide seat", "A>B", s -> s.line(-0.6, -0.2, 0, 0.4, 0.6, -0.2)
                .circle(0, 0.02, 0.25)
                .port("A", 0, 0.4, 0, 1)
                .port("B", 0, -0.23, 0, -1));
        add(CHECK_VALVE, "seat of two strokes", "A>B", s -> s.line(-0.5, -0.05, 0, 0.45)
                .line(0.5, -0.05, 0, 0.45)
                .circle(0, 0, 0.32)
                .port("A", 0, 0.45, 0, 1)
                .port("B", 0, -0.32, 0, -1));
        add(PILOT_CHECK_VALVE, "in a box", "A>B", s -> inLine(
                        s.box(-1, -1, 1, 1)
                                .line(0, 1, 0, 0.4)
                                .line(0, -1, 0, -0.28)
                                .check(0, 0.4, 0, -1, 0.28),
                        1)
                .dash(-1, 0.4, 0, 0.4)
                .pilotPort("X", -1, 0.4, -1, 0));
        add(PILOT_CHECK_VALVE, "in a chain box", "A>B", s -> inLine(
                        s.chainBox(-1, -1, 1, 1)
                                .line(0, 1, 0, 0.42)
                                .line(0, -1, 0, -0.3)
                                .check(0, 0.42, 0, -1, 0.3),
                        1)
                .pilotPort("X", -1, 0, -1, 0)
                .dash(-1, 0, -0.5, 0, -0.5, 0.42, 0, 0.42));
        add(PILOT_CHECK_VALVE, "with a spring", "A>B", s -> inLine(
                        s.box(-1.2, -1.2, 1.2, 1.2)
                                .line(0, 1.2, 0, 0.42)
                                .spring(0, -0.3, 0, -1.2, 0.2)
                                .check(0, 0.42, 0, -1, 0.3),
                        1.2)
                .dash(1.2, 0.42, 0, 0.42)
                .pilotPort("X", 1.2, 0.42, 1, 0));
        add(SHUTTLE_VALVE, "ball at one seat", "A>C B>C", s -> s.box(-1.6, -0.7, 1.6, 0.7)
                .line(-0.9, -0.4, -1.3, 0, -0.9, 0.4)
                .line(0.9, -0.4, 1.3, 0, 0.9, 0.4)
                .circle(-0.92, 0, 0.27)
                .line(-1.3, 0, -1.6, 0)
                .line(1.3, 0, 1.6, 0)
                .port("A", -1.6, 0, -1, 0)
                .port("B", 1.6, 0, 1, 0)
                .port("C", 0, -0.7, 0, -1));
        add(SHUTTLE_VALVE, "ball between", "A>C B>C", s -> s.box(-1.4, -0.7, 1.4, 0.7)
                .line(-0.6, -0.4, -1, 0, -0.6, 0.4)
                .line(0.6, -0.4, 1, 0, 0.6, 0.4)
                .circle(0, 0, 0.3)
                .line(-1, 0, -1.4, 0)
                .line(1, 0, 1.4, 0)
                .port("A", -1.4, 0, -1, 0)
                .port("B", 1.4, 0, 1, 0)
                .port("C", 0, -0.7, 0, -1));
        add(SHUTTLE_VALVE, "pilot outlet", "A>C B>C", s -> s.box(-1.5, -0.6, 1.5, 0.6)
                .line(-0.8, -0.4, -1.2, 0, -0.8, 0.4)
                .line(0.8, -0.4, 1.2, 0, 0.8, 0.4)
                .circle(0.82, 0, 0.26)
                .line(-1.2, 0, -1.5, 0)
                .line(1.2, 0, 1.5, 0)
                .port("A", -1.5, 0, -1, 0)
                .port("B", 1.5, 0, 1, 0)
                .pilotPort("C", 0, -0.6, 0, -1));
    }

    private static SymbolSketch walls(SymbolSketch s, double x) {
        return s.arc(x - 0.75, 0, 0.6, -45, 45).arc(x + 0.75, 0, 0.6, 135, 225);
    }

    private void throttles() {
        add(ORIFICE, "arcs", "A-B~", s -> walls(s, 0)
                .line(0, 0.6, 0, -0.6)
                .port("A", 0, 0.6, 0, 1)
                .port("B", 0, -0.6, 0, -1));
        add(ORIFICE, "flat arcs", "A-B~", s -> s.arc(-1.15, 0, 1, -30, 30)
                .arc(1.15, 0, 1, 150, 210)
                .line(0, 0.6, 0, -0.6)
                .port("A", 0, 0.6, 0, 1)
                .port("B", 0, -0.6, 0, -1));
        add(ORIFICE, "chevrons", "A-B~", s -> s.line(-0.45, -0.4, -0.12, 0, -0.45, 0.4)
                .line(0.45, -0.4, 0.12, 0, 0.45, 0.4)
                .line(0, 0.6, 0, -0.6)
                .port("A", 0, 0.6, 0, 1)
                .port("B", 0, -0.6, 0, -1));
        add(FLOW_CONTROL, "adjustable", "A-B~", s -> walls(s, 0)
                .arrow(-0.8, 0.7, 0.8, -0.7)
                .line(0, 0.6, 0, -0.6)
                .port("A", 0, 0.6, 0, 1)
                .port("B", 0, -0.6, 0, -1));
        add(FLOW_CONTROL, "one way", "A>B A-B~", s -> oneWay(s.box(-1.4, -1.5, 1.4, 1.5)));
        add(FLOW_CONTROL, "one way, chain box", "A>B A-B~", s -> oneWay(s.chainBox(-1.4, -1.5, 1.4, 1.5)));
        add(
                FLOW_CONTROL,
                "one way, fixed",
                "A>B A-B~",
                s -> inLine(
                        walls(s.box(-1.4, -1.5, 1.4, 1.5), -0.6)
                                .line(-0.6, 1.1, -0.6, -1.1)
                                .line(0, 1.5, 0, 1.1)
                                .line(0, -1.5, 0, -1.1)
                                .line(-0.6, 1.1, 0.7, 1.1, 0.7, 0.3)
                                .line(-0.6, -1.1, 0.7, -1.1, 0.7, -0.34)
                                .check(0.7, 0.3, 0, -1, 0.26),
                        1.5));
    }

    private static SymbolSketch oneWay(SymbolSketch s) {
        return inLine(
                walls(s, -0.6)
                        .line(-0.6, 1.1, -0.6, -1.1)
                        .arrow(-1.2, 0.6, 0, -0.6)
                        .line(0, 1.5, 0, 1.1)
                        .line(0, -1.5, 0, -1.1)
                        .line(-0.6, 1.1, 0.7, 1.1, 0.7, 0.3)
                        .line(-0.6, -1.1, 0.7, -1.1, 0.7, -0.34)
                        .check(0.7, 0.3, 0, -1, 0.26),
                1.5);
    }

    private static SymbolSketch square(SymbolSketch s) {
        return s.box(-1, -1, 1, 1).port("P", 0, 1, 0, 1).port("T", 0, -1, 0, -1);
    }

    private void pressure() {
        add(RELIEF_VALVE, "adjustable", "P>T!", s -> square(s)
                .arrow(-0.4, 1, -0.4, -1)
                .spring(1, 0, 2.2, 0, 0.35)
                .arrow(1.1, 0.7, 2.1, -0.7)
                .dash(0, 1.5, -1.6, 1.5, -1.6, 0, -1, 0));
        add(RELIEF_VALVE, "arrow within", "P>T!", s -> square(s)
                .arrow(0.35, 0.7, 0.35, -0.7)
                .spring(1, 0.2, 1.9, 0.2, 0.25)
                .dash(0, 1.4, -1.5, 1.4, -1.5, 0.2, -1, 0.2));
        add(RELIEF_VALVE, "spring beyond the inlet's side", "P>T!", s -> square(s)
                .arrow(-0.3, 1, -0.3, -1)
                .spring(1, -0.3, 2, -0.3, 0.3)
                .dash(0, 1.6, -1.7, 1.6, -1.7, -0.3, -1, -0.3));
        add(REDUCING_VALVE, "drained", "P-T", s -> square(s)
                .arrow(0, 1, 0, -1)
                .spring(1, -0.2, 2.1, -0.2, 0.3)
                .dash(0, -1.5, -1.6, -1.5, -1.6, 0, -1, 0)
                .pilotPort("L", 1, 0.7, 1, 0));
        add(REDUCING_VALVE, "pilot oil drained into a return", "P-T", s -> s.box(-1, -1, 1, 1)
                .port("P", 0, 1, 0, 1)
                .pilotPort("T", 0, -1, 0, -1)
                .arrow(0, 1, 0, -1)
                .spring(1, -0.2, 2.1, -0.2, 0.3)
                .dash(0, -1.5, -1.6, -1.5, -1.6, 0, -1, 0)
                .port("L", 1, 0.7, 1, 0));
        add(REDUCING_VALVE, "not drained", "P-T", s -> square(s)
                .arrow(0, 1, 0, -1)
                .spring(1, 0, 2.1, 0, 0.3)
                .arrow(1.1, 0.6, 2, -0.6)
                .dash(0, -1.5, -1.6, -1.5, -1.6, 0, -1, 0));
        add(REDUCING_VALVE, "arrow within", "P-T", s -> square(s)
                .arrow(0, 0.7, 0, -0.7)
                .spring(1, 0.2, 1.9, 0.2, 0.25)
                .dash(0, -1.4, -1.5, -1.4, -1.5, 0.2, -1, 0.2));
        add(SEQUENCE_VALVE, "drain at the spring", "P>T!", s -> square(s)
                .arrow(-0.4, 1, -0.4, -1)
                .spring(1, -0.2, 2, -0.2, 0.3)
                .dash(0, 1.5, -1.6, 1.5, -1.6, 0, -1, 0)
                .pilotPort("Y", 1, 0.6, 1, 0));
        add(COUNTERBALANCE_VALVE, "thin box", "V>C", s -> counterbalance(s.box(-2.2, -2.2, 2.2, 2.2)));
        add(COUNTERBALANCE_VALVE, "chain box", "V>C", s -> counterbalance(s.chainBox(-2.2, -2.2, 2.2, 2.2)));
        add(COUNTERBALANCE_VALVE, "own pilot alone", "V>C C>V!", s -> spool(s.box(-2.2, -2.2, 2.2, 2.2))
                .dash(-0.6, -1.3, -1.8, -1.3, -1.8, 0, -1.3, 0));
    }

    private static SymbolSketch spool(SymbolSketch s) {
        return s.port("V", 0, 2.2, 0, 1)
                .port("C", 0, -2.2, 0, -1)
                .line(0, 2.2, 0, 1.7)
                .line(0, -2.2, 0, -1.7)
                .line(-0.6, 0.7, -0.6, 1.7, 1.5, 1.7, 1.5, 0.4)
                .line(-0.6, -0.7, -0.6, -1.7, 1.5, -1.7, 1.5, -0.34)
                .check(1.5, 0.4, 0, -1, 0.3)
                .box(-1.3, -0.7, 0.1, 0.7)
                .arrow(-0.9, -0.7, -0.9, 0.65)
                .spring(0.1, 0, 0.8, 0, 0.25);
    }

    private static SymbolSketch counterbalance(SymbolSketch s) {
        return spool(s).dash(-2.2, 0.2, -1.3, 0.2)
                .dash(-0.6, -1.2, -1.8, -1.2, -1.8, 0.2)
                .pilotPort("X", -2.2, 0.2, -1, 0);
    }

    private void measuring() {
        add(GAUGE, "arrow", null, s -> s.circle(0, 0, 1)
                .arrow(-0.45, 0.55, 0.5, -0.6)
                .port("P", 0, 1, 0, 1));
        add(GAUGE, "arrow to the rim", null, s -> s.circle(0, 0, 1)
                .arrow(-0.6, 0.7, 0.62, -0.75)
                .port("P", 0, 1, 0, 1));
        add(GAUGE, "short needle", null, s -> s.circle(0, 0, 1)
                .arrow(0, 0, 0.5, -0.6)
                .port("P", 0, 1, 0, 1));
        add(TEST_POINT, "two bars", null, s -> s.circle(0, -1, 1)
                .arrow(-0.45, -0.45, 0.5, -1.6)
                .line(0, 0, 0, 0.5)
                .line(-0.4, 0.5, 0.4, 0.5)
                .line(-0.4, 0.8, 0.4, 0.8)
                .port("P", 0, 0.8, 0, 1));
        add(TEST_POINT, "ball and bar", null, s -> s.circle(0, -1, 1)
                .arrow(-0.45, -0.45, 0.5, -1.6)
                .line(0, 0, 0, 0.4)
                .circle(0, 0.6, 0.2)
                .line(-0.3, 0.8, 0.3, 0.8)
                .port("P", 0, 0.8, 0, 1));
        add(TEST_POINT, "seat and cap", null, s -> s.line(-0.6, -0.1, 0, 0.5, 0.6, -0.1)
                .circle(0, 0, 0.35)
                .line(-0.6, -0.3, -0.6, -0.6, 0.6, -0.6, 0.6, -0.3)
                .port("P", 0, 0.5, 0, 1));
        add(TEST_POINT, "circle and cap", null, s -> s.circle(0, 0, 0.7)
                .line(0, -0.7, 0, -1.1)
                .line(-0.7, -1.1, 0.7, -1.1)
                .port("P", 0, 0.7, 0, 1));
        add(TEST_POINT, "circle under an arch", null, s -> s.circle(0, 0, 0.5)
                .arc(0, 0, 0.9, 170, 370)
                .port("P", 0, 0.5, 0, 1));
        add(TEST_POINT, "chevrons", null, s -> s.circle(0, -1, 1)
                .arrow(-0.45, -0.45, 0.5, -1.6)
                .line(0, 0, 0, 0.8)
                .line(-0.4, 0.3, 0, 0.65, 0.4, 0.3)
                .line(-0.4, 0.55, 0, 0.9, 0.4, 0.55)
                .port("P", 0, 0.9, 0, 1));
        add(SWITCH, "contact", null, s -> s.box(-0.8, -0.8, 0.8, 0.8)
                .line(-0.8, -0.3, -0.3, -0.3)
                .line(0.8, -0.3, 0.3, -0.3)
                .line(0.3, -0.3, -0.25, 0.05)
                .port("P", 0, 0.8, 0, 1));
        add(SWITCH, "contact and spring", null, s -> s.box(-0.8, -0.8, 0.8, 0.8)
                .line(-0.8, 0, -0.4, 0)
                .line(-0.4, 0, 0.35, -0.4)
                .line(0.4, 0, 0.8, 0)
                .spring(0.8, 0.3, 1.6, 0.3, 0.2)
                .port("P", 0, 0.8, 0, 1));
        add(SWITCH, "arrow across the spring down to the wall", null, s -> s.box(-1, -1, 1, 1)
                .line(-1, 0, -0.4, 0, 0.4, -0.5)
                .line(0.4, 0, 1, 0)
                .spring(0, -1, 0, -2, 0.35)
                .arrow(-0.7, -2.1, 0.7, -0.95)
                .port("P", 0, 1, 0, 1));
        add(SWITCH, "pressure comes in at an arrow", null, s -> s.box(-1, -1, 1, 1)
                .line(-0.8, 0.3, -0.3, 0.3, 0.4, -0.4)
                .line(0.4, 0.3, 0.8, 0.3)
                .triangle(-0.2, 1, 0.2, 1, 0, 0.7)
                .port("P", 0, 1, 0, 1));
        add(SWITCH, "letters", null, s -> s.circle(0, 0, 1)
                .text(0, 0, 0.8, "PS")
                .port("P", 0, 1, 0, 1));
    }
}
