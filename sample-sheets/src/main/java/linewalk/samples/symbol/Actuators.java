package linewalk.samples.symbol;

import java.util.Map;

/** Cylinders and the spring-applied brake. */
public final class Actuators {
    private Actuators() {}

    /** Double acting, rod to the right: A at the cap, B at the rod. */
    public record Cylinder() implements Symbol {
        @Override
        public String kind() {
            return "cylinder";
        }

        @Override
        public Map<String, Spot> ports() {
            return Map.of("A", new Spot(-2.5, 0.7), "B", new Spot(2.5, 0.7));
        }

        @Override
        public Map<String, Spot> letters() {
            return Map.of("A", new Spot(-2.75, 0.94), "B", new Spot(2.75, 0.94));
        }

        @Override
        public Spot half() {
            return new Spot(3, 0.7);
        }

        @Override
        public void draw(Ink ink) {
            Motif.box(ink, Pen.OUTLINE, 0, 0, 3, 0.7);
            ink.line(Pen.OUTLINE, -0.8, -0.7, -0.8, 0.7);
            ink.line(Pen.OUTLINE, -0.5, -0.7, -0.5, 0.7);
            ink.line(Pen.OUTLINE, -0.5, -0.15, 4.4, -0.15, 4.4, 0.15, -0.5, 0.15);
            ink.circle(Pen.OUTLINE, 4.65, 0, 0.25);
        }
    }

    /** Pressure at A releases it. */
    public record Brake() implements Symbol {
        @Override
        public String kind() {
            return "brake";
        }

        @Override
        public Map<String, Spot> ports() {
            return Map.of("A", new Spot(0.7, 0.6));
        }

        @Override
        public Spot half() {
            return new Spot(1.1, 0.6);
        }

        @Override
        public void draw(Ink ink) {
            Motif.box(ink, Pen.OUTLINE, 0, 0, 1.1, 0.6);
            ink.line(Pen.OUTLINE, 0.2, -0.6, 0.2, 0.6);
            ink.line(Pen.OUTLINE, 0.4, -0.6, 0.4, 0.6);
            Motif.spring(ink, -1.1, 0.2, 0, 0.35);
            ink.line(Pen.OUTLINE, 0.4, -0.1, 1.8, -0.1);
            ink.line(Pen.OUTLINE, 0.4, 0.1, 1.8, 0.1);
            ink.closed(Pen.OUTLINE, 1.8, -0.5, 2.0, -0.5, 2.0, 0.5, 1.8, 0.5);
        }
    }
}
