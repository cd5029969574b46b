package linewalk.samples.symbol;

import java.util.Map;
import java.util.function.Consumer;

/** Parts with two like ports in one line: A below, B above. */
public final class InLine {
    private InLine() {}

    /** Free from A to B. */
    public static Symbol check() {
        return new TwoPort("check-valve", 0.3, -0.2, new Spot(0.4, 0.35), ink -> Motif.check(ink, 0, 0, 1));
    }

    public static Symbol shutOff() {
        return new TwoPort("shut-off-valve", 0.5, -0.5, new Spot(0.55, 0.5), ink -> {
            ink.closed(Pen.OUTLINE, -0.35, -0.5, 0.35, 0.5, -0.35, 0.5, 0.35, -0.5);
            ink.line(Pen.OUTLINE, 0, 0, 0.55, 0);
            ink.line(Pen.OUTLINE, 0.55, -0.2, 0.55, 0.2);
        });
    }

    public static Symbol filter() {
        return new TwoPort("filter", 0.8, -0.8, new Spot(0.8, 0.8), ink -> {
            Motif.diamond(ink, 0.8);
            ink.line(Pen.DRAIN, -0.8, 0, 0.8, 0);
        });
    }

    public static Symbol cooler() {
        return new TwoPort("cooler", 0.8, -0.8, new Spot(1.0, 0.8), ink -> {
            Motif.diamond(ink, 0.8);
            ink.arrow(Pen.THIN, 0.35, 0, 0.75, 0);
            ink.arrow(Pen.THIN, -0.35, 0, -0.75, 0);
        });
    }

    /** One-way flow control: free from A to B, throttled from B to A. */
    public static Symbol flowControl() {
        return new TwoPort("flow-control", 0.9, -0.9, new Spot(0.95, 0.9), InLine::drawFlowControl);
    }

    private static void drawFlowControl(Ink ink) {
        Motif.box(ink, Pen.THIN, 0, 0, 0.95, 0.9);
        for (int side = -1; side <= 1; side += 2) {
            ink.line(Pen.OUTLINE, 0, 0.9 * side, 0, 0.6 * side);
            ink.line(Pen.OUTLINE, -0.4, 0.6 * side, 0.45, 0.6 * side);
        }
        ink.line(Pen.OUTLINE, -0.4, 0.6, -0.4, -0.6);
        Motif.bow(ink, -0.64, 0, 0.3, 0.15);
        Motif.bow(ink, -0.16, 0, 0.3, -0.15);
        ink.arrow(Pen.THIN, -0.8, 0.45, 0, -0.45);
        ink.line(Pen.OUTLINE, 0.45, 0.6, 0.45, 0.24);
        ink.line(Pen.OUTLINE, 0.45, -0.6, 0.45, -0.16);
        Motif.check(ink, 0.45, 0, 0.8);
    }

    private record TwoPort(String kind, double belowY, double aboveY, Spot half, Consumer<Ink> shape)
            implements Symbol {
        @Override
        public Map<String, Spot> ports() {
            return Map.of("A", new Spot(0, belowY), "B", new Spot(0, aboveY));
        }

        @Override
        public void draw(Ink ink) {
            shape.accept(ink);
        }
    }
}
