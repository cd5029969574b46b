package linewalk.importer.kind;

import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Stream;
import linewalk.drawing.Box;
import linewalk.drawing.Kind;
import linewalk.drawing.Point;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Segment;
import linewalk.importer.symbol.Arc;

/**
 * What is drawn inside a figure and is no part of what its kind is known by. Level and upright pieces may be pipes; oblique
 * ones and bows always say something.
 */
final class Leftover {

    /** A piece steeper than this is oblique. */
    private static final double OBLIQUE = 0.2;

    /** How far around a ball its seat is drawn, in sizes of the ball. */
    private static final double SEAT = 1.7;

    /** Told by one oblique stroke. */
    private static final Set<Kind> STROKED = EnumSet.of(Kind.SWITCH, Kind.GAUGE, Kind.TEST_POINT);

    /** No arrow belongs to these. */
    private static final Set<Kind> ARROWLESS = EnumSet.of(
            Kind.SWITCH,
            Kind.CHECK_VALVE,
            Kind.PILOT_CHECK_VALVE,
            Kind.SHUTTLE_VALVE,
            Kind.PREFILL_VALVE,
            Kind.ORIFICE);

    private final Picture p;
    private final Motifs motifs;
    private final Kind kind;

    Leftover(Motifs motifs, Kind kind) {
        this.p = motifs.picture();
        this.motifs = motifs;
        this.kind = kind;
    }

    /** Length of what is not understood in sizes of the figure, 0 for none. */
    double share() {
        double strokes = inside().filter(s -> oblique(s) && !known(s))
                .mapToDouble(Segment::lengthPt)
                .sum();
        double longest = STROKED.contains(kind)
                ? inside().filter(Leftover::oblique)
                        .filter(s -> !known(s))
                        .mapToDouble(Segment::lengthPt)
                        .max()
                        .orElse(0)
                : 0;
        double bows = p.arcs().stream()
                .filter(a -> p.core().contains(a.middle()) && !known(a))
                .mapToDouble(Arc::chordPt)
                .sum();
        return (strokes - longest + bows) / p.sizePt();
    }

    private Stream<Segment> inside() {
        Box core = p.core();
        return p.solid().stream().filter(s -> core.contains(middle(s.a(), s.b())));
    }

    private static boolean oblique(Segment s) {
        Direction d = Direction.of(s.a(), s.b());
        return Math.min(Math.abs(d.dx()), Math.abs(d.dy())) > OBLIQUE;
    }

    private boolean known(Segment s) {
        Point m = middle(s.a(), s.b());
        boolean arrow = !ARROWLESS.contains(kind)
                && p.arrows().stream()
                        .anyMatch(a -> Math.abs(a.direction().along(Direction.of(s.a(), s.b()))) > 0.95
                                && a.direction().aside(a.tip(), m) < 0.06 * p.sizePt() + p.tolPt());
        boolean side = p.shapes().stream().anyMatch(x -> x.edgePt(m) < p.tolPt());
        // its head may be lost in the wall that it touches
        boolean adjusts = motifs.throttles().stream().anyMatch(t -> t.crossedBy(s));
        boolean spring = p.springs().stream().anyMatch(x -> x.box().contains(m));
        return arrow || adjusts || spring || seat(m) || side || sign(m);
    }

    private boolean known(Arc a) {
        return motifs.throttles().stream().anyMatch(t -> t.place().distancePt(a.middle()) < 1.5 * t.sizePt())
                || sign(a.middle())
                || a.sharp() && seat(a.bulge());
    }

    /** An arm of a seat and the line that it meets look like a bow with a corner. */
    private boolean seat(Point m) {
        return motifs.checks().stream().anyMatch(c -> c.ball().distancePt(m) < SEAT * c.sizePt());
    }

    private boolean sign(Point m) {
        return p.triangles().stream().anyMatch(t -> t.box().grow(p.tolPt()).contains(m));
    }

    private static Point middle(Point a, Point b) {
        return new Point((a.xPt() + b.xPt()) / 2, (a.yPt() + b.yPt()) / 2);
    }
}
