package linewalk.linker;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linewalk.drawing.Affine;
import linewalk.drawing.Component;
import linewalk.drawing.Enclosure;
import linewalk.drawing.Finding;
import linewalk.drawing.Line;
import linewalk.drawing.Origin;
import linewalk.drawing.PageKey;
import linewalk.drawing.Point;
import linewalk.drawing.ReferenceReading;
import linewalk.drawing.Sheet;
import linewalk.drawing.SheetReading;
import linewalk.drawing.Zone;
import linewalk.drawing.ZoneGrid;

/** One page while it is being linked: what was read, changed step by step by tags and by the rest of the set. */
final class PageDraft {

    final SheetReading reading;
    final PageKey page;
    final List<ReferenceReading> candidates = new ArrayList<>();
    final List<Component> components = new ArrayList<>();
    final List<Enclosure> enclosures = new ArrayList<>();
    final List<Line> lines = new ArrayList<>();
    final List<Finding> doubts = new ArrayList<>();

    String idPrefix = "";
    String name;
    String title;
    String revision;
    Origin origin;
    private ZoneGrid grid;
    private Zone[][] zones;
    private final Map<String, Integer> columnOf = new HashMap<>();
    private final Map<String, Integer> rowOf = new HashMap<>();
    private boolean lettersAcross;

    PageDraft(SheetReading reading) {
        this.reading = reading;
        this.page = reading.page();
        this.title = reading.title();
        this.revision = reading.revision();
        grid(reading.grid());
    }

    ZoneGrid grid() {
        return grid;
    }

    void grid(ZoneGrid value) {
        boolean empty =
                value == null || value.columns().isEmpty() || value.rows().isEmpty();
        grid = empty ? null : value;
        columnOf.clear();
        rowOf.clear();
        zones = null;
        if (grid != null) {
            zones = zones(value);
            index(value.columns(), columnOf);
            index(value.rows(), rowOf);
            lettersAcross = value.columns().stream()
                    .anyMatch(b ->
                            !b.label().isEmpty() && Character.isLetter(b.label().charAt(0)));
        }
    }

    /** The grid's own zones, each made once: parsing labels for every thing on the page would take long. */
    private static Zone[][] zones(ZoneGrid grid) {
        Zone[][] zones = new Zone[grid.rows().size()][grid.columns().size()];
        for (int r = 0; r < zones.length; r++) {
            for (int c = 0; c < zones[r].length; c++) {
                zones[r][c] = Zone.parse(grid.rows().get(r).label()
                                + grid.columns().get(c).label())
                        .orElse(null);
            }
        }
        return zones;
    }

    /** As {@link ZoneGrid#zoneAt}: a place just outside counts to the edge field. */
    private static int nearest(List<ZoneGrid.Band> bands, double atPt) {
        int nearest = 0;
        double gapPt = Double.MAX_VALUE;
        for (int i = 0; i < bands.size(); i++) {
            ZoneGrid.Band b = bands.get(i);
            double d = Math.max(Math.max(b.fromPt() - atPt, 0), atPt - b.toPt());
            if (d < gapPt) {
                gapPt = d;
                nearest = i;
            }
        }
        return nearest;
    }

    private static void index(List<ZoneGrid.Band> bands, Map<String, Integer> at) {
        for (int i = 0; i < bands.size(); i++) {
            at.putIfAbsent(Names.sheetKey(bands.get(i).label()), i);
        }
    }

    Optional<Zone> zoneAt(Point place) {
        if (grid == null) {
            return Optional.empty();
        }
        Point on = grid.toGrid().apply(place);
        return Optional.ofNullable(zones[nearest(grid.rows(), on.yPt())][nearest(grid.columns(), on.xPt())]);
    }

    boolean has(Zone zone) {
        return column(zone) != null && row(zone) != null;
    }

    private Integer column(Zone z) {
        return columnOf.get(lettersAcross ? z.letters() : z.digits());
    }

    private Integer row(Zone z) {
        return rowOf.get(lettersAcross ? z.digits() : z.letters());
    }

    /** Fields between two zones of this sheet, diagonal neighbours 1; a large number where one is not in its grid. */
    int steps(Zone a, Zone b) {
        if (!has(a) || !has(b)) {
            return Integer.MAX_VALUE;
        }
        return Math.max(Math.abs(column(a) - column(b)), Math.abs(row(a) - row(b)));
    }

    /** The zones one step around, and the zone itself. */
    List<Zone> around(Zone zone) {
        List<Zone> near = new ArrayList<>();
        if (!has(zone)) {
            return near;
        }
        for (int c = column(zone) - 1; c <= column(zone) + 1; c++) {
            for (int r = row(zone) - 1; r <= row(zone) + 1; r++) {
                if (c >= 0
                        && r >= 0
                        && c < grid.columns().size()
                        && r < grid.rows().size()) {
                    Optional.ofNullable(zones[r][c]).ifPresent(near::add);
                }
            }
        }
        return near;
    }

    /** Where a thing stands, in the words of the drawings. */
    String address(Point place) {
        return "sheet " + name + zoneAt(place).map(z -> ", " + z).orElse("");
    }

    double largerSidePt() {
        return Math.max(reading.widthPt(), reading.heightPt());
    }

    Sheet sheet() {
        Affine toPage = reading.toPage() == null ? Affine.IDENTITY : reading.toPage();
        return new Sheet(name, page, reading.widthPt(), reading.heightPt(), title, revision, origin, grid, toPage);
    }
}
