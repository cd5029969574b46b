package linewalk.samples.truth;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import linewalk.samples.machine.Machine;
import linewalk.samples.machine.Misprint;
import linewalk.samples.sheet.DrawnReference;
import linewalk.samples.sheet.DrawnSheet;
import linewalk.samples.symbol.Spot;

/** Hand tags a careful person would make: wrong references put right. */
public final class TagsWriter {
    private static final Set<Misprint.Kind> PUT_RIGHT =
            Set.of(Misprint.Kind.NOTHING_THERE, Misprint.Kind.NOT_RETURNED, Misprint.Kind.NEXT_ZONE);

    private final Machine machine;
    private final List<DrawnSheet> sheets;

    public TagsWriter(Machine machine, List<DrawnSheet> sheetsInPageOrder) {
        this.machine = machine;
        this.sheets = sheetsInPageOrder;
    }

    public ObjectNode tags() {
        ObjectNode out = JsonNodeFactory.instance.objectNode();
        ArrayNode tags = out.putArray("tags");
        machine.misprints().stream()
                .filter(misprint -> PUT_RIGHT.contains(misprint.kind()))
                .forEach(misprint -> reference(tags.addObject(), drawn(misprint)));
        return out;
    }

    private DrawnReference drawn(Misprint misprint) {
        return sheets.stream()
                .flatMap(sheet -> sheet.references().stream())
                .filter(drawn -> drawn.reference().sheet() == misprint.sheet()
                        && drawn.reference().links().contains(misprint.link()))
                .findFirst()
                .orElseThrow();
    }

    private static void reference(ObjectNode tag, DrawnReference drawn) {
        Spot at = drawn.point();
        tag.put("tag", "reference");
        tag.put("page", drawn.page());
        tag.put("xPt", TruthWriter.round(at.x()));
        tag.put("yPt", TruthWriter.round(at.y()));
        tag.put("saw", drawn.text());
        tag.put(
                "targets",
                drawn.trueTargets().stream()
                        .map(target -> target.sheet() + "/" + target.zone())
                        .collect(Collectors.joining(" ")));
    }
}
