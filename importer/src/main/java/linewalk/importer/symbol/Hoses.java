package linewalk.importer.symbol;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.lettering.Label;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Fill;
import linewalk.importer.page.Near;
import linewalk.importer.page.Segment;
import linewalk.importer.page.Stroke;

/**
 * A hose is a bare curve between two line ends (ISO 1219-1), or a straight piece of line between two short bars across it.
 * Only with a designation of its own is it a part; bends that lead smoothly from line to line, but between dots, and hops
 * over other lines are line work.
 */
final class Hoses {

    private static final double SHORTEST_TOL = 12;

    /** How far its designation may stand, in text sizes. */
    private static final double BESIDE = 3;

    /** Cosine up to which a curve goes on in its line's direction. */
    private static final double SMOOTHLY = 0.9;

    /** The longest straight piece of a curve, in its length: more is a line. */
    private static final double STRAIGHT = 0.4;

    /** Cosine of the sharpest turn from piece to piece of a curve. */
    private static final double CORNER = 0.5;

    /** How far from the end of a straight hose its bars stand. */
    private static final double BAR_TOL = 6;

    private final List<Stroke> strokes;
    private final Near<Stroke> bars;
    private final StrokeTouch touch;
    private final Near<Label> labels;
    private final List<Outline> outlines;
    private final Balloons balloons;
    private final Near<Fill> dots;
    private final double tolPt;

    /** @param dots where lines join, or hoses end */
    Hoses(
            List<Stroke> strokes,
            List<Label> labels,
            List<Outline> outlines,
            Balloons balloons,
            Near<Fill> dots,
            double tolPt) {
        this.strokes = strokes.stream()
                .filter(s -> !s.closed() && s.dash().solid() && s.lengthPt() > SHORTEST_TOL * tolPt)
                .toList();
        this.bars = new Near<>(
                strokes.stream()
                        .filter(s -> s.points().size() == 2 && s.lengthPt() < SHORTEST_TOL * tolPt)
                        .toList(),
                Stroke::box);
        this.touch = new StrokeTouch(strokes, tolPt);
        this.labels = new Near<>(
                labels.stream().filter(l -> Designations.looksLike(l.text())).toList(),
                l -> l.box().grow(BESIDE * l.sizePt()));
        this.outlines = outlines;
        this.balloons = balloons;
        this.dots = dots;
        this.tolPt = tolPt;
    }

    /** A box around each. */
    List<Outline> find() {
        List<Outline> found = new ArrayList<>();
        for (Stroke s : strokes) {
            if (bends(s)
                    && betweenLines(s)
                    && (betweenDots(s) || !smooth(s))
                    && !hop(s)
                    && (named(s) || pointedAt(s))) {
                found.add(Outline.of(Throttles.around(s.box(), s)));
            } else if (s.points().size() == 2 && barred(s) && (named(s) || pointedAt(s))) {
                Box whole = at(s, s.first()).stream().map(Stroke::box).reduce(s.box(), Box::union);
                found.add(Outline.of(Throttles.around(
                        at(s, s.last()).stream().map(Stroke::box).reduce(whole, Box::union), s)));
            }
        }
        return found;
    }

    private boolean barred(Stroke s) {
        return !at(s, s.first()).isEmpty() && !at(s, s.last()).isEmpty();
    }

    /** Short bars across a straight stroke near one of its ends. */
    private List<Stroke> at(Stroke s, Point end) {
        Direction d = Direction.of(s.first(), s.last());
        return bars.within(end, BAR_TOL * tolPt).stream()
                .filter(b -> Math.abs(Direction.of(b.first(), b.last()).along(d)) < 0.1)
                .filter(b -> d.aside(s.first(), b.box().center()) < tolPt)
                .toList();
    }

    /** A curve all along, without corners: no line that hops over others on its way. */
    private static boolean bends(Stroke s) {
        List<Point> p = s.points();
        double longest = 0;
        double sharpest = 1;
        for (int i = 1; i < p.size(); i++) {
            longest = Math.max(longest, p.get(i - 1).distancePt(p.get(i)));
            double turn = i + 1 == p.size()
                    ? 1
                    : Direction.of(p.get(i - 1), p.get(i)).along(Direction.of(p.get(i), p.get(i + 1)));
            sharpest = Math.min(sharpest, turn);
        }
        return s.curved() && longest < STRAIGHT * s.lengthPt() && sharpest > CORNER;
    }

    private boolean betweenLines(Stroke s) {
        return joined(s, s.first())
                && joined(s, s.last())
                && outlines.stream().noneMatch(o -> o.box().contains(s.box()));
    }

    /** A line ends there too, or a figure's outline is there. */
    private boolean joined(Stroke s, Point end) {
        return touch.at(end, s).stream().anyMatch(o -> o.closed() ? !o.curved() : !bends(o));
    }

    private boolean betweenDots(Stroke s) {
        return isDotted(s.first()) && isDotted(s.last());
    }

    private boolean isDotted(Point end) {
        return dots.within(end, tolPt).stream().anyMatch(d -> d.box().center().distancePt(end) <= tolPt);
    }

    private boolean smooth(Stroke s) {
        List<Point> p = s.points();
        int n = p.size();
        return goesOn(s, p.get(0), Direction.of(p.get(0), p.get(1)))
                && goesOn(s, p.get(n - 1), Direction.of(p.get(n - 1), p.get(n - 2)));
    }

    private boolean goesOn(Stroke s, Point end, Direction inward) {
        return touch.at(end, s).stream()
                .filter(o -> !o.closed() && !bends(o))
                .anyMatch(o -> Math.abs(Direction.of(o.first(), o.points().get(1))
                                        .along(inward))
                                > SMOOTHLY
                        || Math.abs(Direction.of(o.points().get(o.points().size() - 2), o.last())
                                        .along(inward))
                                > SMOOTHLY);
    }

    /** Another line runs through under the curve. */
    private boolean hop(Stroke s) {
        Segment chord = new Segment(s.first(), s.last());
        return touch.at(s.points().get(s.points().size() / 2), s).stream().anyMatch(o -> {
            for (int i = 1; i < o.points().size(); i++) {
                if (new Segment(o.points().get(i - 1), o.points().get(i)).crossing(chord) != null) {
                    return true;
                }
            }
            return false;
        });
    }

    private boolean pointedAt(Stroke s) {
        return balloons.pointers().stream().anyMatch(p -> s.box().distancePt(p.tip()) < Balloons.AT_TOL * tolPt);
    }

    /** The nearest thing to some designation beside it is this curve. */
    private boolean named(Stroke s) {
        Box b = s.box();
        return labels.touching(b).stream().anyMatch(l -> {
            double gap = b.distancePt(l.box());
            return gap < BESIDE * l.sizePt()
                    && outlines.stream().noneMatch(o -> o.box().distancePt(l.box()) < gap);
        });
    }
}
