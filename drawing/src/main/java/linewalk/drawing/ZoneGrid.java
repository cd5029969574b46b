package linewalk.drawing;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The border grid of one sheet. Columns run left to right and rows top to bottom as the sheet reads, whatever the
 * direction of their labels; labels are as printed.
 *
 * @param printed false where the labels are not printed and the settings named a standard grid
 * @param toGrid from points as displayed to those in which the bands run level and upright: a scan may lie askew, or on
 *     its side
 */
public record ZoneGrid(List<Band> columns, List<Band> rows, boolean printed, Affine toGrid) {

    /** One column or row: its label and its extent along the axis. */
    public record Band(String label, double fromPt, double toPt) {}

    @JsonCreator
    public ZoneGrid {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        toGrid = toGrid == null ? Affine.IDENTITY : toGrid;
    }

    /** A grid that lies as the page is displayed. */
    public ZoneGrid(List<Band> columns, List<Band> rows, boolean printed) {
        this(columns, rows, printed, Affine.IDENTITY);
    }

    public Optional<Zone> zoneAt(Point p) {
        Point on = toGrid.apply(p);
        return bandAt(columns, on.xPt()).flatMap(c -> bandAt(rows, on.yPt()).flatMap(r -> zone(c, r)));
    }

    public boolean has(Zone zone) {
        return box(zone).isPresent();
    }

    /** The upright box around the field on the page. */
    public Optional<Box> box(Zone zone) {
        OptionalInt c = index(columns, zone);
        OptionalInt r = index(rows, zone);
        if (c.isEmpty() || r.isEmpty()) {
            return Optional.empty();
        }
        Band column = columns.get(c.getAsInt());
        Band row = rows.get(r.getAsInt());
        return Optional.of(toGrid.inverse().apply(new Box(column.fromPt(), row.fromPt(), column.toPt(), row.toPt())));
    }

    /** How many fields lie between two zones, counting diagonal neighbours as 1; empty where one is not in this grid. */
    public OptionalInt steps(Zone a, Zone b) {
        OptionalInt ca = index(columns, a);
        OptionalInt cb = index(columns, b);
        OptionalInt ra = index(rows, a);
        OptionalInt rb = index(rows, b);
        if (ca.isEmpty() || cb.isEmpty() || ra.isEmpty() || rb.isEmpty()) {
            return OptionalInt.empty();
        }
        return OptionalInt.of(
                Math.max(Math.abs(ca.getAsInt() - cb.getAsInt()), Math.abs(ra.getAsInt() - rb.getAsInt())));
    }

    @JsonIgnore
    public Box extent() {
        return toGrid.inverse()
                .apply(new Box(
                        columns.get(0).fromPt(),
                        rows.get(0).fromPt(),
                        columns.get(columns.size() - 1).toPt(),
                        rows.get(rows.size() - 1).toPt()));
    }

    /** A place just outside counts to the edge field: drafters let line ends touch the frame. */
    private static Optional<Band> bandAt(List<Band> bands, double atPt) {
        Band nearest = null;
        double gap = Double.MAX_VALUE;
        for (Band b : bands) {
            double d = Math.max(Math.max(b.fromPt() - atPt, 0), atPt - b.toPt());
            if (d < gap) {
                gap = d;
                nearest = b;
            }
        }
        return Optional.ofNullable(nearest);
    }

    private static Optional<Zone> zone(Band column, Band row) {
        return Zone.parse(row.label() + column.label());
    }

    private static OptionalInt index(List<Band> bands, Zone zone) {
        for (int i = 0; i < bands.size(); i++) {
            String label = bands.get(i).label();
            if (label.equals(zone.letters()) || plainNumber(label).equals(zone.digits())) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    private static String plainNumber(String label) {
        return label.replaceFirst("^0+(?=\\d)", "");
    }
}
