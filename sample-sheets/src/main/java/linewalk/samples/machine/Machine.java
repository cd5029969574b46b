package linewalk.samples.machine;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The whole description: sheets in the order of their numbers, the cycle, the paths, the errors made on purpose. */
public record Machine(
        String name,
        String drawingNumber,
        List<SheetPlan> sheets,
        List<State> states,
        List<Journey> journeys,
        List<Misprint> misprints,
        Map<String, Words> lineSizes) {
    /** Without errors, but for the lines of which one end was never drawn. */
    public Machine withTwoEndedLinesRight() {
        Map<String, List<Reference>> ends = ends();
        List<Misprint> left =
                misprints.stream().filter(m -> ends.get(m.link()).size() < 2).toList();
        return new Machine(name, drawingNumber, sheets, states, journeys, left, lineSizes);
    }

    public List<Part> parts() {
        return sheets.stream().flatMap(sheet -> sheet.parts().stream()).toList();
    }

    public List<Net> nets() {
        return sheets.stream().flatMap(sheet -> sheet.nets().stream()).toList();
    }

    public List<Reference> references() {
        return sheets.stream().flatMap(sheet -> sheet.references().stream()).toList();
    }

    public Part part(String tag) {
        return parts().stream()
                .filter(part -> part.tag().equals(tag))
                .findFirst()
                .orElseThrow();
    }

    public int sheetOf(String tag) {
        return sheets.stream()
                .filter(sheet ->
                        sheet.parts().stream().anyMatch(part -> part.tag().equals(tag)))
                .findFirst()
                .orElseThrow()
                .number();
    }

    /** The two ends of each link that has two, by link. */
    public Map<String, List<Reference>> ends() {
        Map<String, List<Reference>> out = new LinkedHashMap<>();
        for (Reference reference : references()) {
            for (String link : reference.links()) {
                out.computeIfAbsent(link, key -> new ArrayList<>()).add(reference);
            }
        }
        return out;
    }

    /** The other end of a link, or null where it has only one. */
    public Reference mate(Reference reference, String link) {
        return ends().get(link).stream()
                .filter(other -> !other.id().equals(reference.id()))
                .findFirst()
                .orElse(null);
    }
}
