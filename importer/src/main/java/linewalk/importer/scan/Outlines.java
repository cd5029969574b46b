package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import linewalk.importer.page.Fields;
import linewalk.importer.scan.Piece.Joint;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateList;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.polygonize.Polygonizer;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/**
 * Closed shapes among lines. On a vector page a box is drawn as a box; a scan only shows lines that meet. Small fields
 * between lines of one pen that share a side are one figure; its outer ring is closed, and cut where a side goes on
 * inside it from a corner that points inwards: a solenoid beside a valve's squares.
 */
final class Outlines {

    /** Fields and figures are small against the sheet: larger ones are made by lines that meet again. */
    private static final double LARGEST_FIELD = 0.07;

    private static final double LARGEST_FIGURE = 0.2;

    /** Least share of its hull that a box fills. */
    private static final double BOX = 0.97;

    /** A side this short, in widths of the pen, is a corner. */
    private static final double CUT = 1.6;

    /** So short a side is bent by what meets it at its other end. */
    private static final double ASKEW = 4;

    private static final double PULLED_PX = 1.2;

    private static final double PULLED = 0.65;

    private static final double ONE_PEN = 1.1;

    /** Beside a field of one pen, more is forgiven. */
    private static final double ONE_PEN_BESIDE = 1.2;

    /** How far a smudge bends a box, in widths of its pen. */
    private static final double SMUDGE = 2;

    /** Sine of the angle between two sides. */
    private static final double PARALLEL = 0.05;

    /** How well the width of a long side is known, and how much less that of a short one, in pixels. */
    private static final double KNOWN_PX = 0.25;

    /** Around text; level and upright sides may lie half a pixel on or off. */
    private static final double AROUND_TEXT_PX = 0.5;

    private static final double UNSURE_PX = 0.7;
    private static final double UNSURE_LENGTH_PX = 20;

    private final GeometryFactory factory = new GeometryFactory();
    private final Map<Set<Coordinate>, Piece> sides = new HashMap<>();
    private final ToDoubleFunction<Piece> pen;
    private final Pens pens;
    private final Map<Piece, Line> lineOf;
    private final double sheetPx;
    private final Predicate<Envelope> lettered;
    private final List<Ring> rings = new ArrayList<>();

    /** A closed shape: corners, whether it has round sides, and its pen; pixels. */
    record Ring(List<double[]> points, boolean curved, double width) {

        List<Stretch> sides() {
            List<Stretch> sides = new ArrayList<>();
            for (int i = 0; i < points.size(); i++) {
                double[] a = points.get(i);
                double[] b = points.get((i + 1) % points.size());
                sides.add(new Stretch(a[0], a[1], b[0], b[1], width));
            }
            return sides;
        }
    }

    /**
     * @param pen width of a piece as measured
     * @param pens that the sheet was drawn with
     * @param sheetPx the longer side of the sheet
     * @param lettered whether text stands within a box
     */
    Outlines(
            Collection<Piece> pieces,
            Map<Piece, Line> lineOf,
            ToDoubleFunction<Piece> pen,
            Pens pens,
            double sheetPx,
            Predicate<Envelope> lettered) {
        this.pen = pen;
        this.pens = pens;
        this.lineOf = lineOf;
        this.sheetPx = sheetPx;
        this.lettered = lettered;
        Polygonizer polygonizer = new Polygonizer();
        for (Piece p : pieces) {
            if (!p.ring() && p.a != p.b) {
                LineString side = factory.createLineString(course(p));
                Coordinate[] c = side.getCoordinates();
                for (int i = 1; i < c.length; i++) {
                    sides.put(Set.of(c[i - 1], c[i]), p);
                }
                polygonizer.add(side);
            }
        }
        figures(fields(polygonizer));
    }

    List<Ring> rings() {
        return rings;
    }

    /** A joint that lies on a ring's side. */
    boolean onRing(Joint j) {
        return joints.contains(j);
    }

    /** A piece that is a side of a ring. */
    boolean isSide(Piece p) {
        return used.contains(p);
    }

    private final Set<Piece> used = new LinkedHashSet<>();
    private final Set<Joint> joints = java.util.Collections.newSetFromMap(new IdentityHashMap<>());

    static Coordinate[] course(Piece p) {
        CoordinateList c = new CoordinateList();
        // so short a bow is a corner that ink rounds, and its ends may lie past it
        if (p.round != null && p.length() > CUT * p.a.thick + 1) {
            Rounds.arc(p).points().forEach(q -> c.add(new Coordinate(q[0], q[1]), false));
        } else {
            c.add(new Coordinate(p.a.x, p.a.y), false);
            c.add(new Coordinate(p.b.x, p.b.y), false);
        }
        if (c.size() == 1) {
            c.add(new Coordinate(p.b.x + 1e-3, p.b.y), false);
        }
        return c.toCoordinateArray();
    }

    private List<Polygon> fields(Polygonizer polygonizer) {
        List<Polygon> all = Fields.of(polygonizer).stream()
                .filter(p -> p.getNumInteriorRing() == 0 && size(p) < LARGEST_FIGURE * sheetPx)
                .toList();
        List<Polygon> fields = new ArrayList<>();
        all.stream().filter(p -> isSmall(p) && onePen(p, ONE_PEN)).forEach(fields::add);
        Set<Piece> known = new LinkedHashSet<>();
        fields.forEach(p -> known.addAll(sidesOf(p)));
        List<Polygon> others = all.stream()
                .filter(p -> !fields.contains(p) && onePen(p, ONE_PEN_BESIDE))
                .toList();
        others.stream()
                .filter(p -> isSmall(p) && sidesOf(p).stream().anyMatch(known::contains))
                .forEach(fields::add);
        fields.addAll(barrels(fields, others.stream().filter(p -> !isSmall(p)).toList()));
        return fields;
    }

    private static double size(Polygon p) {
        Envelope e = p.getEnvelopeInternal();
        return Math.max(e.getWidth(), e.getHeight());
    }

    private boolean isSmall(Polygon p) {
        return size(p) < LARGEST_FIELD * sheetPx;
    }

    /** Large fields belong to a small one where they fill a box with it: a cylinder's barrel, parted by its rod, and its piston. */
    private List<Polygon> barrels(List<Polygon> small, List<Polygon> large) {
        List<Polygon> found = new ArrayList<>();
        for (List<Polygon> group : groups(large)) {
            Geometry side = UnaryUnionOp.union(group);
            if (group.size() > 1
                    && isBox(side)
                    && small.stream().anyMatch(p -> p.touches(side) && isBox(p.union(side)))) {
                found.addAll(group);
            }
        }
        return found;
    }

    private static boolean isBox(Geometry g) {
        return g instanceof Polygon && g.getArea() > BOX * g.getEnvelope().getArea();
    }

    private double known(Envelope field) {
        return lettered.test(field) ? AROUND_TEXT_PX : KNOWN_PX;
    }

    private Set<Piece> sidesOf(Polygon p) {
        Coordinate[] c = p.getExteriorRing().getCoordinates();
        Set<Piece> out = new LinkedHashSet<>();
        for (int i = 1; i < c.length; i++) {
            Piece side = sides.get(Set.of(c[i - 1], c[i]));
            if (side != null) {
                out.add(side);
            }
        }
        return out;
    }

    /** The shorter a side, the less is its width known: pixels count whole. */
    private boolean onePen(Polygon field, double most) {
        double knownPx = known(field.getEnvelopeInternal());
        double least = Double.MAX_VALUE;
        double greatest = 0;
        for (Piece p : sidesOf(field)) {
            double width = pen.applyAsDouble(p);
            if (p.length() > 4 * width && !isDivider(p)) {
                double unsure = knownPx + Math.min(UNSURE_PX, UNSURE_LENGTH_PX / p.length());
                least = Math.min(least, width + unsure);
                greatest = Math.max(greatest, width - unsure);
            }
        }
        return greatest <= most * least;
    }

    /** A line from side to side of a figure, where the squares of a valve meet, is drawn twice and may look heavier. */
    private boolean isDivider(Piece p) {
        Line l = lineOf.get(p);
        if (l == null || l.straight == null) {
            return false;
        }
        Line one = passing(l, false);
        Line other = passing(l, true);
        return one != null && other != null && one != other && one.straight.sine(other.straight) < PARALLEL;
    }

    /** The line that goes straight on past one end of another; null where none does. */
    private Line passing(Line l, boolean far) {
        Joint end = l.pieces.stream()
                .flatMap(p -> Stream.of(p.a, p.b))
                .max(Comparator.comparingDouble(j -> far ? l.along(j) : -l.along(j)))
                .orElseThrow();
        List<Line> others = end.pieces.stream()
                .map(lineOf::get)
                .filter(o -> o != null && o != l)
                .toList();
        return others.stream()
                .filter(o -> o.straight != null && others.indexOf(o) != others.lastIndexOf(o))
                .findFirst()
                .orElse(null);
    }

    private void figures(List<Polygon> fields) {
        groups(fields).forEach(this::figure);
    }

    /** Fields that share a side. */
    private List<List<Polygon>> groups(List<Polygon> fields) {
        Map<Piece, List<Polygon>> beside = new IdentityHashMap<>();
        for (Polygon p : fields) {
            sidesOf(p).forEach(s -> beside.computeIfAbsent(s, k -> new ArrayList<>())
                    .add(p));
        }
        List<List<Polygon>> groups = new ArrayList<>();
        Set<Polygon> seen = java.util.Collections.newSetFromMap(new IdentityHashMap<>());
        for (Polygon start : fields) {
            if (seen.add(start)) {
                List<Polygon> group = new ArrayList<>(List.of(start));
                for (int i = 0; i < group.size(); i++) {
                    for (Piece s : sidesOf(group.get(i))) {
                        beside.get(s).stream().filter(seen::add).forEach(group::add);
                    }
                }
                groups.add(group);
            }
        }
        return groups;
    }

    private void figure(List<Polygon> fields) {
        Geometry whole = fields.size() == 1 ? fields.get(0) : UnaryUnionOp.union(fields);
        Envelope e = whole.getEnvelopeInternal();
        long texts = fields.stream()
                .filter(f -> lettered.test(f.getEnvelopeInternal()))
                .count();
        boolean table = texts > 2 && 2 * texts > fields.size();
        if (!(whole instanceof Polygon outer)
                || Math.max(e.getWidth(), e.getHeight()) > LARGEST_FIGURE * sheetPx
                || table
                || goesOn(outer)) {
            return;
        }
        for (Polygon part : cut(outer)) {
            add(part);
        }
        sidesOf(outer).forEach(p -> {
            used.add(p);
            joints.add(p.a);
            joints.add(p.b);
        });
    }

    /** Lines that meet around nothing go on past the corners; the sides of a symbol end there. */
    private boolean goesOn(Polygon ring) {
        Set<Piece> own = sidesOf(ring);
        Set<Joint> corners = new LinkedHashSet<>();
        own.forEach(p -> {
            corners.add(p.a);
            corners.add(p.b);
        });
        int past = 0;
        for (Joint j : corners) {
            List<Piece> here = j.pieces.stream().filter(own::contains).toList();
            boolean corner = here.size() == 2 && lineOf.get(here.get(0)) != lineOf.get(here.get(1));
            boolean on = corner
                    && j.pieces.stream()
                            .filter(p -> !own.contains(p) && lineOf.get(p) != null && p.length() > 2 * j.thick)
                            .filter(p -> !ring.covers(factory.createPoint(middle(p))))
                            .anyMatch(p -> here.stream().anyMatch(h -> lineOf.get(h) == lineOf.get(p)));
            past += on ? 1 : 0;
        }
        return past > 1;
    }

    private static Coordinate middle(Piece p) {
        return new Coordinate((p.a.x + p.b.x) / 2, (p.a.y + p.b.y) / 2);
    }

    /** The ring cut by its own sides where they go on inside. */
    private List<Polygon> cut(Polygon outer) {
        List<double[]> corners = corners(outer, width(sidesOf(outer)));
        Geometry net = outer.getExteriorRing();
        int n = corners.size();
        double turn = org.locationtech.jts.algorithm.Orientation.isCCW(
                        outer.getExteriorRing().getCoordinates())
                ? 1
                : -1;
        boolean any = false;
        double width = width(sidesOf(outer));
        for (int i = 0; i < n; i++) {
            double[] v = corners.get(i);
            double[] before = corners.get((i + n - 1) % n);
            double[] after = corners.get((i + 1) % n);
            double cross = (v[0] - before[0]) * (after[1] - v[1]) - (v[1] - before[1]) * (after[0] - v[0]);
            if (cross * turn < 0) {
                for (double[] from : new double[][] {before, after}) {
                    LineString inside = inside(from, v, outer);
                    if (inside != null && !isSliver(inside, outer, width)) {
                        net = net.union(inside);
                        any = true;
                    }
                }
            }
        }
        if (!any) {
            return List.of(outer);
        }
        Polygonizer parts = new Polygonizer();
        parts.add(net);
        return Fields.of(parts);
    }

    /** Along a side of the ring itself, which is hardly out of line: two boxes side by side. */
    private static boolean isSliver(LineString inside, Polygon outer, double width) {
        return outer.getExteriorRing().distance(inside.getCentroid()) < CUT * width + 1;
    }

    /** Where the side's line goes on past a corner, through the figure to its other side; null where it does not. */
    private LineString inside(double[] from, double[] v, Polygon outer) {
        double length = Math.hypot(v[0] - from[0], v[1] - from[1]);
        double dx = (v[0] - from[0]) / length;
        double dy = (v[1] - from[1]) / length;
        double reach = outer.getEnvelopeInternal().getWidth()
                + outer.getEnvelopeInternal().getHeight();
        Geometry ray = factory.createLineString(new Coordinate[] {
                    new Coordinate(v[0] + 0.01 * dx, v[1] + 0.01 * dy),
                    new Coordinate(v[0] + reach * dx, v[1] + reach * dy)
                })
                .intersection(outer);
        Geometry first = ray.getNumGeometries() == 0 ? null : ray.getGeometryN(0);
        if (!(first instanceof LineString s) || s.isEmpty()) {
            return null;
        }
        Coordinate end = s.getCoordinateN(s.getNumPoints() - 1);
        double along = Math.hypot(end.x - v[0], end.y - v[1]);
        double drawn = lineOf.values().stream()
                .distinct()
                .filter(l -> l.straight != null && Math.abs(l.straight.dx() * dx + l.straight.dy() * dy) > 0.999)
                .filter(l -> l.straight.aside(v[0], v[1]) < 1.5 && l.spans(v[0], v[1]))
                .mapToDouble(l -> l.reach(v[0], v[1], dx, dy))
                .max()
                .orElse(0);
        return drawn < along - 2
                ? null
                : factory.createLineString(new Coordinate[] {
                    new Coordinate(v[0], v[1]), new Coordinate(end.x + 0.01 * dx, end.y + 0.01 * dy)
                });
    }

    private double width(Set<Piece> sides) {
        double[] widths = sides.stream().mapToDouble(pen).sorted().toArray();
        return widths.length == 0 ? 1 : pens.nearest(widths[widths.length / 2]);
    }

    private void add(Polygon part) {
        Set<Piece> own = sidesOf(part);
        double width = width(own);
        // ink rounds a corner
        boolean curved = own.stream().anyMatch(p -> p.round != null && p.length() > ASKEW * width);
        List<double[]> box = box(part, width);
        List<double[]> points = new ArrayList<>();
        if (box != null) {
            points.addAll(box);
            curved = false;
        } else if (curved) {
            Coordinate[] c = part.getExteriorRing().getCoordinates();
            for (int i = 1; i < c.length; i++) {
                points.add(new double[] {c[i].x, c[i].y});
            }
        } else {
            points.addAll(sharp(corners(part, width), width));
        }
        if (points.size() > 2) {
            rings.add(new Ring(points, curved, width));
        }
    }

    /** The upright box that the ring is but for smudges at a corner or two; null where it is another shape. */
    private static List<double[]> box(Polygon part, double width) {
        Envelope e = part.getEnvelopeInternal();
        double slack = SMUDGE * width + 1;
        boolean along = Math.min(e.getWidth(), e.getHeight()) > 4 * slack;
        for (Coordinate c : part.getExteriorRing().getCoordinates()) {
            double off = Math.min(
                    Math.min(c.x - e.getMinX(), e.getMaxX() - c.x), Math.min(c.y - e.getMinY(), e.getMaxY() - c.y));
            along &= off < slack;
        }
        double lost = e.getArea() - part.getArea();
        double onePixel = Math.max(e.getWidth(), e.getHeight());
        return !along || lost > 2 * slack * slack + onePixel
                ? null
                : List.of(
                        new double[] {e.getMinX(), e.getMinY()},
                        new double[] {e.getMaxX(), e.getMinY()},
                        new double[] {e.getMaxX(), e.getMaxY()},
                        new double[] {e.getMinX(), e.getMaxY()});
    }

    /** Thinning cuts corners: a side no longer than the pen is wide gives way to the place where its neighbours cross. */
    private static List<double[]> sharp(List<double[]> corners, double width) {
        List<double[]> out = new ArrayList<>(corners);
        for (int i = 0; i < out.size() && out.size() > 3; i++) {
            int n = out.size();
            double[] a = out.get(i);
            double[] b = out.get((i + 1) % n);
            double length = Math.hypot(b[0] - a[0], b[1] - a[1]);
            double[] before = out.get((i + n - 1) % n);
            double[] after = out.get((i + 2) % n);
            if (length > ASKEW * width + 1) {
                continue;
            }
            double[] x = line(before, a).crossing(line(b, after));
            double near = x == null ? Double.MAX_VALUE : Math.hypot(x[0] - a[0], x[1] - a[1]);
            double far = x == null ? Double.MAX_VALUE : Math.hypot(x[0] - b[0], x[1] - b[1]);
            boolean cut = length < CUT * width + 1 && near < 3 * width + 2;
            // beside a line that meets a side next to the corner
            boolean askew = Math.min(near, far) < CUT * width && Math.max(near, far) < length + CUT * width;
            if (cut || askew) {
                out.set(i, x);
                out.remove((i + 1) % n);
            }
        }
        return out;
    }

    private static Straight line(double[] a, double[] b) {
        double length = Math.max(1e-9, Math.hypot(b[0] - a[0], b[1] - a[1]));
        return new Straight(a[0], a[1], (b[0] - a[0]) / length, (b[1] - a[1]) / length);
    }

    /** Without the places where something only meets a side, which thinning pulls towards it. */
    private static List<double[]> corners(Polygon p, double width) {
        double pulled = Math.max(PULLED_PX, PULLED * width);
        Coordinate[] c = p.getExteriorRing().getCoordinates();
        List<double[]> out = new ArrayList<>();
        for (int i = 1; i < c.length; i++) {
            out.add(new double[] {c[i].x, c[i].y});
        }
        for (boolean changed = true; changed && out.size() > 3; ) {
            changed = false;
            for (int i = 0; i < out.size() && out.size() > 3; i++) {
                double[] a = out.get((i + out.size() - 1) % out.size());
                double[] b = out.get(i);
                double[] d = out.get((i + 1) % out.size());
                double chord = Math.hypot(d[0] - a[0], d[1] - a[1]);
                double off =
                        Math.abs((b[0] - a[0]) * (d[1] - a[1]) - (b[1] - a[1]) * (d[0] - a[0])) / Math.max(1e-9, chord);
                if (off < pulled) {
                    out.remove(i--);
                    changed = true;
                }
            }
        }
        return out;
    }
}
