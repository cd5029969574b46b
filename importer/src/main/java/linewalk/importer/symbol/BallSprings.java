package linewalk.importer.symbol;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import linewalk.drawing.Point;
import linewalk.importer.page.Dash;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Marks;
import linewalk.importer.page.Near;
import linewalk.importer.page.Segment;
import linewalk.importer.page.Stroke;

/**
 * Springs that hold the ball of a check valve, of which thinning leaves bits: a heap of short oblique pieces against the
 * ball, as broad as it, is one zigzag from the ball to where the heap ends.
 */
public final class BallSprings {

    /** The largest ball, in tolerances. */
    private static final double LARGEST_TOL = 12;

    /** Of the heap, in diameters of the ball: how far out it reaches, how broad and how deep it is. */
    private static final double FARTHEST = 2.6;

    private static final double BROADEST = 0.65;

    private static final double LEAST = 0.4;

    /** How far from the ball it begins, and how far over its edge. */
    private static final double GAP = 0.3;

    private static final double OVER = 0.15;

    private static final int OBLIQUE_PIECES = 3;

    private static final double OBLIQUE = 0.15;

    private static final int TEETH = 6;

    private final Near<Stroke> near;
    private final double tolPt;

    private BallSprings(List<Stroke> strokes, double tolPt) {
        near = new Near<>(strokes, Stroke::box);
        this.tolPt = tolPt;
    }

    /** Marks of a scan with such springs whole. */
    public static Marks whole(Marks marks) {
        BallSprings springs = new BallSprings(marks.strokes(), marks.tolerancePt());
        Set<Stroke> used = Collections.newSetFromMap(new IdentityHashMap<>());
        List<Stroke> found = new ArrayList<>();
        for (Stroke s : marks.strokes()) {
            if (s.closed()
                    && s.box().widthPt() < LARGEST_TOL * springs.tolPt
                    && Outline.of(s).circle()) {
                for (Direction out :
                        List.of(new Direction(1, 0), new Direction(-1, 0), new Direction(0, 1), new Direction(0, -1))) {
                    springs.spring(s, out, used).ifPresent(found::add);
                }
            }
        }
        List<Stroke> strokes = new ArrayList<>(marks.strokes());
        strokes.removeIf(used::contains);
        strokes.addAll(found);
        return new Marks(marks.widthPt(), marks.heightPt(), strokes, marks.fills(), marks.glyphs(), marks.pictures());
    }

    private Optional<Stroke> spring(Stroke ball, Direction out, Set<Stroke> used) {
        Point m = ball.box().center();
        double size = ball.box().widthPt();
        double edge = size / 2;
        List<Stroke> heap = near.within(m, edge + FARTHEST * size).stream()
                .filter(s -> s != ball && !used.contains(s))
                .filter(s -> s.points().stream().allMatch(p -> {
                    double ahead = out.ahead(m, p) - edge;
                    return ahead > -OVER * size && ahead < FARTHEST * size && out.aside(m, p) < BROADEST * size;
                }))
                .toList();
        long oblique = Segment.straightOf(heap).stream()
                .map(s -> Direction.of(s.a(), s.b()))
                .filter(d -> Math.min(Math.abs(d.dx()), Math.abs(d.dy())) > OBLIQUE)
                .count();
        if (oblique < OBLIQUE_PIECES || isWhole(heap) || heap.stream().anyMatch(s -> s.closed() && s.curved())) {
            return Optional.empty();
        }
        double from = Double.MAX_VALUE;
        double to = 0;
        double aside = 0;
        for (Stroke s : heap) {
            for (Point p : s.points()) {
                from = Math.min(from, out.ahead(m, p) - edge);
                to = Math.max(to, out.ahead(m, p) - edge);
                aside = Math.max(aside, out.aside(m, p));
            }
        }
        if (from > GAP * size || to < LEAST * size || 2 * aside < LEAST * size) {
            return Optional.empty();
        }
        used.addAll(heap);
        return Optional.of(zigzag(m.plus(out.dx() * edge, out.dy() * edge), out, to, aside, heap.get(0)));
    }

    /** One zigzag, and no bit of it apart. */
    private boolean isWhole(List<Stroke> heap) {
        return heap.stream().filter(Motif::zigzag).anyMatch(z -> heap.stream()
                .allMatch(s -> z.box().grow(tolPt / 2).contains(s.box())));
    }

    private static Stroke zigzag(Point start, Direction out, double depthPt, double asidePt, Stroke like) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= TEETH; i++) {
            double along = depthPt * i / TEETH;
            double across = i == 0 || i == TEETH ? 0 : i % 2 == 0 ? asidePt : -asidePt;
            points.add(start.plus(along * out.dx() - across * out.dy(), along * out.dy() + across * out.dx()));
        }
        return new Stroke(points, false, false, like.widthPt(), Dash.SOLID, false);
    }
}
