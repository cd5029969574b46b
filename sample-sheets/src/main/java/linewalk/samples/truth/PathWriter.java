package linewalk.samples.truth;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import linewalk.samples.machine.Journey;
import linewalk.samples.machine.Machine;
import linewalk.samples.machine.Reference;
import linewalk.samples.style.DraftingStyle;

/** Flow paths with both references of every link, in the order of flow. */
final class PathWriter {
    private final Machine machine;
    private final DraftingStyle style;

    PathWriter(Machine machine, DraftingStyle style) {
        this.machine = machine;
        this.style = style;
    }

    ArrayNode paths() {
        ArrayNode out = JsonNodeFactory.instance.arrayNode();
        machine.journeys().forEach(journey -> path(out.addObject(), journey));
        return out;
    }

    private void path(ObjectNode node, Journey journey) {
        List<String> steps = journey.steps();
        node.put("state", journey.state());
        node.put("from", steps.get(0));
        node.put("to", steps.get(steps.size() - 1));
        List<Integer> sheets = new ArrayList<>();
        ArrayNode via = node.putArray("via");
        for (String step : steps) {
            List<Reference> ends = machine.ends().get(step);
            if (ends == null) {
                via.add(step);
                visit(sheets, machine.sheetOf(step));
            } else {
                int here = sheets.get(sheets.size() - 1);
                Reference near = ends.get(ends.get(0).sheet() == here ? 0 : 1);
                Reference far = ends.get(ends.get(0).sheet() == here ? 1 : 0);
                via.add(near.id()).add(far.id());
                visit(sheets, near.sheet());
                visit(sheets, far.sheet());
            }
        }
        sheets.forEach(sheet -> node.withArray("sheets").add(style.sheetName(sheet)));
        ArrayNode ask = node.putArray("ask_via");
        journey.via().forEach(ask::add);
        node.put("ask", true);
    }

    private static void visit(List<Integer> sheets, int sheet) {
        if (sheets.isEmpty() || sheets.get(sheets.size() - 1) != sheet) {
            sheets.add(sheet);
        }
    }
}
