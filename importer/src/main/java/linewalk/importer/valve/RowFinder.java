package linewalk.importer.valve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linewalk.drawing.Box;
import linewalk.drawing.Point;

/**
 * The longest row of equal rectangles: two long sides and equally spaced rules between them, whether the squares are
 * drawn one by one, as one rectangle with dividers, or in single pieces. A passage that runs straight through a square
 * looks like a divider, but not at equal spaces.
 */
final class RowFinder {

    /** More squares than a valve has: a solenoid as high and wide as a square continues the row. */
    private static final int MOST = 6;

    /** Width of a square in heights. */
    private static final double NARROWEST = 0.45;

    private static final double WIDEST = 2.2;

    /** How far from a divider a line meets a square at the least, in widths of a square. */
    private static final double PORT_OFF = 0.1;

    private final List<Ruling> level;
    private final List<Ruling> upright;
    private final List<Point> ports;
    private final Box within;
    private final double tolPt;

    /** @param ports where lines meet the figure: never between two squares */
    RowFinder(List<Ink> ink, List<Point> ports, Box within, double tolPt) {
        this.ports = ports;
        this.tolPt = tolPt;
        this.within = within.grow(2 * tolPt);
        this.level = Ruling.level(ink, tolPt);
        this.upright = Ruling.upright(ink, tolPt);
    }

    Optional<Row> find() {
        Row best = null;
        for (Ruling a : level) {
            for (Ruling b : level) {
                if (b.atPt() - a.atPt() > 5 * tolPt) {
                    Row r = between(a, b);
                    best = better(best, r);
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private Row between(Ruling a, Ruling b) {
        double from = Math.max(a.fromPt(), b.fromPt());
        double to = Math.min(a.toPt(), b.toPt());
        double height = b.atPt() - a.atPt();
        List<Double> xs = new ArrayList<>();
        for (Ruling u : upright) {
            if (u.spans(a.atPt(), b.atPt(), tolPt) && u.atPt() >= from - tolPt && u.atPt() <= to + tolPt) {
                xs.add(u.atPt());
            }
        }
        Row best = null;
        for (double x0 : xs) {
            for (double x1 : xs) {
                for (int n = 2; n <= MOST && x1 > x0; n++) {
                    double pitch = (x1 - x0) / n;
                    if (pitch > NARROWEST * height && pitch < WIDEST * height && divided(xs, x0, pitch, n)) {
                        best = better(best, new Row(x0, pitch, n, a.atPt(), b.atPt()));
                    }
                }
            }
        }
        return best;
    }

    private boolean divided(List<Double> xs, double x0, double pitch, int n) {
        for (int i = 1; i < n; i++) {
            double at = x0 + i * pitch;
            if (xs.stream().noneMatch(x -> Math.abs(x - at) <= Math.max(tolPt / 2, 0.03 * pitch))
                    || ports.stream().anyMatch(p -> Math.abs(p.xPt() - at) < PORT_OFF * pitch)) {
                return false;
            }
        }
        return true;
    }

    /** The longer one; of two equally long ones that with the squarer squares. */
    private Row better(Row a, Row b) {
        if (b == null || !within.contains(b.box())) {
            return a;
        }
        if (a == null) {
            return b;
        }
        double longer = b.pitchPt() * b.squares() - a.pitchPt() * a.squares();
        if (Math.abs(longer) > 2 * tolPt) {
            return longer > 0 ? b : a;
        }
        return unsquare(b) < unsquare(a) ? b : a;
    }

    private static double unsquare(Row r) {
        return Math.abs(Math.log(r.pitchPt() / r.heightPt()));
    }
}
