package linewalk.importer.scan;

import java.util.List;
import java.util.Optional;

/**
 * Short, thick stretches that thinning leaves along the middle of an arrowhead, apart from the line that ends in it: the
 * line goes on to the tip instead.
 */
final class InHeads {

    /** A stretch in a head is at most so much longer than the head. */
    private static final double LONGEST = 1.2;

    /** Short stretches are askew by some degrees. */
    private static final double SAME_WAY = Math.cos(Math.toRadians(15));

    private InHeads() {}

    /** @param straight is changed */
    static void join(List<Stretch> straight, List<Solid> heads, List<Rounds.Curve> curves) {
        for (Solid head : heads) {
            List<Stretch> inside = head.outline().size() == 3
                    ? straight.stream().filter(t -> within(t, head)).toList()
                    : List.of();
            for (Stretch t : inside) {
                led(straight, t).filter(l -> !atCircle(l, t, curves)).ifPresent(line -> join(straight, t, line));
            }
        }
    }

    /** What thinning left of the head, or of the line in it. */
    static boolean inside(Stretch t, Solid head) {
        return t.length() < LONGEST * head.span() && head.covers((t.x0() + t.x1()) / 2, (t.y0() + t.y1()) / 2);
    }

    private static boolean within(Stretch t, Solid head) {
        return inside(t, head) && (head.covers(t.x0(), t.y0()) || head.covers(t.x1(), t.y1()));
    }

    /** The line that ends where the stretch starts, which is turned to start there. */
    private static Optional<Stretch> led(List<Stretch> straight, Stretch t) {
        return straight.stream()
                .filter(l -> l != t && l.length() > t.length())
                .flatMap(l -> List.of(l, l.turned()).stream())
                .filter(l -> leads(l, t) || leads(l, t.turned()))
                .findFirst();
    }

    /** The line ends at a circle, in which a triangle stands at its end: a pump, whose flow the triangle tells. */
    private static boolean atCircle(Stretch l, Stretch inHead, List<Rounds.Curve> curves) {
        return curves.stream()
                .filter(Rounds.Curve::closed)
                .map(Rounds.Curve::round)
                .anyMatch(r -> r.off(l.x1(), l.y1()) < l.widthPx()
                        && Math.hypot(l.x0() - r.x(), l.y0() - r.y()) > r.r()
                        && Math.hypot((inHead.x0() + inHead.x1()) / 2 - r.x(), (inHead.y0() + inHead.y1()) / 2 - r.y())
                                < r.r());
    }

    private static boolean leads(Stretch l, Stretch t) {
        double along = ((l.x1() - l.x0()) * (t.x1() - t.x0()) + (l.y1() - l.y0()) * (t.y1() - t.y0()))
                / (l.length() * t.length());
        return along > SAME_WAY && Math.hypot(l.x1() - t.x0(), l.y1() - t.y0()) < t.widthPx() + 1;
    }

    private static void join(List<Stretch> straight, Stretch t, Stretch line) {
        double[] far = line.at(Math.max(line.along(t.x0(), t.y0()), line.along(t.x1(), t.y1())), 0);
        straight.removeIf(s -> s.equals(t) || s.equals(line) || s.equals(line.turned()));
        straight.add(new Stretch(line.x0(), line.y0(), far[0], far[1], line.widthPx()));
    }
}
