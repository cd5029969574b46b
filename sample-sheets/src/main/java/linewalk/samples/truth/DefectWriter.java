package linewalk.samples.truth;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linewalk.samples.machine.Machine;
import linewalk.samples.machine.Misprint;
import linewalk.samples.machine.Reference;
import linewalk.samples.sheet.DrawnReference;

/** The errors made on purpose, and references that only their labels tell apart, which the grid decides. */
final class DefectWriter {
    private final Machine machine;
    private final List<DrawnReference> references;

    DefectWriter(Machine machine, List<DrawnReference> references) {
        this.machine = machine;
        this.references = references;
    }

    ArrayNode defects() {
        ArrayNode out = JsonNodeFactory.instance.arrayNode();
        machine.misprints().forEach(misprint -> add(out, misprint.kind().rule, refs(misprint), misprint.explain()));
        samePlace()
                .forEach(refs -> add(
                        out,
                        "same-place",
                        refs,
                        "In one zone with one target; only the line numbers tell them apart."));
        return out;
    }

    private static void add(ArrayNode out, String kind, List<String> refs, String explain) {
        ObjectNode node = out.addObject();
        node.put("kind", kind);
        refs.forEach(node.withArray("refs")::add);
        node.put("explain", explain);
    }

    private List<String> refs(Misprint misprint) {
        boolean both = misprint.kind() == Misprint.Kind.LABEL_DIFFERS || misprint.kind() == Misprint.Kind.FLOW_CLASH;
        return machine.ends().get(misprint.link()).stream()
                .filter(end -> both || end.sheet() == misprint.sheet())
                .map(Reference::id)
                .toList();
    }

    private List<List<String>> samePlace() {
        Map<String, List<String>> groups = new LinkedHashMap<>();
        for (DrawnReference drawn : references) {
            if (!drawn.reference().isLetter()) {
                String key = drawn.page() + " " + drawn.zone().name() + " " + drawn.targets();
                groups.computeIfAbsent(key, k -> new ArrayList<>())
                        .add(drawn.reference().id());
            }
        }
        return groups.values().stream().filter(group -> group.size() > 1).toList();
    }
}
