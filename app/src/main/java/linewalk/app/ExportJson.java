package linewalk.app;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.BiConsumer;
import linewalk.drawing.Box;
import linewalk.drawing.Component;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.Enclosure;
import linewalk.drawing.End;
import linewalk.drawing.Finding;
import linewalk.drawing.KindReading;
import linewalk.drawing.Line;
import linewalk.drawing.PageKey;
import linewalk.drawing.Passage;
import linewalk.drawing.Point;
import linewalk.drawing.Port;
import linewalk.drawing.Position;
import linewalk.drawing.Reference;
import linewalk.drawing.Sheet;
import linewalk.drawing.Target;
import linewalk.drawing.ZoneGrid;
import linewalk.linker.step.StepState;

/** The set as one JSON object for other programs; fields may be added, none is taken away. */
final class ExportJson {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private final DrawingSet set;
    private final List<StepState> states;
    private final Map<PageKey, Sheet> sheets = new java.util.HashMap<>();

    /** @param states the machine in each step; empty where there is no cycle chart */
    ExportJson(DrawingSet set, List<StepState> states) {
        this.set = set;
        this.states = states;
        set.sheets().forEach(s -> sheets.put(s.page(), s));
    }

    ObjectNode toJson() {
        ObjectNode root = MAPPER.createObjectNode();
        list(root, "sheets", set.sheets(), this::sheet);
        list(root, "references", set.references(), this::reference);
        list(root, "components", set.components(), this::component);
        list(root, "enclosures", set.enclosures(), this::enclosure);
        list(root, "lines", set.lines(), this::line);
        if (!states.isEmpty()) {
            ObjectNode classes = root.putObject("classes");
            states.forEach(s -> classes(classes.putObject(s.step().title()), s));
        }
        list(root, "findings", set.findings(), this::finding);
        return root;
    }

    private void classes(ObjectNode o, StepState s) {
        set.lines().forEach(l -> o.put(l.id(), s.classes().get(l.id()).word()));
    }

    ArrayNode findings() {
        return (ArrayNode) toJson().get("findings");
    }

    private static <T> void list(ObjectNode parent, String name, List<T> things, BiConsumer<ObjectNode, T> write) {
        ArrayNode array = parent.putArray(name);
        things.forEach(t -> write.accept(array.addObject(), t));
    }

    private void sheet(ObjectNode o, Sheet s) {
        o.put("sheet", s.name());
        o.put("source", s.page().source()).put("page", s.page().page());
        o.put("widthPt", round(s.widthPt())).put("heightPt", round(s.heightPt()));
        o.put("title", s.title()).put("revision", s.revision());
        o.put("origin", word(s.origin()));
        if (s.grid() == null) {
            o.putNull("zones");
        } else {
            ObjectNode zones = o.putObject("zones");
            labels(zones.putArray("columns"), s.grid().columns());
            labels(zones.putArray("rows"), s.grid().rows());
        }
    }

    private static void labels(ArrayNode to, List<ZoneGrid.Band> bands) {
        bands.forEach(b -> to.add(b.label()));
    }

    private void reference(ObjectNode o, Reference r) {
        o.put("id", r.id());
        place(o, r.page(), r.place());
        o.put("zone", text(r.zone()));
        box(o, r.box());
        o.put("text", r.text());
        list(o, "targets", r.targets(), ExportJson::target);
        o.put("label", r.label()).put("flow", word(r.flow())).put("origin", word(r.origin()));
        o.put("confidence", round(r.confidence()));
        ArrayNode mates = o.putArray("mates");
        r.mates().forEach(mates::add);
        o.put("mateConfidence", round(r.mateConfidence()));
    }

    private static void target(ObjectNode o, Target t) {
        o.put("sheet", t.sheet()).put("zone", text(t.zone()));
    }

    private void component(ObjectNode o, Component c) {
        o.put("id", c.id()).put("tag", c.tag());
        place(o, c.page(), c.place());
        box(o, c.box());
        o.put("kind", c.kind().word()).put("setting", c.setting());
        o.put("origin", word(c.origin())).put("confidence", round(c.confidence()));
        list(o, "ports", c.ports(), ExportJson::port);
        list(o, "positions", c.positions(), ExportJson::position);
        if (c.symbol() != null) {
            symbol(o.putObject("symbol"), c.symbol());
        }
    }

    /** What the drawn shape says by itself. */
    private static void symbol(ObjectNode o, KindReading read) {
        o.put("evidence", read.evidence());
        list(o, "choices", read.choices(), (choice, c) -> choice.put(
                        "kind", c.kind().word())
                .put("likelihood", round(c.likelihood())));
    }

    private static void port(ObjectNode o, Port p) {
        o.put("id", p.id()).put("name", p.name()).put("confidence", p.confidence());
        point(o, p.place());
    }

    private static void position(ObjectNode o, Position p) {
        if (p.isRest()) {
            o.put("by", Position.REST);
        } else {
            ArrayNode by = o.putArray("by");
            p.by().forEach(by::add);
        }
        o.put("how", p.how() == null ? null : word(p.how()));
        list(o, "passages", p.passages(), ExportJson::passage);
    }

    private static void passage(ObjectNode o, Passage p) {
        o.put("from", p.from()).put("to", p.to());
        o.put("oneWay", p.oneWay()).put("throttled", p.throttled());
        o.put("opens", p.opens() == null ? null : word(p.opens()));
    }

    private void enclosure(ObjectNode o, Enclosure e) {
        o.put("tag", e.tag())
                .put("source", e.page().source())
                .put("page", e.page().page());
        box(o, e.box());
        list(o, "ports", e.ports(), ExportJson::facePort);
    }

    private static void facePort(ObjectNode o, Enclosure.FacePort p) {
        o.put("name", p.name());
        point(o, p.place());
    }

    private void line(ObjectNode o, Line l) {
        o.put("id", l.id());
        o.put("source", l.page().source()).put("page", l.page().page());
        o.put("sheet", sheets.get(l.page()).name());
        o.put("kind", word(l.kind())).put("label", l.label()).put("size", l.size());
        o.put("confidence", round(l.confidence()));
        list(o, "ends", l.ends(), ExportJson::end);
    }

    private static void end(ObjectNode o, End e) {
        if (e instanceof End.AtPort p) {
            o.put("port", p.port()).put("component", p.component());
        } else if (e instanceof End.AtReference r) {
            o.put("reference", r.reference());
        } else {
            o.put("open", true);
            point(o, e.place());
        }
    }

    private void finding(ObjectNode o, Finding f) {
        o.put("rule", f.rule().word()).put("severity", word(f.severity()));
        if (f.page() != null) {
            Sheet s = sheets.get(f.page());
            o.put("source", f.page().source()).put("page", f.page().page());
            o.put("sheet", s == null ? null : s.name());
        }
        if (f.place() != null) {
            point(o, f.place());
        }
        ArrayNode references = o.putArray("references");
        f.references().forEach(references::add);
        ArrayNode components = o.putArray("components");
        f.components().forEach(components::add);
        o.put("message", f.message())
                .put("remedy", f.remedy())
                .put("id", f.id())
                .put("kept", f.kept());
    }

    private void place(ObjectNode o, PageKey page, Point p) {
        o.put("source", page.source()).put("page", page.page());
        o.put("sheet", sheets.get(page).name());
        point(o, p);
    }

    private static void point(ObjectNode o, Point p) {
        o.put("xPt", round(p.xPt())).put("yPt", round(p.yPt()));
    }

    private static void box(ObjectNode o, Box b) {
        o.putArray("boxPt")
                .add(round(b.x0Pt()))
                .add(round(b.y0Pt()))
                .add(round(b.x1Pt()))
                .add(round(b.y1Pt()));
    }

    private static double round(double x) {
        return Math.round(x * 1000) / 1000.0;
    }

    private static String text(Object o) {
        return o == null ? null : o.toString();
    }

    private static String word(Enum<?> e) {
        return e.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
