package linewalk.importer.scan;

import java.util.Collection;
import java.util.List;

/**
 * Scanners blur along and across the paper's way unequally, so that one pen leaves level and standing lines of different
 * widths. The shift that lays the widths of both over each other best is taken out.
 */
final class Directions {

    private static final double MOST_PX = 0.8;
    private static final double STEP_PX = 0.1;

    /** Lines at least this many times longer than wide tell. */
    private static final double LONG = 12;

    private Directions() {}

    /** Changes the widths of lines so that one pen has one width whichever way it went. */
    static void even(Collection<Line> lines) {
        List<Line> level = known(lines, true);
        List<Line> standing = known(lines, false);
        double best = 0;
        double most = agreement(level, standing, 0) * 1.02;
        for (double shift = -MOST_PX; shift <= MOST_PX; shift += STEP_PX) {
            double agree = agreement(level, standing, shift);
            if (agree > most) {
                most = agree;
                best = shift;
            }
        }
        for (Line l : lines) {
            double share = Math.abs(l.straight.dx()) - Math.abs(l.straight.dy());
            l.width = Math.max(1, l.width - 0.5 * best * share);
        }
    }

    private static List<Line> known(Collection<Line> lines, boolean level) {
        return lines.stream()
                .filter(l -> l.span() > LONG * l.width)
                .filter(l -> Math.abs(level ? l.straight.dx() : l.straight.dy()) > 0.99)
                .sorted((a, b) -> Double.compare(b.span(), a.span()))
                .limit(300)
                .toList();
    }

    /** Lengths drawn in like widths, level ones thinner by the shift. */
    private static double agreement(List<Line> level, List<Line> standing, double shift) {
        double sum = 0;
        for (Line a : level) {
            for (Line b : standing) {
                double off = a.width - shift - b.width;
                sum += Math.sqrt(a.span() * b.span()) * Math.exp(-off * off / 0.18);
            }
        }
        return sum;
    }
}
