package linewalk.samples.truth;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import linewalk.samples.machine.Machine;
import linewalk.samples.machine.Net;
import linewalk.samples.machine.Part;
import linewalk.samples.machine.State;
import linewalk.samples.sheet.DrawnReference;
import linewalk.samples.sheet.DrawnReference.Target;
import linewalk.samples.sheet.DrawnSheet;
import linewalk.samples.sheet.DrawnText;
import linewalk.samples.symbol.SpoolPosition;
import linewalk.samples.symbol.Spot;

/** What is on the drawings, for scoring. Points as displayed, origin top left. */
public final class TruthWriter {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private final Machine machine;
    private final List<DrawnSheet> sheets;

    public TruthWriter(Machine machine, List<DrawnSheet> sheetsInPageOrder) {
        this.machine = machine;
        this.sheets = sheetsInPageOrder;
    }

    public ObjectNode truth() {
        ObjectNode out = JSON.objectNode();
        out.put("set", "link-span");
        out.set("sheets", sheets());
        out.set("references", references());
        out.set("pairs", pairs());
        out.set("decoys", decoys());
        out.set("defects", new DefectWriter(machine, drawnReferences()).defects());
        out.set("components", components());
        out.set("nets", nets());
        out.set("states", states());
        out.set("paths", new PathWriter(machine, sheets.get(0).placement().style()).paths());
        return out;
    }

    private List<DrawnReference> drawnReferences() {
        return sheets.stream().flatMap(sheet -> sheet.references().stream()).toList();
    }

    private ArrayNode sheets() {
        ArrayNode out = JSON.arrayNode();
        for (DrawnSheet sheet : sheets) {
            ObjectNode node = out.addObject();
            node.put("page", sheet.page());
            node.put("sheet", sheet.placement().style().sheetName(sheet.plan().number()));
            node.put("title", sheet.plan().title());
            sheet.placement().style().grid().columnLabels().forEach(node.withArray("zone_columns")::add);
            sheet.placement().style().grid().rowLabels().forEach(node.withArray("zone_rows")::add);
        }
        return out;
    }

    private ArrayNode references() {
        ArrayNode out = JSON.arrayNode();
        for (DrawnReference drawn : drawnReferences()) {
            ObjectNode node = out.addObject();
            Spot middle = drawn.point();
            node.put("id", drawn.reference().id());
            node.put("page", drawn.page());
            node.put("x", round(middle.x()));
            node.put("y", round(middle.y()));
            node.put("zone", drawn.zone().name());
            node.put("text", drawn.text());
            targets(node, drawn.targets());
            node.put("label", drawn.reference().label());
            node.put("flow", drawn.flow().word());
            node.put("style", drawn.form());
            node.withArray("line_end").add(round(drawn.endXPt())).add(round(drawn.endYPt()));
            node.put("rotated", drawn.turned());
        }
        return out;
    }

    private static void targets(ObjectNode node, List<Target> targets) {
        if (targets.size() == 1) {
            node.put("to_sheet", targets.get(0).sheet());
            node.put("to_zone", targets.get(0).zone());
            return;
        }
        targets.forEach(target -> {
            node.withArray("to_sheet").add(target.sheet());
            node.withArray("to_zone").add(target.zone());
        });
    }

    private ArrayNode pairs() {
        ArrayNode out = JSON.arrayNode();
        machine.ends().forEach((link, ends) -> {
            if (ends.size() == 2) {
                out.addArray().add(ends.get(0).id()).add(ends.get(1).id());
            }
        });
        return out;
    }

    private ArrayNode decoys() {
        ArrayNode out = JSON.arrayNode();
        for (DrawnSheet sheet : sheets) {
            for (DrawnText text : sheet.texts()) {
                if (text.role() == DrawnText.Role.OTHER) {
                    ObjectNode node = out.addObject();
                    node.put("page", sheet.page());
                    node.put("x", round(text.box().centre().x()));
                    node.put("y", round(text.box().centre().y()));
                    node.put("text", text.text());
                }
            }
        }
        return out;
    }

    private ArrayNode components() {
        ArrayNode out = JSON.arrayNode();
        for (DrawnSheet sheet : sheets) {
            for (Part part : sheet.plan().parts()) {
                ObjectNode node = out.addObject();
                node.put("tag", part.tag());
                node.put("page", sheet.page());
                Spot at = sheet.pt(new Spot(part.place().x(), part.place().y()));
                node.put("x", round(at.x()));
                node.put("y", round(at.y()));
                node.put("kind", part.symbol().kind());
                ObjectNode ports = node.putObject("ports");
                part.symbol().ports().keySet().stream().sorted().forEach(name -> {
                    Spot port = sheet.pt(part.port(name));
                    ports.putArray(name).add(round(port.x())).add(round(port.y()));
                });
            }
        }
        return out;
    }

    private ArrayNode nets() {
        ArrayNode out = JSON.arrayNode();
        for (DrawnSheet sheet : sheets) {
            for (Net net : sheet.plan().nets()) {
                ObjectNode node = out.addObject();
                node.put("id", net.id());
                node.put("page", sheet.page());
                node.put("kind", net.kind().word());
                net.ends().forEach(node.withArray("ends")::add);
            }
        }
        return out;
    }

    private ArrayNode states() {
        ArrayNode out = JSON.arrayNode();
        for (int i = 0; i < machine.states().size(); i++) {
            State state = machine.states().get(i);
            ObjectNode node = out.addObject();
            node.put("name", state.name());
            ArrayNode energised = node.putArray("energised");
            new TreeSet<>(state.energised()).forEach(energised::add);
            ObjectNode passages = node.putObject("passages");
            machine.parts().stream()
                    .filter(part -> part.symbol().kind().equals("directional-valve"))
                    .forEach(part -> passages.set(part.tag(), passages(part, state)));
            ObjectNode classes = node.putObject("classes");
            for (Net net : machine.nets()) {
                if (net.classIn(i) != null) {
                    classes.put(net.id(), net.classIn(i));
                }
            }
        }
        return out;
    }

    private static ArrayNode passages(Part valve, State state) {
        ArrayNode out = JSON.arrayNode();
        for (String[] pair : Passages.in(position(valve, state))) {
            out.addArray().add(pair[0]).add(pair[1]);
        }
        return out;
    }

    private static String position(Part valve, State state) {
        List<SpoolPosition> positions = new ArrayList<>(valve.symbol().positions());
        return positions.stream()
                .filter(position -> state.energised().contains(position.by()))
                .findFirst()
                .or(() -> positions.stream()
                        .filter(position -> position.by().equals("rest"))
                        .findFirst())
                .orElseThrow()
                .passages();
    }

    static double round(double pt) {
        return Math.round(pt * 100) / 100.0;
    }
}
