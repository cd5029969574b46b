package linewalk.renderer;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
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
import linewalk.drawing.Part;
import linewalk.drawing.Passage;
import linewalk.drawing.Point;
import linewalk.drawing.Port;
import linewalk.drawing.Position;
import linewalk.drawing.Reference;
import linewalk.drawing.Sheet;
import linewalk.drawing.Zone;
import linewalk.drawing.ZoneGrid;
import linewalk.linker.Leg;
import linewalk.linker.Question;
import linewalk.linker.Trace;
import linewalk.renderer.ink.Palette;

/**
 * Jobs over the six sheets of a stage lift, from their truth: paths are the true ones, courses of lines are only
 * guessed (straight or with one bend). The drawings lie outside the repository.
 */
final class StageLift {

    private static final double FIELD_PT = 141.732;
    private static final String SOURCE = "set-d.pdf";

    private final Path folder;
    private final JsonNode truth;
    private final Map<String, Component> components = new LinkedHashMap<>();
    private final Map<String, Reference> references = new LinkedHashMap<>();
    private final Map<String, Point> lineEnds = new HashMap<>();
    private final List<Sheet> sheets = new ArrayList<>();

    private StageLift(Path folder) throws IOException {
        this.folder = folder;
        truth = new ObjectMapper().readTree(folder.resolve("truth.json").toFile());
        truth.get("sheets").forEach(this::sheet);
        truth.get("components").forEach(this::component);
        truth.get("references").forEach(this::reference);
    }

    /** The folder beside the repository, or null. */
    static Path folder() {
        for (Path p = Path.of("").toAbsolutePath(); p != null; p = p.getParent()) {
            Path f = p.resolve("shared/drawings/set-d");
            if (Files.exists(f.resolve("truth.json"))) {
                return f;
            }
        }
        return null;
    }

    static StageLift load() throws IOException {
        return new StageLift(folder());
    }

    /** The n-th path of the truth. */
    PrintJob job(int path, Look look, Paper paper) throws IOException {
        JsonNode p = truth.get("paths").get(path);
        CycleChart.Step step = step(p.get("state").asText());
        List<String> via = new ArrayList<>();
        p.get("via").forEach(v -> via.add(v.asText()));
        List<Line> lines = new ArrayList<>();
        List<Leg> legs = legs(via, p.get("state").asText(), lines);
        List<String> passed = new ArrayList<>();
        p.get("sheets").forEach(s -> passed.add(s.asText()));
        List<String> ask = new ArrayList<>();
        p.get("ask_via").forEach(a -> ask.add(a.asText()));
        Question q = new Question(p.get("from").asText(), ask, p.get("to").asText(), step.number(), false, false, 1);
        Wiring wiring = new Wiring(legs);
        Map<String, Reference> mated = new java.util.LinkedHashMap<>(references);
        mated.replaceAll((k, r) -> wiring.references.getOrDefault(r.id(), r));
        DrawingSet set = new DrawingSet(
                sheets,
                List.copyOf(mated.values()),
                List.copyOf(components.values()),
                List.of(),
                wiring.lines(),
                List.of());
        Map<String, Integer> items = new HashMap<>();
        components.keySet().forEach(tag -> items.put(tag, items.size() + 1));
        return new PrintJob(
                new SetFacts(
                        "Stage lift and revolve, hydraulic installation",
                        set,
                        items,
                        parts(),
                        folder::resolve,
                        Palette.OWN),
                Subject.of(new Trace(q, wiring.legs, passed, List.of())),
                Moment.named(step),
                new PrintForm(paper, Turn.FITTING, look, Set.of()),
                LocalDate.of(2026, 3, 5));
    }

    private List<Leg> legs(List<String> via, String state, List<Line> lines) {
        List<Leg> legs = new ArrayList<>();
        for (int i = 0; i < via.size(); i++) {
            String at = via.get(i);
            String before = i == 0 ? null : via.get(i - 1);
            String after = i == via.size() - 1 ? null : via.get(i + 1);
            if (components.containsKey(at)) {
                legs.add(through(components.get(at), before, after));
            } else if (after != null && references.containsKey(after) && pageOf(at) != pageOf(after)) {
                legs.add(new Leg.Across(references.get(at), references.get(after)));
                continue;
            }
            if (after != null) {
                legs.add(along(at, after, lines));
            }
        }
        return legs;
    }

    private int pageOf(String at) {
        return references.containsKey(at)
                ? references.get(at).page().page()
                : components.get(at).page().page();
    }

    private Leg.Through through(Component c, String before, String after) {
        Port in = before == null ? null : port(c, before);
        Port out = after == null ? null : port(c, after);
        Passage passage = null;
        if (in != null && out != null) {
            for (Position pos : c.positions()) {
                for (Passage p : pos.passages()) {
                    if (p.from().equals(in.id()) && p.to().equals(out.id())) {
                        passage = p;
                    }
                }
            }
        }
        return new Leg.Through(c, in, out, passage, null);
    }

    /** The port whose net also holds the neighbour. */
    private Port port(Component c, String neighbour) {
        for (JsonNode net : truth.get("nets")) {
            String mine = null;
            boolean other = false;
            for (JsonNode end : net.get("ends")) {
                String e = end.asText();
                if (e.startsWith(c.tag() + ":")) {
                    mine = e;
                } else if (e.equals(neighbour) || e.startsWith(neighbour + ":")) {
                    other = true;
                }
            }
            if (mine != null && other) {
                return c.findPort(mine).orElseThrow();
            }
        }
        throw new IllegalStateException(c.tag() + " beside " + neighbour);
    }

    private Leg.Along along(String from, String to, List<Line> lines) {
        End a = end(from, to);
        End b = end(to, from);
        Point p = a.place();
        Point q = b.place();
        Point bend = components.containsKey(from) ? new Point(p.xPt(), q.yPt()) : new Point(q.xPt(), p.yPt());
        String label = references.containsKey(from)
                ? references.get(from).label()
                : references.containsKey(to) ? references.get(to).label() : null;
        PageKey page = new PageKey(SOURCE, pageOf(from));
        Line line = new Line(
                "n" + lines.size(),
                page,
                LineKind.WORKING,
                label,
                null,
                1,
                List.of(a, b),
                List.of(List.of(p, bend, q)));
        lines.add(line);
        return new Leg.Along(line, a, b);
    }

    private End end(String at, String other) {
        if (references.containsKey(at)) {
            return new End.AtReference(at, lineEnds.get(at));
        }
        Port port = port(components.get(at), other);
        return new End.AtPort(at, port.id(), port.place());
    }

    private CycleChart.Step step(String name) {
        int n = 1;
        for (JsonNode s : truth.get("states")) {
            if (s.get("name").asText().equals(name)) {
                List<String> on = new ArrayList<>();
                s.get("energised").forEach(y -> on.add(y.asText()));
                return new CycleChart.Step(String.valueOf(n), name, Set.copyOf(on));
            }
            n++;
        }
        throw new IllegalStateException(name);
    }

    private Map<String, Part> parts() throws IOException {
        Map<String, Part> parts = new HashMap<>();
        for (String row : Files.readAllLines(folder.resolve("parts.csv"))) {
            String[] f = row.split(",", -1);
            parts.put(f[0], new Part(f[0], f[1], null, f[3].isEmpty() ? null : f[3], null));
        }
        return parts;
    }

    private void sheet(JsonNode s) {
        ZoneGrid grid = new ZoneGrid(bands(s.get("zone_columns"), 2383.94), bands(s.get("zone_rows"), 1683.78), true);
        sheets.add(new Sheet(
                s.get("sheet").asText(),
                new PageKey(SOURCE, s.get("page").asInt()),
                2383.94,
                1683.78,
                s.get("title").asText(),
                "C",
                Origin.TEXT,
                grid,
                new Affine(1, 0, 0, 0, -1, 1683.78)));
    }

    private static List<ZoneGrid.Band> bands(JsonNode labels, double extentPt) {
        List<ZoneGrid.Band> bands = new ArrayList<>();
        int n = labels.size();
        for (int i = 0; i < n; i++) {
            double from = extentPt / 2 + (i - n / 2.0) * FIELD_PT;
            bands.add(new ZoneGrid.Band(labels.get(i).asText(), from, from + FIELD_PT));
        }
        return bands;
    }

    private void component(JsonNode c) {
        String tag = c.get("tag").asText();
        Point place = new Point(c.get("x").asDouble(), c.get("y").asDouble());
        List<Port> ports = new ArrayList<>();
        Box box = Box.around(place);
        for (Map.Entry<String, JsonNode> p : c.get("ports").properties()) {
            Point at = new Point(
                    p.getValue().get(0).asDouble(), p.getValue().get(1).asDouble());
            ports.add(new Port(tag + ":" + p.getKey(), p.getKey(), at));
            box = box.union(Box.around(at));
        }
        double half = Math.max(box.widthPt(), box.heightPt()) / 2;
        Kind kind = Kind.find(c.get("kind").asText().replace("brake-cylinder", "brake"))
                .orElse(Kind.UNKNOWN);
        Box outline = kind == Kind.TANK
                ? box.grow(40)
                : box.union(new Box(place.xPt() - half, place.yPt() - half, place.xPt() + half, place.yPt() + half));
        components.put(
                tag,
                new Component(
                        tag,
                        tag,
                        new PageKey(SOURCE, c.get("page").asInt()),
                        place,
                        outline,
                        kind,
                        null,
                        Origin.TEXT,
                        1,
                        ports,
                        positions(tag)));
    }

    /** The positions that the truth's states show, each told by its solenoids. */
    private List<Position> positions(String tag) {
        Map<String, Position> found = new LinkedHashMap<>();
        for (JsonNode s : truth.get("states")) {
            if (!s.get("passages").has(tag)) {
                continue;
            }
            List<String> by = new ArrayList<>();
            s.get("energised").forEach(y -> {
                if (y.asText().startsWith("Y" + tag.charAt(0))
                        || tag.startsWith("4") && y.asText().equals("Y4")) {
                    by.add(y.asText());
                }
            });
            List<Passage> passages = new ArrayList<>();
            s.get("passages")
                    .get(tag)
                    .forEach(p -> passages.add(new Passage(
                            tag + ":" + p.get(0).asText(), tag + ":" + p.get(1).asText(), false, false, null)));
            found.putIfAbsent(
                    by.toString(), new Position(by.isEmpty() ? List.of("rest") : by, Position.How.SOLENOID, passages));
        }
        return List.copyOf(found.values());
    }

    private void reference(JsonNode r) {
        String id = r.get("id").asText();
        Point place = new Point(r.get("x").asDouble(), r.get("y").asDouble());
        JsonNode end = r.get("line_end");
        lineEnds.put(id, new Point(end.get(0).asDouble(), end.get(1).asDouble()));
        boolean upright = r.get("rotated").asBoolean();
        Box box = new Box(
                place.xPt() - (upright ? 12 : 26),
                place.yPt() - (upright ? 26 : 12),
                place.xPt() + (upright ? 12 : 26),
                place.yPt() + (upright ? 26 : 12));
        JsonNode label = r.get("label");
        references.put(
                id,
                new Reference(
                        id,
                        new PageKey(SOURCE, r.get("page").asInt()),
                        place,
                        box,
                        Zone.parse(r.get("zone").asText()).orElse(null),
                        r.get("text").asText(),
                        List.of(),
                        label == null || label.isNull() ? null : label.asText(),
                        Flow.UNKNOWN,
                        Origin.TEXT,
                        1,
                        List.of("x"),
                        1));
    }
}
