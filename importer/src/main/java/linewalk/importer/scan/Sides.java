package linewalk.importer.scan;

import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linewalk.importer.page.Fields;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateList;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/** The fields that pieces enclose, and which pieces are whose sides. */
final class Sides {

    /** A bow this short, in widths of the pen, is a corner. */
    private static final double CUT = 1.6;

    private final Map<Set<Coordinate>, Piece> sides = new HashMap<>();
    private final List<Polygon> fields;

    Sides(Collection<Piece> pieces) {
        GeometryFactory factory = new GeometryFactory();
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
        fields = Fields.of(polygonizer);
    }

    List<Polygon> fields() {
        return fields;
    }

    /** The pieces that a field, or several of them together, is bounded by. */
    Set<Piece> of(Polygon field) {
        Coordinate[] c = field.getExteriorRing().getCoordinates();
        Set<Piece> out = new LinkedHashSet<>();
        for (int i = 1; i < c.length; i++) {
            Piece side = sides.get(Set.of(c[i - 1], c[i]));
            if (side != null) {
                out.add(side);
            }
        }
        return out;
    }

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
}
