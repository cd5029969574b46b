package linewalk.renderer.iso;

import java.util.ArrayList;
import java.util.List;

/** Ports in a row along a side, far enough apart for their letters. */
final class Shelf {

    /** Between two ports. */
    static final double LEAST_PITCH = 1.5;

    private static final double ABOUT_LETTER = 0.75;

    private Shelf() {}

    /** Between neighbours of a side above or below, so that every letter fits beside its line. */
    static double pitch(List<PortUse> ports, double least) {
        double widest = ports.stream().mapToDouble(Dock::letterWidth).max().orElse(0);
        return Math.max(least, widest == 0 ? 0 : Math.ceil((widest + ABOUT_LETTER) * 2) / 2);
    }

    /** What the row takes up, with a margin of one module at either end. */
    static double extent(List<PortUse> ports, double leastPitch) {
        return ports.isEmpty() ? 0 : 2 + (ports.size() - 1) * pitch(ports, leastPitch);
    }

    /** Centred in a width. */
    static List<Dock> row(List<PortUse> ports, Side side, double width, double leastPitch) {
        double pitch = pitch(ports, leastPitch);
        double start = (width - pitch * (ports.size() - 1)) / 2;
        List<Dock> docks = new ArrayList<>();
        for (PortUse u : ports) {
            docks.add(new Dock(u, side, start + pitch * docks.size()));
        }
        return docks;
    }
}
