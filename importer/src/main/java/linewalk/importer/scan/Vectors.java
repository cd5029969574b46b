package linewalk.importer.scan;

import boofcv.struct.image.GrayU8;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import linewalk.drawing.Point;
import linewalk.importer.page.Dash;
import linewalk.importer.page.Stroke;

/** Line work to strokes: blobs thinned, followed, fitted with straight and round pieces, and these put together to lines. */
final class Vectors {

    /** Lines at least this many times longer than wide tell the pens. */
    private static final double LONG = 12;

    /** The largest thin line around a part, in lengths of the page. */
    private static final double ENVELOPE = 0.06;

    /** How far a line goes on that runs through a circle, in radii from its middle. */
    private static final double BEYOND = 1.2;

    private final Bits all;
    private final Bits ink;
    private final Upright upright;
    private final double pxPerPt;
    private final Gauge gauge;

    /**
     * @param all ink, also lettering and what was taken for it
     * @param ink line work alone
     */
    Vectors(Bits all, Bits ink, Upright upright, double pxPerPt) {
        this.all = all;
        this.ink = ink;
        this.upright = upright;
        this.pxPerPt = pxPerPt;
        this.gauge = new Gauge(ink);
    }

    /**
     * What line work is drawn with.
     *
     * @param strokes in points of the upright page
     * @param solids filled shapes, with the heads of arrows as their lines tell them
     */
    record Drawn(List<Stroke> strokes, List<Solid> solids) {}

    /**
     * The raster is worked on; what it held is lost.
     *
     * @param text where lettering stands
     */
    Drawn of(Collection<Blob> lineWork, List<Solid> solids, GrayU8 raster, TextPlaces text) {
        Skeleton.draw(lineWork, raster);
        Web web = Web.of(raster, ink);
        List<Piece> pieces = new ArrayList<>(Joints.of(web, upright, gauge));
        pieces.removeIf(p -> solids.stream().anyMatch(s -> s.swallows(p)) && untied(p));
        Map<Piece, Line> lines = Lines.of(pieces, gauge, upright);
        Set<Line> whole = new LinkedHashSet<>();
        pieces.stream().map(lines::get).filter(Objects::nonNull).forEach(whole::add);
        new Onward(lines, gauge, upright).join(whole);
        Knots.tie(pieces, lines);
        List<Rounds.Curve> curves = Rounds.of(pieces, gauge, upright);
        List<Waists.Waist> waists = Waists.of(pieces, whole, gauge, upright);
        drop(Waists.swallowed(waists, pieces, lines), pieces, whole, curves);
        List<DashRings.Ring> rings = DashRings.of(pieces);
        drop(rings.stream().flatMap(r -> r.pieces().stream()).toList(), pieces, whole, curves);
        Directions.even(whole);
        List<DashRow> rows = new ArrayList<>(DashRows.of(whole, gauge, upright, curves));
        drop(new Hops(lines, whole, rows, new Gauge(all), upright).join(pieces), pieces, whole, curves);
        Blank blank = new Blank(new Gauge(all), upright);
        rows = new ArrayList<>(Chained.joined(rows, whole, curves, solids, blank));
        rows.addAll(SingleDashes.of(rows, whole, text, blank));
        Set<Line> dashes = Collections.newSetFromMap(new IdentityHashMap<>());
        rows.forEach(r -> dashes.addAll(r.dashes()));
        whole.removeIf(dashes::contains);
        whole.removeIf(l -> l.loose() && text.leadsOn(l));
        Pens pens = pens(whole, rows);
        List<Stroke> out = new ArrayList<>();
        Set<Piece> circled = Collections.newSetFromMap(new IdentityHashMap<>());
        for (Rounds.Curve c : curves) {
            if (c.closed()) {
                out.add(stroke(c.points(), true, true, pens.nearest(width(c))));
                circled.addAll(c.pieces());
            }
        }
        List<Piece> open = pieces.stream()
                .filter(p -> !circled.contains(p) && !dashes.contains(lines.get(p)))
                .toList();
        BowTies ties = new BowTies(solids);
        RowEnds rowEnds = new RowEnds(whole, rows, curves, solids, ties, blank);
        OnRows onRows = new OnRows(rows, rowEnds);
        curves.removeIf(c -> !c.closed() && onRows.covers(c.points(), c.pieces().get(0).a.thick));
        whole.removeIf(l -> l.span() < LONG * l.width && onRows.covers(List.of(l.end(false), l.end(true)), l.width));
        Outlines outlines = new Outlines(
                open,
                lines,
                p -> p.round == null ? lines.get(p).width : width(Rounds.arc(p)),
                pens,
                Math.max(raster.width, raster.height),
                text::within);
        outlines.rings().forEach(r -> out.add(stroke(r.points(), true, r.curved(), r.width())));
        Reach reach = new Reach(curves, gauge, upright);
        List<Stretch> drawn = new ArrayList<>();
        for (Line l : whole) {
            for (List<double[]> t : stretches(l, outlines, circled, cutting(l, curves))) {
                List<double[]> e = reach.of(t);
                drawn.add(new Stretch(e.get(0)[0], e.get(0)[1], e.get(1)[0], e.get(1)[1], l.width));
            }
        }
        drawn.addAll(new Seats(gauge, upright).missing(curves, drawn));
        List<Stretch> straight = new ArrayList<>(Envelopes.whole(
                new Corners(outlines.rings(), gauge, upright).sharp(new Arms(curves, gauge, upright).whole(drawn)),
                ENVELOPE * Math.max(raster.width, raster.height)));
        curves.removeIf(c -> !c.closed() && straight.stream().anyMatch(t -> along(t, c)));
        List<Round> crossed = curves.stream()
                .filter(c -> c.closed() && whole.stream().anyMatch(l -> through(l, c)))
                .map(Rounds.Curve::round)
                .toList();
        straight.removeIf(t -> crossed.stream().anyMatch(c -> spur(t, c)));
        straight.removeIf(t -> curves.stream().anyMatch(c -> c.closed() && rest(t, c.round())));
        BallCocks cocks = new BallCocks(curves, straight, gauge, upright);
        straight.retainAll(cocks.without(straight));
        cocks.triangles().forEach(t -> out.add(stroke(t, true, false, pens.nearest(0))));
        for (Waists.Waist w : waists) {
            w.arrow().ifPresent(a -> replace(straight, a));
        }
        List<Stretch> cut = ties.cut(straight);
        straight.clear();
        straight.addAll(cut);
        ties.outlines().forEach(t -> out.add(stroke(t, true, false, pens.nearest(0))));
        List<Solid> shapes = solids.stream().filter(s -> !ties.has(s)).toList();
        List<Solid> filled =
                Dots.round(Crossings.without(shapes, straight, outlines.rings()), straight, outlines.rings(), curves);
        List<Solid> heads = new Tips(gauge, upright, filled).of(straight);
        InHeads.join(straight, heads, curves);
        ArrowShafts shafts = new ArrowShafts(gauge, upright);
        for (Solid h : heads) {
            if (h.outline().size() == 3) {
                shafts.behind(h)
                        .filter(a -> straight.stream().noneMatch(t -> t.leadsOn(a)))
                        .ifPresent(a -> {
                            straight.removeIf(t -> InHeads.inside(t, h));
                            replace(straight, a);
                            curves.removeIf(c -> !c.closed()
                                    && c.points().stream().allMatch(p -> a.covers(p[0], p[1]) || h.covers(p[0], p[1])));
                        });
            }
        }
        for (Bends.Bend b : Bends.whole(arcs(curves, outlines))) {
            out.add(stroke(b.points(), false, true, pens.nearest(b.widthPx())));
        }
        for (Stretch t : straight) {
            List<double[]> ends = List.of(new double[] {t.x0(), t.y0()}, new double[] {t.x1(), t.y1()});
            out.add(stroke(ends, false, false, pens.nearest(t.widthPx())));
        }
        waists.forEach(w -> w.walls().forEach(q -> out.add(stroke(q, false, true, pens.nearest(w.widthPx())))));
        for (DashRings.Ring r : rings) {
            double width = r.pieces().get(r.pieces().size() / 2).a.thick;
            List<Point> points = r.points().stream().map(this::point).toList();
            Dash dash = new Dash(r.onPx() / pxPerPt, false);
            out.add(new Stroke(points, true, true, pens.nearest(width) / pxPerPt, dash, false));
        }
        for (RowStretches.One r : RowStretches.of(rows, rowEnds)) {
            Dash dash = new Dash(r.onPx() / pxPerPt, r.chain());
            List<Point> points = List.of(point(r.from()), point(r.to()));
            out.add(new Stroke(points, false, false, pens.nearest(r.widthPx()) / pxPerPt, dash, false));
        }
        return new Drawn(out, heads);
    }

    /** Open ones that are no sides of outlines. */
    private List<Bends.Bend> arcs(List<Rounds.Curve> curves, Outlines outlines) {
        return curves.stream()
                .filter(c -> !c.closed() && !outlines.isSide(c.pieces().get(0)))
                .map(c -> new Bends.Bend(c.points(), width(c)))
                .toList();
    }

    /** Pieces that other things were made of, and what they made up. */
    private static void drop(Collection<Piece> taken, List<Piece> pieces, Set<Line> lines, List<Rounds.Curve> curves) {
        Set<Piece> gone = Collections.newSetFromMap(new IdentityHashMap<>());
        gone.addAll(taken);
        pieces.removeIf(gone::contains);
        curves.removeIf(c -> !c.closed() && gone.containsAll(c.pieces()));
        lines.removeIf(l -> gone.containsAll(l.pieces));
    }

    private static void replace(List<Stretch> parts, Stretch whole) {
        parts.removeIf(whole::covers);
        parts.add(whole);
    }

    private static boolean untied(Piece p) {
        if (!p.ring()) {
            p.untie();
        }
        return true;
    }

    private static Pens pens(Collection<Line> lines, List<DashRow> rows) {
        Map<Double, Double> lengths = new TreeMap<>();
        for (Line l : lines) {
            if (l.length() > LONG * l.width) {
                lengths.merge(l.width, l.length(), Double::sum);
            }
        }
        rows.forEach(r -> lengths.merge(
                r.width(), r.dashes().stream().mapToDouble(Line::span).sum(), Double::sum));
        return new Pens(lengths);
    }

    /** Sides of circles that the line meets, but for those that it runs right through: ports on an outline. */
    private static Set<Piece> cutting(Line l, List<Rounds.Curve> curves) {
        Set<Piece> cutting = Collections.newSetFromMap(new IdentityHashMap<>());
        for (Rounds.Curve c : curves) {
            boolean meets = c.closed()
                    && l.straight.aside(c.round().x(), c.round().y())
                            < c.round().r() + l.width;
            if (meets && !through(l, c)) {
                cutting.addAll(c.pieces());
            }
        }
        return cutting;
    }

    private static boolean through(Line l, Rounds.Curve c) {
        Round r = c.round();
        double[] a = l.end(false);
        double[] b = l.end(true);
        boolean beyond = Math.min(Math.hypot(a[0] - r.x(), a[1] - r.y()), Math.hypot(b[0] - r.x(), b[1] - r.y()))
                > BEYOND * r.r();
        return beyond
                && l.straight.aside(r.x(), r.y()) < r.r()
                && l.pieces.stream()
                        .anyMatch(p -> Math.hypot((p.a.x + p.b.x) / 2 - r.x(), (p.a.y + p.b.y) / 2 - r.y()) < r.r());
    }

    /** What thinning leaves between a circle and a line across it. */
    private static boolean spur(Stretch t, Round c) {
        double from = Math.hypot(t.x0() - c.x(), t.y0() - c.y());
        double to = Math.hypot(t.x1() - c.x(), t.y1() - c.y());
        double most = c.r() + 1.5 * t.widthPx();
        return Math.max(from, to) < most && t.length() < most;
    }

    /** The curve is the bent tip of a straight line. */
    private static boolean along(Stretch t, Rounds.Curve c) {
        return c.points().stream().allMatch(p -> t.covers(p[0], p[1]));
    }

    /** What is left of a circle's side that passed for straight. */
    private static boolean rest(Stretch t, Round c) {
        double near = 1.5 * t.widthPx();
        return t.length() < t.widthPx() && Math.min(c.off(t.x0(), t.y0()), c.off(t.x1(), t.y1())) < near;
    }

    /** The line's stretches between closed shapes, without what is a side of one. */
    private static List<List<double[]>> stretches(Line l, Outlines outlines, Set<Piece> circled, Set<Piece> cutting) {
        List<Piece> sorted = new ArrayList<>(l.pieces);
        sorted.sort(Comparator.comparingDouble(p -> Math.min(l.along(p.a), l.along(p.b))));
        List<List<double[]>> out = new ArrayList<>();
        double from = Double.NaN;
        double to = Double.NaN;
        for (Piece p : sorted) {
            boolean side = outlines.isSide(p) || circled.contains(p);
            Piece.Joint start = l.along(p.a) <= l.along(p.b) ? p.a : p.b;
            boolean cut = outlines.onRing(start) || start.pieces.stream().anyMatch(cutting::contains);
            if (!Double.isNaN(from) && (side || cut)) {
                stretch(l, from, to, out);
                from = Double.NaN;
            }
            if (!side) {
                // where lines meet at a slant, a short piece may lie wholly beside a longer one
                to = Double.isNaN(from) ? l.along(p.other(start)) : Math.max(to, l.along(p.other(start)));
                from = Double.isNaN(from) ? l.along(start) : from;
            }
        }
        if (!Double.isNaN(from)) {
            stretch(l, from, to, out);
        }
        return out;
    }

    private static void stretch(Line l, double from, double to, List<List<double[]>> out) {
        if (to - from > 1) {
            out.add(List.of(l.at(from), l.at(to)));
        }
    }

    /** Middle width of the pen along the curve; nothing tells it where only a short bow is left. */
    private double width(Rounds.Curve c) {
        List<Double> all = new ArrayList<>();
        for (Piece p : c.pieces()) {
            for (int i = p.count() / 6; i < p.count(); i += Math.max(1, p.count() / 12)) {
                double bx = upright.backX(p.xs[i], p.ys[i]);
                double by = upright.backY(p.xs[i], p.ys[i]);
                double a = c.round().angle(p.xs[i], p.ys[i]);
                all.add(gauge.across(bx, by, -Math.sin(a), Math.cos(a)));
            }
        }
        Collections.sort(all);
        return all.get(all.size() / 2);
    }

    private Stroke stroke(List<double[]> points, boolean closed, boolean curved, double widthPx) {
        return new Stroke(
                points.stream().map(this::point).toList(), closed, curved, widthPx / pxPerPt, Dash.SOLID, false);
    }

    private Point point(double[] p) {
        return new Point(p[0] / pxPerPt, p[1] / pxPerPt);
    }
}
