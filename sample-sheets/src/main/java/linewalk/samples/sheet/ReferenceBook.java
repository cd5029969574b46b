package linewalk.samples.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import linewalk.samples.machine.Heading;
import linewalk.samples.machine.Machine;
import linewalk.samples.machine.Misprint;
import linewalk.samples.machine.Reference;
import linewalk.samples.sheet.DrawnReference.Target;
import linewalk.samples.style.DraftingStyle;
import linewalk.samples.style.Grid;
import linewalk.samples.style.Zone;
import linewalk.samples.symbol.Spot;

/** What every reference says, once all of them have their places: zones are read off the style's own grid. */
final class ReferenceBook {
    private final Machine machine;
    private final DraftingStyle style;
    private final Map<Integer, Placement> placements;
    private final ReferenceRoom room;
    private final Map<String, Zone> zones = new HashMap<>();

    ReferenceBook(Machine machine, DraftingStyle style, Map<Integer, Placement> placements, Fonts fonts) {
        this.machine = machine;
        this.style = style;
        this.placements = placements;
        this.room = new ReferenceRoom(style, fonts);
        for (Reference reference : machine.references()) {
            Placement at = placements.get(reference.sheet());
            zones.put(reference.id(), at.zoneOf(at.pt(room.room(reference).centre())));
        }
    }

    /** Without the text's box, which is known when it is drawn. */
    DrawnReference drawn(Reference reference) {
        List<Target> targets = new ArrayList<>();
        List<Target> trueTargets = new ArrayList<>();
        List<String> mates = new ArrayList<>();
        for (String link : reference.links()) {
            Reference mate = machine.mate(reference, link);
            if (mate != null) {
                mates.add(mate.id());
            }
            Target right = mate == null ? null : target(mate);
            trueTargets.add(right);
            Target wrong = misprinted(reference, link, mate);
            targets.add(wrong != null ? wrong : right);
        }
        Placement at = placements.get(reference.sheet());
        Spot end = at.pt(reference.end());
        Heading way = reference.heading();
        boolean turns =
                way.upright() && !reference.isLetter() && style.references().turns();
        return new DrawnReference(
                reference,
                style.pageOf(reference.sheet()),
                null,
                null,
                zones.get(reference.id()),
                Wording.of(style, reference, targets),
                List.copyOf(targets),
                trueTargets.stream().filter(Objects::nonNull).toList(),
                reference.flow(),
                end.x(),
                end.y(),
                turns,
                reference.isLetter() ? "match-letter" : style.references().word(),
                List.copyOf(mates));
    }

    private Target target(Reference mate) {
        String sheet = style.sheetName(mate.sheet());
        return new Target(sheet, mate.isLetter() ? null : zones.get(mate.id()).name());
    }

    private Target misprinted(Reference reference, String link, Reference mate) {
        for (Misprint misprint : machine.misprints()) {
            if (misprint.link().equals(link) && misprint.sheet() == reference.sheet()) {
                return switch (misprint.kind()) {
                    case NOTHING_THERE -> new Target(style.sheetName(mate.sheet()), farFromAll(mate));
                    case NO_SUCH_SHEET ->
                        new Target(
                                style.sheetName(machine.sheets().size() + 2),
                                style.grid().zone(2, 1).name());
                    case NOT_RETURNED ->
                        new Target(
                                style.sheetName(misprint.otherSheet()),
                                zones.get(endOf(misprint).id()).name());
                    case NEXT_ZONE -> new Target(style.sheetName(mate.sheet()), beside(mate));
                    case LABEL_DIFFERS, FLOW_CLASH -> null;
                };
            }
        }
        return null;
    }

    private Reference endOf(Misprint misprint) {
        return machine.ends().get(misprint.otherLink()).stream()
                .filter(end -> end.sheet() == misprint.otherSheet())
                .findFirst()
                .orElseThrow();
    }

    /** The zone of the mate's sheet that is farthest from every reference there. */
    private String farFromAll(Reference mate) {
        Grid grid = style.grid();
        Zone best = null;
        int bestDistance = -1;
        for (int row = 0; row < grid.rowLabels().size(); row++) {
            for (int column = 0; column < grid.columnLabels().size(); column++) {
                Zone zone = grid.zone(column, row);
                int distance = taken(mate.sheet()).stream()
                        .mapToInt(other ->
                                Math.max(Math.abs(other.column() - zone.column()), Math.abs(other.row() - zone.row())))
                        .min()
                        .orElse(0);
                if (distance > bestDistance) {
                    bestDistance = distance;
                    best = zone;
                }
            }
        }
        return best.name();
    }

    private List<Zone> taken(int sheet) {
        return machine.references().stream()
                .filter(reference -> reference.sheet() == sheet)
                .map(reference -> zones.get(reference.id()))
                .toList();
    }

    /** A zone that shares a border with the mate's and holds no reference. */
    private String beside(Reference mate) {
        Grid grid = style.grid();
        Zone zone = zones.get(mate.id());
        int[][] steps = {{-1, 0}, {0, -1}, {0, 1}, {1, 0}};
        for (int[] step : steps) {
            int column = zone.column() + step[0];
            int row = zone.row() + step[1];
            boolean inside = column >= 0
                    && row >= 0
                    && column < grid.columnLabels().size()
                    && row < grid.rowLabels().size();
            if (inside && !taken(mate.sheet()).contains(grid.zone(column, row))) {
                return grid.zone(column, row).name();
            }
        }
        throw new IllegalStateException("every zone beside " + zone.name() + " is taken");
    }
}
