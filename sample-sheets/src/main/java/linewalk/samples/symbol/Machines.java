package linewalk.samples.symbol;

import java.util.Map;

/** Pumps, motors and what drives them: circles. */
public final class Machines {
    private Machines() {}

    public static Symbol pump(boolean variable) {
        return new Round("pump", Map.of("P", new Spot(0, -1), "S", new Spot(0, 1), "L", new Spot(1, 0)), ink -> {
            ink.fill(-0.3, -0.46, 0.3, -0.46, 0, -0.98);
            if (variable) {
                ink.arrow(Pen.THIN, -1.05, 1.05, 1.1, -1.1);
            }
        });
    }

    /** Both ways round, with a case drain. */
    public static Symbol motor() {
        return new Round("motor", Map.of("A", new Spot(0, -1), "B", new Spot(0, 1), "L", new Spot(1, 0)), ink -> {
            ink.fill(-0.3, -0.95, 0.3, -0.95, 0, -0.45);
            ink.fill(-0.3, 0.95, 0.3, 0.95, 0, 0.45);
            ink.line(Pen.OUTLINE, -1, -0.12, -2.4, -0.12);
            ink.line(Pen.OUTLINE, -1, 0.12, -2.4, 0.12);
        });
    }

    /** Its shaft runs to the right, to a pump 4 units away. */
    public static Symbol electricMotor() {
        return new Round("electric-motor", Map.of(), ink -> {
            ink.text(Lettering.centred(0.5), 0, -0.28, "M");
            ink.text(Lettering.centred(0.34), 0, 0.34, "3~");
            ink.line(Pen.OUTLINE, 1, -0.12, 3, -0.12);
            ink.line(Pen.OUTLINE, 1, 0.12, 3, 0.12);
        });
    }

    private interface Inside {
        void draw(Ink ink);
    }

    private record Round(String kind, Map<String, Spot> ports, Inside inside) implements Symbol {
        @Override
        public void draw(Ink ink) {
            ink.circle(Pen.OUTLINE, 0, 0, 1);
            inside.draw(ink);
        }

        @Override
        public Spot half() {
            return new Spot(1, 1);
        }

        @Override
        public Map<String, Spot> letters() {
            return ports.containsKey("L") ? Map.of("L", new Spot(1.22, -0.28)) : Map.of();
        }
    }
}
