package linewalk.importer.page;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import linewalk.drawing.Box;
import linewalk.drawing.Point;

/** Areas that a CAD program paints stroke beside stroke, each touching the last: to the eye they are filled. */
final class Hatching {

    private static final int LEAST = 3;

    /** From stroke to stroke, in widths of the pen: farther apart there is paper between. */
    private static final double APART = 1.3;

    /** Nearer ones are one stroke drawn twice. */
    private static final double TWICE = 0.05;

    private static final double ALONG = 0.995;

    /** The longest of an area at least, in widths of the pen: shorter ones are pieces of a small circle. */
    private static final double LONG = 2;

    /** How far the share of its box that a disc covers may be off. */
    private static final double ROUND = 0.1;

    private static final double EVEN = 0.2;

    /** How far a point of a straight edge is off, in widths of the pen. */
    private static final double STRAIGHT = 0.9;

    private final List<Stroke> strokes = new ArrayList<>();
    private final List<Fill> fills;
    private final List<Stroke> row = new ArrayList<>();

    private Hatching(List<Fill> fills) {
        this.fills = new ArrayList<>(fills);
    }

    /** Strokes of one area follow one another in the file. */
    static Marks filled(Marks marks) {
        Hatching h = new Hatching(marks.fills());
        for (Stroke s : marks.strokes()) {
            if (!h.goesOn(s)) {
                h.end();
            }
            h.row.add(s);
        }
        h.end();
        return new Marks(marks.widthPt(), marks.heightPt(), h.strokes, h.fills, marks.glyphs(), marks.pictures());
    }

    private void end() {
        if (row.size() < LEAST || longest().lengthPt() < LONG * longest().widthPt()) {
            strokes.addAll(row);
        } else {
            fills.add(area());
        }
        row.clear();
    }

    private boolean goesOn(Stroke s) {
        if (row.isEmpty() || !plain(s)) {
            return false;
        }
        Stroke last = row.get(row.size() - 1);
        if (!plain(last) || Math.abs(last.widthPt() - s.widthPt()) > 0.02 * s.widthPt()) {
            return false;
        }
        Direction way = way(longest(), s);
        if (way == null) {
            return false;
        }
        double by = aside(way, last, s);
        boolean onward = row.size() < 2 || Math.signum(by) == Math.signum(aside(way, row.get(0), last));
        boolean beside = Math.abs(by) > TWICE * s.widthPt() && Math.abs(by) <= APART * s.widthPt();
        return onward && beside && overlap(way, last, s);
    }

    private static boolean plain(Stroke s) {
        return s.points().size() == 2 && !s.closed() && s.dash().solid();
    }

    private Stroke longest() {
        return row.stream().max(Comparator.comparingDouble(Stroke::lengthPt)).orElseThrow();
    }

    /** The way of both; null where they differ. One shorter than its pen is wide goes any way. */
    private static Direction way(Stroke a, Stroke b) {
        Stroke longer = a.lengthPt() >= b.lengthPt() ? a : b;
        Stroke other = longer == a ? b : a;
        if (longer.lengthPt() < longer.widthPt()) {
            // at the tip of an arrow: across the way from one to the next
            Direction on = Direction.of(middle(a), middle(b));
            return new Direction(-on.dy(), on.dx());
        }
        Direction way = Direction.of(longer.first(), longer.last());
        boolean parallel = other.lengthPt() < other.widthPt()
                || Math.abs(Direction.of(other.first(), other.last()).along(way)) > ALONG;
        return parallel ? way : null;
    }

    private static Point middle(Stroke s) {
        return new Point(
                (s.first().xPt() + s.last().xPt()) / 2,
                (s.first().yPt() + s.last().yPt()) / 2);
    }

    private static double aside(Direction way, Stroke from, Stroke to) {
        return new Direction(-way.dy(), way.dx()).ahead(middle(from), middle(to));
    }

    private static boolean overlap(Direction way, Stroke a, Stroke b) {
        double apart = Math.abs(way.ahead(middle(a), middle(b)));
        return apart <= (a.lengthPt() + b.lengthPt()) / 2 + a.widthPt();
    }

    /** Around all strokes, with their pens. */
    private Fill area() {
        double pen = row.get(0).widthPt();
        Stroke longest = longest();
        Direction way = Direction.of(longest.first(), longest.last());
        Direction across = new Direction(-way.dy(), way.dx());
        double sense = Math.signum(aside(way, row.get(0), row.get(row.size() - 1)));
        List<Point> there = new ArrayList<>();
        List<Point> back = new ArrayList<>();
        for (int i = 0; i < row.size(); i++) {
            Stroke s = row.get(i);
            boolean forward = way.ahead(s.first(), s.last()) >= 0;
            double off = (i == 0 ? -sense : i == row.size() - 1 ? sense : 0) * pen / 2;
            Point a = forward ? s.first() : s.last();
            Point b = forward ? s.last() : s.first();
            there.add(a.plus(off * across.dx(), off * across.dy()));
            back.add(b.plus(off * across.dx(), off * across.dy()));
        }
        Collections.reverse(back);
        there.addAll(back);
        return isRound(there) ? new Fill(there, true, false) : new Fill(corners(there, STRAIGHT * pen), false, false);
    }

    /** As wide as high, and of its box what a disc covers. */
    private static boolean isRound(List<Point> rim) {
        Box box = Box.around(rim);
        double twice = 0;
        for (int i = 0; i < rim.size(); i++) {
            Point p = rim.get(i);
            Point q = rim.get((i + 1) % rim.size());
            twice += p.xPt() * q.yPt() - q.xPt() * p.yPt();
        }
        double share = Math.abs(twice) / 2 / (box.widthPt() * box.heightPt());
        return rim.size() > 6
                && Math.abs(box.widthPt() - box.heightPt()) < EVEN * box.widthPt()
                && Math.abs(share - Math.PI / 4) < ROUND;
    }

    /** The rim without points on its straight edges. */
    private static List<Point> corners(List<Point> rim, double tolPt) {
        int far = IntStream.range(0, rim.size())
                .boxed()
                .max(Comparator.comparingDouble(i -> rim.get(i).distancePt(rim.get(0))))
                .orElseThrow();
        List<Point> out = new ArrayList<>();
        edge(rim.subList(0, far + 1), tolPt, out);
        List<Point> rest = new ArrayList<>(rim.subList(far, rim.size()));
        rest.add(rim.get(0));
        edge(rest, tolPt, out);
        return apart(out, tolPt);
    }

    /** Where the edges were cut to begin with there need not be a corner. */
    private static List<Point> apart(List<Point> corners, double tolPt) {
        List<Point> out = new ArrayList<>(corners);
        for (int i = 0; i < out.size() && out.size() > 3; i++) {
            Point before = out.get((i + out.size() - 1) % out.size());
            Point after = out.get((i + 1) % out.size());
            if (new Segment(before, after).distancePt(out.get(i)) <= tolPt) {
                out.remove(i--);
            }
        }
        return out;
    }

    /** Adds all corners but the last point: Douglas and Peucker, 1973. */
    private static void edge(List<Point> points, double tolPt, List<Point> out) {
        Segment chord = new Segment(points.get(0), points.get(points.size() - 1));
        int farthest = IntStream.range(1, points.size() - 1)
                .boxed()
                .max(Comparator.comparingDouble(i -> chord.distancePt(points.get(i))))
                .orElse(0);
        if (farthest == 0 || chord.distancePt(points.get(farthest)) <= tolPt) {
            out.add(points.get(0));
            return;
        }
        edge(points.subList(0, farthest + 1), tolPt, out);
        edge(points.subList(farthest, points.size()), tolPt, out);
    }
}
