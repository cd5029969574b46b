package linewalk.drawing;

import java.util.List;
import java.util.Optional;

/** The whole set as one graph: sheets in page order, lines joined to ports and references, references to their mates. */
public record DrawingSet(
        List<Sheet> sheets,
        List<Reference> references,
        List<Component> components,
        List<Enclosure> enclosures,
        List<Line> lines,
        List<Finding> findings) {

    public DrawingSet {
        sheets = List.copyOf(sheets);
        references = List.copyOf(references);
        components = List.copyOf(components);
        enclosures = List.copyOf(enclosures);
        lines = List.copyOf(lines);
        findings = List.copyOf(findings);
    }

    /** Throws where the page is not one of the set's. */
    public Sheet getSheet(PageKey page) {
        return sheets.stream()
                .filter(s -> s.page().equals(page))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(page + " is not in the set"));
    }

    /** Where a thing stands, in the words of the drawings: "sheet 3, B4". */
    public String address(PageKey page, Point place) {
        Sheet sheet = getSheet(page);
        Optional<Zone> zone = Optional.ofNullable(sheet.grid()).flatMap(g -> g.zoneAt(place));
        return "sheet " + sheet.name() + zone.map(z -> ", " + z).orElse("");
    }
}
