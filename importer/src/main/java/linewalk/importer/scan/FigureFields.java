package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/** Fields that may be parts of figures: small ones of one pen, those beside them of nearly one, and long barrels. */
final class FigureFields {

    /** Least share of its hull that a box fills. */
    private static final double BOX = 0.97;

    private final Sides sides;
    private final OnePen pen;

    private final double mostPx;

    /** @param mostPx how large a field is at most; larger ones are made by lines that meet again */
    FigureFields(Sides sides, OnePen pen, double mostPx) {
        this.sides = sides;
        this.pen = pen;
        this.mostPx = mostPx;
    }

    /** @param largestPx no field is larger, barrels included */
    List<Polygon> of(double largestPx) {
        List<Polygon> all = sides.fields().stream()
                .filter(p -> p.getNumInteriorRing() == 0 && size(p) < largestPx)
                .toList();
        List<Polygon> fields = new ArrayList<>(sure(all));
        Set<Piece> known = new LinkedHashSet<>();
        fields.forEach(p -> known.addAll(sides.of(p)));
        List<Polygon> others = all.stream()
                .filter(p -> !fields.contains(p) && pen.nearlyAround(p))
                .toList();
        others.stream()
                .filter(p -> isSmall(p) && sides.of(p).stream().anyMatch(known::contains))
                .forEach(fields::add);
        parted(others(all, fields)).stream().filter(p -> !fields.contains(p)).forEach(fields::add);
        fields.addAll(barrels(fields, others.stream().filter(p -> !isSmall(p)).toList()));
        return fields;
    }

    /** Those that need no other beside them. */
    List<Polygon> sure(List<Polygon> fields) {
        return fields.stream().filter(p -> isSmall(p) && pen.around(p)).toList();
    }

    static double size(Polygon p) {
        Envelope e = p.getEnvelopeInternal();
        return Math.max(e.getWidth(), e.getHeight());
    }

    private boolean isSmall(Polygon p) {
        return size(p) < mostPx;
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

    private List<Polygon> others(List<Polygon> all, List<Polygon> fields) {
        return all.stream().filter(p -> isSmall(p) && !fields.contains(p)).toList();
    }

    /** Halves of a figure of one pen that a line of another goes through from corner to corner: a cooler. */
    private List<Polygon> parted(List<Polygon> others) {
        List<Polygon> found = new ArrayList<>();
        for (List<Polygon> pair : groups(others)) {
            Geometry whole = pair.size() == 2 ? UnaryUnionOp.union(pair) : null;
            if (whole instanceof Polygon figure
                    && isSmall(figure)
                    && figure.getArea() > BOX * figure.convexHull().getArea()
                    && pen.around(figure)) {
                found.addAll(pair);
            }
        }
        return found;
    }

    private static boolean isBox(Geometry g) {
        return g instanceof Polygon && g.getArea() > BOX * g.getEnvelope().getArea();
    }

    /** Fields that share a side. */
    List<List<Polygon>> groups(List<Polygon> fields) {
        Map<Piece, List<Polygon>> beside = new IdentityHashMap<>();
        for (Polygon p : fields) {
            sides.of(p).forEach(s -> beside.computeIfAbsent(s, k -> new ArrayList<>())
                    .add(p));
        }
        List<List<Polygon>> groups = new ArrayList<>();
        Set<Polygon> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        for (Polygon start : fields) {
            if (seen.add(start)) {
                List<Polygon> group = new ArrayList<>(List.of(start));
                for (int i = 0; i < group.size(); i++) {
                    for (Piece s : sides.of(group.get(i))) {
                        beside.get(s).stream().filter(seen::add).forEach(group::add);
                    }
                }
                groups.add(group);
            }
        }
        return groups;
    }
}
