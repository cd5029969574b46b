package linewalk.linker;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import linewalk.drawing.Affine;
import linewalk.drawing.Box;
import linewalk.drawing.Component;
import linewalk.drawing.CycleChart;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.End;
import linewalk.drawing.Flow;
import linewalk.drawing.Kind;
import linewalk.drawing.Line;
import linewalk.drawing.LineKind;
import linewalk.drawing.Origin;
import linewalk.drawing.PageKey;
import linewalk.drawing.Passage;
import linewalk.drawing.Point;
import linewalk.drawing.Port;
import linewalk.drawing.Position;
import linewalk.drawing.Reference;
import linewalk.drawing.Sheet;

/** A drawing set as its truth tells it, without any reading or linking: what the tracer is measured on alone. */
final class TruthSet {

    final JsonNode truth;
    private final Map<String, String> settings;
    private final Map<String, Component> components = new LinkedHashMap<>();
    private final boolean portNames;

    /** @param portNames false leaves out the names of the pumps' ports, as drawings without letters do */
    TruthSet(Path folder, boolean portNames) {
        this.truth = Truths.read(folder.resolve("truth.json"));
        this.settings = settings(folder.resolve("parts.csv"));
        this.portNames = portNames;
    }

    private static Map<String, String> settings(Path parts) {
        Map<String, String> settings = new HashMap<>();
        try {
            for (String row : Files.readAllLines(parts)) {
                String[] cells = row.split(",", -1);
                settings.put(cells[0], cells[3]);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return settings;
    }

    CycleChart chart() {
        Set<String> solenoids = new LinkedHashSet<>();
        List<CycleChart.Step> steps = new ArrayList<>();
        for (JsonNode s : truth.get("states")) {
            List<String> on = Truths.texts(s.get("energised"));
            solenoids.addAll(on);
            steps.add(new CycleChart.Step(s.get("name").asText(), null, new HashSet<>(on)));
        }
        return new CycleChart(new ArrayList<>(solenoids), steps);
    }

    DrawingSet set() {
        List<Sheet> sheets = new ArrayList<>();
        truth.get("sheets")
                .forEach(s -> sheets.add(new Sheet(
                        s.get("sheet").asText(), page(s), 2384, 1684, null, null, Origin.TEXT, null, Affine.IDENTITY)));
        truth.get("components").forEach(c -> components.put(c.get("tag").asText(), component(c)));
        List<Line> lines = new ArrayList<>();
        truth.get("nets").forEach(n -> lines.add(line(n, "n" + lines.size())));
        return new DrawingSet(sheets, references(), List.copyOf(components.values()), List.of(), lines, List.of());
    }

    private static PageKey page(JsonNode x) {
        return new PageKey("set", x.get("page").asInt());
    }

    private Component component(JsonNode c) {
        String tag = c.get("tag").asText();
        String kindWord = c.get("kind").asText().equals("brake-cylinder")
                ? "brake"
                : c.get("kind").asText();
        Kind kind = Kind.find(kindWord).orElse(Kind.UNKNOWN);
        List<Port> ports = new ArrayList<>();
        c.get("ports").properties().forEach(p -> {
            String name = portNames || kind != Kind.PUMP ? p.getKey() : null;
            ports.add(new Port(
                    tag + ":" + p.getKey(),
                    name,
                    new Point(
                            p.getValue().get(0).asDouble(), p.getValue().get(1).asDouble())));
        });
        Point place = new Point(c.get("x").asDouble(), c.get("y").asDouble());
        return new Component(
                tag,
                tag,
                page(c),
                place,
                Box.around(place).grow(20),
                kind,
                settings.get(tag),
                Origin.TEXT,
                1,
                ports,
                kind == Kind.DIRECTIONAL_VALVE ? positions(tag) : List.of());
    }

    /** A position is brought about by what is energised in all states that have it and in none that are at rest. */
    private List<Position> positions(String tag) {
        Map<JsonNode, Set<String>> by = new LinkedHashMap<>();
        JsonNode rest = truth.get("states").get(0).get("passages").get(tag);
        Set<String> notHere = new HashSet<>();
        for (JsonNode s : truth.get("states")) {
            JsonNode passages = s.get("passages").get(tag);
            Set<String> on = new HashSet<>(Truths.texts(s.get("energised")));
            if (passages.equals(rest)) {
                notHere.addAll(on);
            } else {
                by.computeIfAbsent(passages, k -> new HashSet<>(on)).retainAll(on);
            }
        }
        List<Position> positions = new ArrayList<>();
        positions.add(new Position(List.of(Position.REST), Position.How.SPRING, passages(tag, rest)));
        by.forEach((passages, solenoids) -> {
            solenoids.removeAll(notHere);
            positions.add(new Position(List.copyOf(solenoids), Position.How.SOLENOID, passages(tag, passages)));
        });
        return positions;
    }

    private static List<Passage> passages(String tag, JsonNode pairs) {
        List<Passage> passages = new ArrayList<>();
        pairs.forEach(p -> passages.add(
                new Passage(tag + ":" + p.get(0).asText(), tag + ":" + p.get(1).asText(), false, false, null)));
        return passages;
    }

    private Line line(JsonNode net, String id) {
        List<End> ends = new ArrayList<>();
        for (String e : Truths.texts(net.get("ends"))) {
            Point nowhere = new Point(0, 0);
            ends.add(
                    e.contains(":")
                            ? new End.AtPort(e.substring(0, e.indexOf(':')), e, nowhere)
                            : new End.AtReference(e, nowhere));
        }
        String kind = net.get("kind").asText();
        LineKind lineKind = kind.equals("main") ? LineKind.WORKING : LineKind.valueOf(kind.toUpperCase(Locale.ROOT));
        return new Line(id, page(net), lineKind, null, null, 1, ends, List.of());
    }

    private List<Reference> references() {
        Map<String, List<String>> mates = new HashMap<>();
        for (JsonNode p : truth.get("pairs")) {
            mates.computeIfAbsent(p.get(0).asText(), k -> new ArrayList<>())
                    .add(p.get(1).asText());
            mates.computeIfAbsent(p.get(1).asText(), k -> new ArrayList<>())
                    .add(p.get(0).asText());
        }
        List<Reference> references = new ArrayList<>();
        for (JsonNode r : truth.get("references")) {
            String id = r.get("id").asText();
            Point place = new Point(r.get("x").asDouble(), r.get("y").asDouble());
            references.add(new Reference(
                    id,
                    page(r),
                    place,
                    Box.around(place).grow(10),
                    null,
                    r.get("text").asText(),
                    List.of(),
                    Truths.text(r, "label"),
                    Flow.valueOf(r.get("flow").asText().toUpperCase(Locale.ROOT)),
                    Origin.TEXT,
                    1,
                    mates.getOrDefault(id, List.of()),
                    mates.containsKey(id) ? 1 : 0));
        }
        return references;
    }
}
