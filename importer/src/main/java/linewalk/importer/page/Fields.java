package linewalk.importer.page;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/**
 * The fields that sides enclose, in an order that follows from where they lie. The polygonizer keeps its edges by the hash
 * of the object: its fields come in another order, and their rings begin at another corner, in every run.
 */
public final class Fields {

    private Fields() {}

    /** Each ring begins at its least corner and runs clockwise. */
    public static List<Polygon> of(Polygonizer polygonizer) {
        List<Polygon> fields = new ArrayList<>();
        for (Object field : polygonizer.getPolygons()) {
            Polygon polygon = (Polygon) field;
            polygon.normalize();
            fields.add(polygon);
        }
        fields.sort(Polygon::compareTo);
        return fields;
    }
}
