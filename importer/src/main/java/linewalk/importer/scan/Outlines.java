package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import linewalk.importer.scan.Piece.Joint;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/**
 * Closed shapes among lines. On a vector page a box is drawn as a box; a scan only shows lines that meet. Small fields
 * between lines of one pen that share a side are one figure; its outer ring is closed, and cut where a side goes on
 * inside it.
 */
final class Outlines {

    /** Fields and figures are small against the sheet: larger ones are made by lines that meet again. */
    private static final double LARGEST_FIELD = 0.07;

    private static final double LARGEST_FIGURE = 0.2;

    /** Fields of a figure that lines join to another, the least share of its hull that it fills, and the most that both do. */
    private static final int LEAST_FIELDS = 2;

    private static final double COMPACT = 0.8;

    private static final double LOOSE = 0.75;

    /** Least length of a field between two lines, in its widths, and the most of its box that it fills. */
    private static final double SLIM = 3;

    private static final double WINDING = 0.7;

    private final Sides sides;
    private final ToDoubleFunction<Piece> pen;
    private final Pens pens;
    private final Map<Piece, Line> lineOf;
    private final double largestPx;
    private final Predicate<Envelope> lettered;
    private final RingCuts cuts;
    private final GeometryFactory factory = new GeometryFactory();
    private final List<Ring> rings = new ArrayList<>();
    private final Set<Piece> used = new LinkedHashSet<>();
    private final Set<Joint> joints = Collections.newSetFromMap(new IdentityHashMap<>());

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
        this.sides = new Sides(pieces);
        this.pen = pen;
        this.pens = pens;
        this.lineOf = lineOf;
        this.largestPx = LARGEST_FIGURE * sheetPx;
        this.lettered = lettered;
        this.cuts = new RingCuts(lineOf.values());
        FigureFields fields =
                new FigureFields(sides, new OnePen(sides, lineOf, pen, lettered), LARGEST_FIELD * sheetPx);
        for (List<Polygon> group : fields.groups(fields.of(largestPx))) {
            List<List<Polygon>> apart = apart(group, fields);
            if (!apart.isEmpty()) {
                apart.forEach(g -> peeled(g, fields));
            } else if (!figure(group)) {
                // what was forgiven beside it may be no part of the figure
                fields.groups(fields.sure(group)).forEach(g -> peeled(g, fields));
            }
        }
    }

    /** Two figures and the field between the lines that join them; nothing where the group is one figure. */
    private static List<List<Polygon>> apart(List<Polygon> group, FigureFields fields) {
        if (group.size() < 2 * LEAST_FIELDS || filled(group) > LOOSE) {
            return List.of();
        }
        List<Polygon> rest = new ArrayList<>(group);
        rest.remove(Collections.max(group, Comparator.comparingDouble(FigureFields::size)));
        List<List<Polygon>> parts = fields.groups(rest);
        boolean figures = parts.stream()
                        .filter(g -> g.size() >= LEAST_FIELDS && filled(g) > COMPACT)
                        .count()
                > 1;
        return figures ? parts : List.of();
    }

    /** The share of their hull that fields fill. */
    private static double filled(List<Polygon> fields) {
        Geometry whole = UnaryUnionOp.union(fields);
        return whole.getArea() / whole.convexHull().getArea();
    }

    /**
     * Lines of the figures' own pen that run side by side make fields too: without those that stick out farthest, the rest
     * may be a figure.
     */
    private void peeled(List<Polygon> group, FigureFields fields) {
        if (figure(group) || group.size() < 2) {
            return;
        }
        double most = filled(group);
        List<Polygon> best = List.of();
        for (Polygon f : group) {
            List<Polygon> rest = new ArrayList<>(group);
            rest.remove(f);
            double left = between(f) ? filled(rest) : 0;
            if (left > most) {
                most = left;
                best = rest;
            }
        }
        fields.groups(best).forEach(g -> peeled(g, fields));
    }

    /** What two lines enclose is long, or winds: a square of the figure does neither. */
    private static boolean between(Polygon field) {
        Envelope e = field.getEnvelopeInternal();
        double shorter = Math.min(e.getWidth(), e.getHeight());
        return Math.max(e.getWidth(), e.getHeight()) > SLIM * shorter || field.getArea() < WINDING * e.getArea();
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

    /** False where they make up none. */
    private boolean figure(List<Polygon> fields) {
        Geometry whole = fields.size() == 1 ? fields.get(0) : UnaryUnionOp.union(fields);
        Envelope e = whole.getEnvelopeInternal();
        long texts = fields.stream()
                .filter(f -> lettered.test(f.getEnvelopeInternal()))
                .count();
        boolean table = texts > 2 && 2 * texts > fields.size();
        if (!(whole instanceof Polygon outer)
                || Math.max(e.getWidth(), e.getHeight()) > largestPx
                || table
                || goesOn(outer)) {
            return false;
        }
        Set<Piece> own = sides.of(outer);
        for (Polygon part : cuts.cut(outer, width(own))) {
            add(part);
        }
        own.forEach(p -> {
            used.add(p);
            joints.add(p.a);
            joints.add(p.b);
        });
        return true;
    }

    /** Lines that meet around nothing go on past the corners; the sides of a symbol end there. */
    private boolean goesOn(Polygon ring) {
        Set<Piece> own = sides.of(ring);
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

    private double width(Set<Piece> sides) {
        double[] widths = sides.stream().mapToDouble(pen).sorted().toArray();
        return widths.length == 0 ? 1 : pens.nearest(widths[widths.length / 2]);
    }

    private void add(Polygon part) {
        Set<Piece> own = sides.of(part);
        double width = width(own);
        // ink rounds a corner
        boolean curved = own.stream().anyMatch(p -> p.round != null && p.length() > RingShape.ASKEW * width);
        List<double[]> box = RingShape.box(part, width);
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
            points.addAll(RingShape.sharp(RingShape.corners(part, width), width));
        }
        if (points.size() > 2) {
            rings.add(new Ring(points, curved, width));
        }
    }
}
