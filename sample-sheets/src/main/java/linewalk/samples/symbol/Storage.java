package linewalk.samples.symbol;

import java.util.LinkedHashMap;
import java.util.Map;

/** What holds oil or shows its pressure: reservoir, accumulator, test point with gauge. */
public final class Storage {
    private Storage() {}

    /** Open-topped; ports are the ends of the pipes that dip into it. */
    public record Tank(double halfWidth, double halfHeight, Map<String, Double> pipeX) implements Symbol {
        @Override
        public String kind() {
            return "tank";
        }

        @Override
        public Map<String, Spot> ports() {
            Map<String, Spot> out = new LinkedHashMap<>();
            pipeX.forEach((name, x) -> out.put(name, new Spot(x, halfHeight * 0.2)));
            return out;
        }

        @Override
        public Spot half() {
            return new Spot(halfWidth, halfHeight);
        }

        @Override
        public void draw(Ink ink) {
            ink.line(
                    Pen.OUTLINE,
                    -halfWidth,
                    -halfHeight,
                    -halfWidth,
                    halfHeight,
                    halfWidth,
                    halfHeight,
                    halfWidth,
                    -halfHeight);
            double level = -halfHeight * 0.5;
            ink.line(Pen.THIN, -halfWidth + 0.4, level, -halfWidth + 3.4, level);
            ink.closed(Pen.THIN, -halfWidth + 1.6, level - 0.4, -halfWidth + 2.2, level - 0.4, -halfWidth + 1.9, level);
        }
    }

    public record Accumulator() implements Symbol {
        @Override
        public String kind() {
            return "accumulator";
        }

        @Override
        public Map<String, Spot> ports() {
            return Map.of("P", new Spot(0, 1.3));
        }

        @Override
        public Spot half() {
            return new Spot(0.6, 1.3);
        }

        @Override
        public void draw(Ink ink) {
            int steps = 12;
            double[] xy = new double[4 * (steps + 1)];
            for (int i = 0; i <= 2 * steps + 1; i++) {
                boolean top = i <= steps;
                double angle = Math.PI * (top ? i : i - 1) / steps;
                xy[2 * i] = -0.6 * Math.cos(angle);
                xy[2 * i + 1] = (top ? -0.7 : 0.7) - 0.6 * Math.sin(angle);
            }
            ink.closed(Pen.OUTLINE, xy);
            ink.line(Pen.OUTLINE, -0.6, 0, 0.6, 0);
            ink.closed(Pen.THIN, -0.22, -0.85, 0.22, -0.85, 0, -0.45);
        }
    }

    /** Gauge on a quick coupling. */
    public record TestPoint() implements Symbol {
        @Override
        public String kind() {
            return "test-point";
        }

        @Override
        public Map<String, Spot> ports() {
            return Map.of("P", new Spot(0, 0.55));
        }

        @Override
        public Spot half() {
            return new Spot(0.5, 0.9);
        }

        @Override
        public void draw(Ink ink) {
            ink.circle(Pen.OUTLINE, 0, -0.4, 0.5);
            ink.arrow(Pen.THIN, -0.22, -0.1, 0.24, -0.74);
            ink.line(Pen.OUTLINE, 0, 0.1, 0, 0.35);
            ink.line(Pen.OUTLINE, -0.22, 0.35, 0.22, 0.35);
            ink.line(Pen.OUTLINE, -0.22, 0.55, 0.22, 0.55);
        }
    }
}
