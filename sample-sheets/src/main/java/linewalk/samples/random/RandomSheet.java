package linewalk.samples.random;

import java.util.List;
import java.util.Map;
import linewalk.samples.machine.Furniture;
import linewalk.samples.machine.Part;
import linewalk.samples.machine.SheetPlan;
import linewalk.samples.style.DraftingStyle;

/** One circuit by chance, whose references have no names yet. */
record RandomSheet(int number, List<Part> parts, List<Draft> lines, List<Goes> references, List<Furniture> furniture) {
    private static final int LEAST = 4;
    private static final int MOST = 25;

    static RandomSheet of(DraftingStyle style, Chance chance, int number) {
        Board board = new Board();
        Parts parts = new Parts(board, chance, number);
        parts.place(chance.between(LEAST, MOST));
        Lines lines = new Lines(board, chance, style, parts.ports());
        lines.draw();
        // A part without any line would be none of the circuit.
        List<Part> used = parts.parts().stream()
                .filter(part -> part.symbol().ports().keySet().stream()
                        .anyMatch(port -> !lines.unused().contains(part.tag() + ":" + port)))
                .toList();
        List<Furniture> furniture = used.isEmpty() ? List.of() : new Beside(board, chance, used).draw();
        return new RandomSheet(number, used, lines.drafts(), lines.references(), furniture);
    }

    SheetPlan plan(Map<Goes, List<String>> links) {
        SheetPlan sheet = new SheetPlan(number, "CIRCUIT " + number);
        parts.forEach(sheet::add);
        lines.forEach(line -> line.on(sheet, links));
        furniture.forEach(sheet::with);
        return sheet.note("DO NOT SCALE.").note("SEE TABLE 2/C3 OF THE MANUAL.");
    }
}
