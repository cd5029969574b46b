package linewalk.linker;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import linewalk.drawing.Affine;
import linewalk.drawing.Box;
import linewalk.drawing.Component;
import linewalk.drawing.End;
import linewalk.drawing.Flow;
import linewalk.drawing.Kind;
import linewalk.drawing.Line;
import linewalk.drawing.LineKind;
import linewalk.drawing.Origin;
import linewalk.drawing.PageKey;
import linewalk.drawing.Point;
import linewalk.drawing.Port;
import linewalk.drawing.ReferenceReading;
import linewalk.drawing.SheetReading;
import linewalk.drawing.Target;
import linewalk.drawing.Zone;
import linewalk.drawing.ZoneGrid;

/** What a perfect importer would read of a truth's pages: references, parts and lines, but nothing of other sheets. */
final class TruthReadings {

    private static final double WIDTH_PT = 1600;
    private static final double HEIGHT_PT = 1200;

    private final JsonNode truth;
    private final Map<Integer, JsonNode> sheets = new LinkedHashMap<>();

    TruthReadings(JsonNode truth) {
        this.truth = truth;
        truth.get("sheets").forEach(s -> sheets.put(s.get("page").asInt(), s));
    }

    List<SheetReading> readings() {
        Map<String, Point> lineEnds = new HashMap<>();
        List<SheetReading> readings = new ArrayList<>();
        for (JsonNode s : sheets.values()) {
            int page = s.get("page").asInt();
            List<ReferenceReading> references = new ArrayList<>();
            for (JsonNode r : truth.get("references")) {
                if (r.get("page").asInt() == page) {
                    references.add(reference(r, s));
                    lineEnds.put(
                            r.get("id").asText(),
                            references.get(references.size() - 1).place());
                }
            }
            readings.add(reading(s, page, references, lineEnds));
        }
        return readings;
    }

    private SheetReading reading(JsonNode s, int page, List<ReferenceReading> references, Map<String, Point> lineEnds) {
        List<Component> components = new ArrayList<>();
        truth.path("components").forEach(c -> {
            if (c.get("page").asInt() == page) {
                components.add(component(c));
            }
        });
        List<Line> lines = new ArrayList<>();
        truth.path("nets").forEach(n -> {
            if (n.get("page").asInt() == page) {
                lines.add(line(n, "n" + lines.size(), lineEnds));
            }
        });
        return new SheetReading(
                new PageKey("set.pdf", page),
                WIDTH_PT,
                HEIGHT_PT,
                Affine.IDENTITY,
                List.of(new SheetReading.Name(s.get("sheet").asText(), 0.97, "title block")),
                null,
                null,
                null,
                null,
                grid(s),
                references,
                components,
                List.of(),
                lines,
                List.of());
    }

    /** Equal fields wherever the truth's zones lie: the linker sees zones only through the grid. */
    private static ZoneGrid grid(JsonNode s) {
        return s.hasNonNull("zone_columns")
                ? new ZoneGrid(
                        StandardGrid.split(Truths.texts(s.get("zone_columns")), 0, WIDTH_PT),
                        StandardGrid.split(Truths.texts(s.get("zone_rows")), 0, HEIGHT_PT),
                        true)
                : null;
    }

    /** Stands in the middle of the truth's zone. */
    private static ReferenceReading reference(JsonNode r, JsonNode sheet) {
        ZoneGrid grid = grid(sheet);
        String zone = Truths.text(r, "zone") == null ? Truths.text(r, "connector_zone") : Truths.text(r, "zone");
        Point place = new Point(r.get("x").asDouble(), r.get("y").asDouble());
        if (grid != null && zone != null) {
            place = Zone.parse(zone).flatMap(grid::box).map(Box::center).orElse(place);
        }
        List<String> sheets = Truths.oneOrMore(r.get("to_sheet"));
        List<String> zones = Truths.oneOrMore(r.get("to_zone"));
        List<Target> targets = new ArrayList<>();
        for (int i = 0; i < sheets.size(); i++) {
            Zone z = zones.isEmpty()
                    ? null
                    : Zone.parse(zones.get(Math.min(i, zones.size() - 1))).orElse(null);
            targets.add(new Target(sheets.get(i), z));
        }
        String text = r.get("text").asText();
        String letter = "match-letter".equals(Truths.text(r, "style")) ? text.substring(0, 1) : null;
        String number = Truths.text(r, "connector_number");
        String label = letter != null ? letter : number != null ? number : Truths.text(r, "label");
        return new ReferenceReading(
                r.get("id").asText(),
                place,
                Box.around(place).grow(1),
                text,
                text.replaceAll("\\p{L}+", "A").replaceAll("\\d+", "N"),
                List.of(new ReferenceReading.Says(targets, 0.98)),
                label,
                r.hasNonNull("flow") ? Flow.valueOf(r.get("flow").asText().toUpperCase(Locale.ROOT)) : Flow.UNKNOWN,
                Flow.UNKNOWN,
                Set.of(ReferenceReading.Evidence.LINE_END),
                Origin.TEXT,
                0.95);
    }

    private static Component component(JsonNode c) {
        String tag = c.get("tag").asText();
        List<Port> ports = new ArrayList<>();
        c.get("ports")
                .properties()
                .forEach(p -> ports.add(new Port(tag + ":" + p.getKey(), p.getKey(), new Point(0, 0))));
        Point place = new Point(c.get("x").asDouble(), c.get("y").asDouble());
        return new Component(
                tag,
                tag,
                new PageKey("set.pdf", c.get("page").asInt()),
                place,
                Box.around(place).grow(20),
                Kind.find(c.get("kind").asText()).orElse(Kind.UNKNOWN),
                null,
                Origin.TEXT,
                1,
                ports,
                List.of());
    }

    private Line line(JsonNode net, String id, Map<String, Point> lineEnds) {
        List<End> ends = new ArrayList<>();
        for (String e : Truths.texts(net.get("ends"))) {
            ends.add(
                    e.contains(":")
                            ? new End.AtPort(e.substring(0, e.indexOf(':')), e, new Point(0, 0))
                            : new End.AtReference(e, lineEnds.get(e)));
        }
        int page = net.get("page").asInt();
        for (JsonNode open : net.path("open_ends")) {
            ends.add(new End.Open(scaled(open)));
        }
        String kind = net.get("kind").asText();
        LineKind lineKind = kind.equals("main") ? LineKind.WORKING : LineKind.valueOf(kind.toUpperCase(Locale.ROOT));
        return new Line(id, new PageKey("set.pdf", page), lineKind, null, null, 1, ends, List.of());
    }

    /** The truth's open ends are points of an A1 sheet. */
    private static Point scaled(JsonNode open) {
        return new Point(open.get(0).asDouble() / 2384 * WIDTH_PT, open.get(1).asDouble() / 1684 * HEIGHT_PT);
    }
}
