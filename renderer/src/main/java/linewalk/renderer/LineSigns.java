package linewalk.renderer;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import linewalk.renderer.ink.ChangeMark;
import linewalk.renderer.ink.LinePattern;
import linewalk.renderer.ink.LineStyle;
import linewalk.renderer.scheme.Layout;
import linewalk.renderer.scheme.Net;

/**
 * Where arrows and marks of change stand on the lines of a page. All are placed before anything is painted: marks keep
 * clear of arrows, both of other lines, and the patterns of lines of both.
 */
final class LineSigns {

    /** @param way direction of length 1 */
    record Arrow(Layout.Course course, Point2D middle, Point2D way, double sizePt) {

        Point2D tip() {
            return new Point2D.Double(middle.getX() + way.getX() * sizePt / 2, middle.getY() + way.getY() * sizePt / 2);
        }
    }

    /** A mark of change, or where there is room for one. */
    record Change(Layout.Course course, Point2D at) {}

    /** The direction in which oil goes at a point of a net, of length 1; null where nothing is known. */
    @FunctionalInterface
    interface Ways {
        Point2D at(Net net, NetTree tree, Point2D point);
    }

    private record Stretch(Layout.Course course, Point2D from, Point2D to) {

        Point2D at(double share) {
            return new Point2D.Double(
                    from.getX() + share * (to.getX() - from.getX()), from.getY() + share * (to.getY() - from.getY()));
        }

        double lengthPt() {
            return from.distance(to);
        }

        Stretch half(boolean first) {
            return first ? new Stretch(course, from, at(0.5)) : new Stretch(course, at(0.5), to);
        }
    }

    /** Arrows stand out from heavy lines as from fine ones. */
    private static final double ARROW_PT = 9;

    private static final double ARROW_PER_WIDTH = 1.5;
    private static final double BETWEEN_PT = 13;
    /** From an arrow's ends to those of its stretch, both together. */
    private static final double ENDS_PT = 1;

    private static final double[] SHARES = {0.5, 0.62, 0.38, 0.74, 0.26};
    private static final double[] SHARES_OF_SHORT = {0.3, 0.7};
    private static final double[] SHARES_OF_CHANGES = {0.25, 0.75, 0.5, 0.82, 0.18};
    private static final double SHORT_PT = 45;
    /** From here on a stretch is worth an arrow though its course has one. */
    private static final double ANOTHER_PT = 60;

    private static final double LONG_PT = 240;
    private static final double LEAST_MARKED_PT = 14;
    /** What a line's pattern is known by stays beside a mark. */
    private static final double LEAST_PATTERN_PT = 32;

    private static final double MARK_REACH_PT = ChangeMark.SIZE_PT / 2 + 2;
    /** How far another line keeps off a sign. */
    private static final double OFF_LINES_PT = 5;

    private final Layout layout;
    private final Ways ways;
    private final Map<String, NetTree> trees = new HashMap<>();
    private final List<Arrow> arrows = new ArrayList<>();
    private final List<Change> changes = new ArrayList<>();

    private LineSigns(Layout layout, Ways ways) {
        this.layout = layout;
        this.ways = ways;
    }

    /** @param changed whether a course's line is not what it was in the step before */
    static LineSigns of(
            Layout layout, Ways ways, Function<Layout.Course, LineStyle> styles, Predicate<Layout.Course> changed) {
        LineSigns signs = new LineSigns(layout, ways);
        layout.courses().forEach(c -> signs.arrows(c, styles.apply(c)));
        Map<String, List<Layout.Course>> nets = new TreeMap<>();
        layout.courses().stream().filter(changed).forEach(c -> nets.computeIfAbsent(
                        c.net().name(), k -> new ArrayList<>())
                .add(c));
        nets.values().forEach(net -> signs.change(net, styles));
        return signs;
    }

    List<Arrow> arrows() {
        return arrows;
    }

    List<Change> changes() {
        return changes;
    }

    /** Whether a mark of a line's pattern has room here. */
    boolean isFree(Point2D p, double breadthPt) {
        return arrows.stream().allMatch(a -> a.middle.distance(p) > (a.sizePt + breadthPt) / 2 + 1)
                && changes.stream().allMatch(c -> c.at.distance(p) > MARK_REACH_PT + breadthPt / 2 + 1);
    }

    private static List<Stretch> stretches(Layout.Course course) {
        List<Point2D> points = course.points();
        return IntStream.range(1, points.size())
                .mapToObj(i -> new Stretch(course, points.get(i - 1), points.get(i)))
                .sorted(Comparator.comparingDouble(s -> -Math.round(s.lengthPt())))
                .toList();
    }

    /** On the longest stretch on which a way is known, and on all other long ones. No arrow hides that oil is held. */
    private void arrows(Layout.Course course, LineStyle style) {
        double sizePt = ARROW_PT + ARROW_PER_WIDTH * style.widthPt();
        double least = style.pattern() == LinePattern.BARS ? LEAST_PATTERN_PT : sizePt + ENDS_PT;
        boolean shown = false;
        for (Stretch s : stretches(course)) {
            if (s.lengthPt() > (shown ? ANOTHER_PT : least)) {
                shown |= arrow(s, sizePt);
            }
            if (s.lengthPt() > LONG_PT) {
                // a long way is not left with one alone
                arrow(s.half(true), sizePt);
                arrow(s.half(false), sizePt);
            }
        }
    }

    /** Whether there is one. */
    private boolean arrow(Stretch s, double sizePt) {
        double reach = (sizePt + ENDS_PT) / 2 / s.lengthPt();
        for (double wished : s.lengthPt() > SHORT_PT ? SHARES : SHARES_OF_SHORT) {
            double share = Math.max(reach, Math.min(1 - reach, wished));
            Point2D on = s.at(share);
            Point2D way = ways.at(s.course.net(), tree(s.course.net().name()), on);
            if (way != null
                    && arrows.stream().allMatch(a -> a.middle.distance(on) >= sizePt + BETWEEN_PT)
                    && !isCrossed(s.course, s.at(share - reach), s.at(share + reach))) {
                arrows.add(new Arrow(s.course, on, way, sizePt));
                return true;
            }
        }
        return false;
    }

    private NetTree tree(String net) {
        return trees.computeIfAbsent(
                net,
                k -> new NetTree(layout.courses().stream()
                        .filter(c -> c.net().name().equals(k))
                        .toList()));
    }

    /** One mark a line is enough. Where there is no room beside arrows, they give way. */
    private void change(List<Layout.Course> net, Function<Layout.Course, LineStyle> styles) {
        List<Change> free = net.stream()
                .flatMap(course -> stretches(course).stream())
                .filter(s -> s.lengthPt()
                        > (styles.apply(s.course).pattern() == LinePattern.SOLID ? LEAST_MARKED_PT : LEAST_PATTERN_PT))
                .sorted(Comparator.comparingDouble(s -> -Math.round(s.lengthPt())))
                .flatMap(LineSigns::spots)
                .filter(x -> changes.stream().allMatch(c -> c.at.distance(x.at) > 2 * MARK_REACH_PT))
                .filter(x ->
                        !isCrossed(x.course, aside(x.at, -ChangeMark.SIZE_PT / 2), aside(x.at, ChangeMark.SIZE_PT / 2)))
                .toList();
        free.stream()
                .filter(x -> arrows.stream().noneMatch(a -> overlap(a, x.at)))
                .findFirst()
                .or(() -> free.stream().findFirst())
                .ifPresent(x -> {
                    arrows.removeIf(a -> overlap(a, x.at));
                    changes.add(x);
                });
    }

    /** Clear of the stretch's ends, where a box may stand. */
    private static Stream<Change> spots(Stretch s) {
        double reach = Math.min(0.5, MARK_REACH_PT / s.lengthPt());
        return DoubleStream.of(SHARES_OF_CHANGES)
                .map(share -> Math.max(reach, Math.min(1 - reach, share)))
                .mapToObj(share -> new Change(s.course, s.at(share)));
    }

    private static boolean overlap(Arrow a, Point2D mark) {
        return a.middle.distance(mark) < a.sizePt / 2 + MARK_REACH_PT;
    }

    /** Another line's stretch or a dot lies too close for a sign to be read. */
    private boolean isCrossed(Layout.Course own, Point2D from, Point2D to) {
        Rectangle2D room = new Rectangle2D.Double(from.getX(), from.getY(), 0, 0);
        room.add(to);
        room.setRect(
                room.getX() - OFF_LINES_PT,
                room.getY() - OFF_LINES_PT,
                room.getWidth() + 2 * OFF_LINES_PT,
                room.getHeight() + 2 * OFF_LINES_PT);
        return layout.dots().stream().anyMatch(room::contains)
                || layout.courses().stream()
                        .filter(c -> !c.net().name().equals(own.net().name()))
                        .flatMap(c -> stretches(c).stream())
                        .anyMatch(s -> room.intersectsLine(s.from.getX(), s.from.getY(), s.to.getX(), s.to.getY()));
    }

    private static Point2D aside(Point2D p, double byPt) {
        return new Point2D.Double(p.getX() + byPt, p.getY() + byPt);
    }
}
