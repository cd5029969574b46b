package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Rectangles that other lines cut through, such as the thin line around a valve of several elements: no closed field of
 * their own, but four sides that meet at four corners and are of one pen, whatever the pen seems to be on each.
 */
final class Envelopes {

    /** By how much the sides may seem to differ. */
    private static final double PENS = 2.2;

    /** Less is seen as one pen anyway. */
    private static final double ONE_PEN = 1.05;

    private static final double CORNER_PX = 2;

    /** A bit at a corner that thinning left, in widths. */
    private static final double STUB = 1.5;

    private final List<Stretch> drawn;

    private final double largestPx;
    private final List<double[]> corners = new ArrayList<>();

    private Envelopes(List<Stretch> drawn, double largestPx) {
        this.drawn = new ArrayList<>(drawn);
        this.largestPx = largestPx;
    }

    /**
     * The stretches with the sides of each rectangle leading to its corners, in one width.
     *
     * @param largestPx larger ones are made by lines that meet again
     */
    static List<Stretch> whole(List<Stretch> drawn, double largestPx) {
        Envelopes all = new Envelopes(drawn, largestPx);
        for (int i = 0; i < all.drawn.size(); i++) {
            if (level(all.drawn.get(i)) && all.drawn.get(i).length() < largestPx) {
                all.from(i);
            }
        }
        all.drawn.removeIf(all::isStub);
        return all.drawn;
    }

    private static boolean level(Stretch s) {
        return Math.abs(s.y1() - s.y0()) < 0.03 * Math.abs(s.x1() - s.x0());
    }

    private static boolean upright(Stretch s) {
        return Math.abs(s.x1() - s.x0()) < 0.03 * Math.abs(s.y1() - s.y0());
    }

    /** Nothing but a corner's own ink. */
    private boolean isStub(Stretch s) {
        double near = near(s.widthPx());
        return s.length() < STUB * s.widthPx()
                && corners.stream()
                        .anyMatch(c -> Math.hypot(s.x0() - c[0], s.y0() - c[1]) < near
                                && Math.hypot(s.x1() - c[0], s.y1() - c[1]) < near);
    }

    /** A rectangle with this stretch as its upper side. */
    private void from(int top) {
        Stretch s = drawn.get(top);
        double x0 = Math.min(s.x0(), s.x1());
        double x1 = Math.max(s.x0(), s.x1());
        double y = (s.y0() + s.y1()) / 2;
        Optional<Integer> left = down(x0, y, s.widthPx());
        Optional<Integer> right = down(x1, y, s.widthPx());
        if (left.isEmpty() || right.isEmpty()) {
            return;
        }
        double lx = (drawn.get(left.get()).x0() + drawn.get(left.get()).x1()) / 2;
        double rx = (drawn.get(right.get()).x0() + drawn.get(right.get()).x1()) / 2;
        double low = lower(drawn.get(left.get()));
        boolean even = Math.abs(low - lower(drawn.get(right.get()))) < 2 * near(s.widthPx());
        for (int i = 0; even && i < drawn.size(); i++) {
            Stretch b = drawn.get(i);
            double near = near(Math.max(b.widthPx(), s.widthPx()));
            boolean bottom = i != top
                    && level(b)
                    && Math.abs((b.y0() + b.y1()) / 2 - low) < near
                    && Math.abs(Math.min(b.x0(), b.x1()) - lx) < near
                    && Math.abs(Math.max(b.x0(), b.x1()) - rx) < near;
            if (bottom) {
                even(List.of(top, right.get(), i, left.get()), lx, y, rx, (b.y0() + b.y1()) / 2);
                return;
            }
        }
    }

    /** An upright stretch that begins at a corner and leads down. */
    private Optional<Integer> down(double x, double y, double width) {
        for (int i = 0; i < drawn.size(); i++) {
            Stretch s = drawn.get(i);
            double near = near(Math.max(width, s.widthPx()));
            boolean starts = upright(s)
                    && Math.abs((s.x0() + s.x1()) / 2 - x) < near
                    && Math.abs(Math.min(s.y0(), s.y1()) - y) < near;
            if (starts) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    private static double lower(Stretch s) {
        return Math.max(s.y0(), s.y1());
    }

    private static double near(double width) {
        return width + CORNER_PX;
    }

    private void even(List<Integer> sides, double x0, double y0, double x1, double y1) {
        double least =
                sides.stream().mapToDouble(i -> drawn.get(i).widthPx()).min().orElseThrow();
        double most =
                sides.stream().mapToDouble(i -> drawn.get(i).widthPx()).max().orElseThrow();
        boolean onePen = most < ONE_PEN * least;
        if (onePen || most > PENS * least || Math.max(x1 - x0, y1 - y0) > largestPx) {
            return;
        }
        double length = sides.stream().mapToDouble(i -> drawn.get(i).length()).sum();
        double width = sides.stream()
                        .mapToDouble(i -> drawn.get(i).widthPx() * drawn.get(i).length())
                        .sum()
                / length;
        corners.addAll(
                List.of(new double[] {x0, y0}, new double[] {x1, y0}, new double[] {x1, y1}, new double[] {x0, y1}));
        drawn.set(sides.get(0), new Stretch(x0, y0, x1, y0, width));
        drawn.set(sides.get(1), new Stretch(x1, y0, x1, y1, width));
        drawn.set(sides.get(2), new Stretch(x1, y1, x0, y1, width));
        drawn.set(sides.get(3), new Stretch(x0, y1, x0, y0, width));
    }
}
