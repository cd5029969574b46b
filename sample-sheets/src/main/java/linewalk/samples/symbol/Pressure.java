package linewalk.samples.symbol;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** Valves that pressure or a pilot opens: squares with a spring, checks with a pilot. */
public final class Pressure {
    private Pressure() {}

    public static Symbol relief() {
        return new Shape(
                "relief-valve",
                new Spot(1.1, 0.5),
                Map.of("P", new Spot(0, 0.5), "T", new Spot(0, -0.5)),
                Map.of(),
                List.of(),
                Pressure::drawRelief);
    }

    private static void drawRelief(Ink ink) {
        Motif.box(ink, Pen.OUTLINE, 0, 0, 0.5, 0.5);
        ink.arrow(Pen.OUTLINE, -0.2, 0.5, -0.2, -0.48);
        Motif.spring(ink, 0.5, 1.1, 0, 0.16);
        ink.arrow(Pen.THIN, 0.55, 0.32, 1.05, -0.34);
        ink.line(Pen.INNER_PILOT, 0, 0.72, -0.72, 0.72, -0.72, 0, -0.5, 0);
    }

    /** Three-port reducing valve with its drain at the spring. */
    public static Symbol reducing() {
        return new Shape(
                "reducing-valve",
                new Spot(1.1, 0.5),
                Map.of("P", new Spot(0, 0.5), "A", new Spot(0, -0.5), "L", new Spot(0.5, 0.34)),
                Map.of("P", new Spot(0.2, 0.74), "A", new Spot(0.22, -0.74), "L", new Spot(0.7, 0.58)),
                List.of(new SpoolPosition("rest", "spring", "P-A")),
                Pressure::drawReducing);
    }

    private static void drawReducing(Ink ink) {
        Motif.box(ink, Pen.OUTLINE, 0, 0, 0.5, 0.5);
        ink.arrow(Pen.OUTLINE, 0, 0.5, 0, -0.48);
        Motif.spring(ink, 0.5, 1.1, -0.1, 0.14);
        ink.line(Pen.INNER_PILOT, 0, -0.72, -0.72, -0.72, -0.72, 0, -0.5, 0);
    }

    /** Free from A to B; a pilot at X opens it the other way. */
    public static Symbol pilotCheck() {
        return new Shape(
                "pilot-check-valve",
                new Spot(0.8, 0.8),
                Map.of("A", new Spot(0, 0.8), "B", new Spot(0, -0.8), "X", new Spot(-0.8, 0)),
                Map.of("A", new Spot(0.22, 1.02), "B", new Spot(0.22, -1.02), "X", new Spot(-1.02, -0.24)),
                List.of(new SpoolPosition("rest", "spring", "A>B"), new SpoolPosition("pilot", "pilot", "A-B")),
                Pressure::drawPilotCheck);
    }

    private static void drawPilotCheck(Ink ink) {
        Motif.box(ink, Pen.THIN, 0, 0, 0.8, 0.8);
        ink.line(Pen.OUTLINE, 0, 0.8, 0, 0.3);
        ink.line(Pen.OUTLINE, 0, -0.8, 0, -0.2);
        Motif.check(ink, 0, 0, 1);
        ink.line(Pen.INNER_PILOT, -0.8, 0, -0.5, 0, -0.5, 0.3, 0, 0.3);
    }

    /** V to the directional valve, C to the cylinder: free from V to C, back under a pilot at X. */
    public static Symbol counterbalance() {
        return new Shape(
                "counterbalance-valve",
                new Spot(1.2, 1.1),
                Map.of("V", new Spot(0, 1.1), "C", new Spot(0, -1.1), "X", new Spot(-1.2, 0)),
                Map.of("V", new Spot(0.22, 1.34), "C", new Spot(0.22, -1.34), "X", new Spot(-1.44, -0.24)),
                List.of(new SpoolPosition("rest", "spring", "V>C"), new SpoolPosition("pilot", "pilot", "V-C")),
                Pressure::drawCounterbalance);
    }

    private static void drawCounterbalance(Ink ink) {
        Motif.box(ink, Pen.THIN, 0, 0, 1.2, 1.1);
        for (int side = -1; side <= 1; side += 2) {
            ink.line(Pen.OUTLINE, 0, 1.1 * side, 0, 0.8 * side);
            ink.line(Pen.OUTLINE, -0.45, 0.36 * side, -0.45, 0.8 * side, 0.7, 0.8 * side);
        }
        Motif.box(ink, Pen.OUTLINE, -0.45, 0, 0.36, 0.36);
        ink.arrow(Pen.OUTLINE, -0.58, -0.36, -0.58, 0.35);
        Motif.spring(ink, -0.09, 0.28, 0, 0.13);
        ink.line(Pen.INNER_PILOT, -1.2, 0, -0.81, 0);
        ink.line(Pen.INNER_PILOT, -0.45, -0.58, -0.95, -0.58, -0.95, 0);
        ink.line(Pen.OUTLINE, 0.7, 0.8, 0.7, 0.27);
        ink.line(Pen.OUTLINE, 0.7, -0.8, 0.7, -0.18);
        Motif.check(ink, 0.7, 0, 0.9);
    }

    private record Shape(
            String kind,
            Spot half,
            Map<String, Spot> ports,
            Map<String, Spot> letters,
            List<SpoolPosition> positions,
            Consumer<Ink> shape)
            implements Symbol {
        @Override
        public void draw(Ink ink) {
            shape.accept(ink);
        }
    }
}
