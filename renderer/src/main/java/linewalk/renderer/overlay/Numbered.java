package linewalk.renderer.overlay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.Finding;
import linewalk.drawing.Sheet;

/** A finding with its number on its sheet: the gravest first, then in the order of the set. */
record Numbered(int number, Finding finding) {

    static List<Numbered> on(Sheet sheet, DrawingSet set) {
        List<Finding> found = set.findings().stream()
                .filter(f -> sheet.page().equals(f.page()))
                .sorted(Comparator.comparing(Finding::severity))
                .toList();
        List<Numbered> all = new ArrayList<>();
        found.forEach(f -> all.add(new Numbered(all.size() + 1, f)));
        return all;
    }

    /** Findings about the set as a whole, or about a page that is none of its sheets. */
    static List<Numbered> ofTheWhole(DrawingSet set) {
        List<Numbered> all = new ArrayList<>();
        set.findings().stream()
                .filter(f -> set.sheets().stream().noneMatch(s -> s.page().equals(f.page())))
                .sorted(Comparator.comparing(Finding::severity))
                .forEach(f -> all.add(new Numbered(all.size() + 1, f)));
        return all;
    }
}
