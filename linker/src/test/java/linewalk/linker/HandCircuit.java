package linewalk.linker;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linewalk.drawing.Affine;
import linewalk.drawing.Box;
import linewalk.drawing.Component;
import linewalk.drawing.CycleChart;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.End;
import linewalk.drawing.HandTag;
import linewalk.drawing.Kind;
import linewalk.drawing.Line;
import linewalk.drawing.LineKind;
import linewalk.drawing.Origin;
import linewalk.drawing.PageKey;
import linewalk.drawing.Point;
import linewalk.drawing.Port;
import linewalk.drawing.Position;
import linewalk.drawing.Sheet;

/** A circuit solved on paper, as one sheet. */
final class HandCircuit {

    private static final PageKey PAGE = new PageKey("hand.pdf", 1);
    private static final Point NOWHERE = new Point(0, 0);

    final String name;
    final JsonNode json;
    final CycleChart chart;
    final DrawingSet set;

    HandCircuit(Path file) {
        this.name = file.getFileName().toString().replace(".json", "");
        this.json = Truths.read(file);
        this.chart = chart(json.get("chart").asText());
        Map<String, Component> components = new LinkedHashMap<>();
        json.get("components").forEach(c -> components.put(c.get("tag").asText(), component(c)));
        List<Line> lines = new ArrayList<>();
        json.get("lines").forEach(l -> lines.add(line(l)));
        Sheet sheet = new Sheet("1", PAGE, 400, 400, null, null, Origin.TEXT, null, Affine.IDENTITY);
        this.set = new DrawingSet(
                List.of(sheet), List.of(), List.copyOf(components.values()), List.of(), lines, List.of());
    }

    private static Component component(JsonNode c) {
        String tag = c.get("tag").asText();
        List<Port> ports = new ArrayList<>();
        Truths.texts(c.get("ports")).forEach(p -> ports.add(new Port(tag + ":" + p, p, NOWHERE)));
        String setting = c.get("setting").isNull() ? null : c.get("setting").asText();
        Component bare = new Component(
                tag,
                tag,
                PAGE,
                NOWHERE,
                Box.around(NOWHERE),
                Kind.find(c.get("kind").asText()).orElseThrow(),
                setting,
                Origin.TEXT,
                1,
                ports,
                List.of());
        List<Position> positions = new ArrayList<>();
        c.get("positions").forEach(p -> positions.add(position(bare, p)));
        return LineEdits.with(bare, ports, positions);
    }

    private static Position position(Component c, JsonNode p) {
        return new PassageNotation(c)
                .position(new HandTag.OfPosition(
                        c.tag(),
                        String.join(" ", Truths.texts(p.get("by"))),
                        p.get("how").asText(),
                        String.join(" ", Truths.texts(p.get("passages")))))
                .orElseThrow();
    }

    private static Line line(JsonNode l) {
        List<End> ends = new ArrayList<>();
        for (String e : Truths.texts(l.get("ends"))) {
            ends.add(new End.AtPort(e.substring(0, e.indexOf(':')), e, NOWHERE));
        }
        LineKind kind = LineKind.valueOf(l.get("kind").asText().toUpperCase(java.util.Locale.ROOT));
        return new Line(l.get("id").asText(), PAGE, kind, null, null, 1, ends, List.of());
    }

    private static CycleChart chart(String csv) {
        String[] rows = csv.strip().split("\n");
        List<String> columns = List.of(rows[0].split(","));
        List<CycleChart.Step> steps = new ArrayList<>();
        for (int i = 1; i < rows.length; i++) {
            String[] cells = rows[i].split(",");
            Set<String> on = new LinkedHashSet<>();
            for (int k = 2; k < cells.length; k++) {
                if (cells[k].equals("1")) {
                    on.add(columns.get(k));
                }
            }
            steps.add(new CycleChart.Step(cells[0], cells[1], on));
        }
        return new CycleChart(columns.subList(2, columns.size()), steps);
    }
}
