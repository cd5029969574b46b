package linewalk.samples.random;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import linewalk.samples.machine.Machine;
import linewalk.samples.machine.Misprint;
import linewalk.samples.machine.Reference;
import linewalk.samples.machine.SheetPlan;
import linewalk.samples.machine.Words;
import linewalk.samples.sheet.DrawnSheet;
import linewalk.samples.sheet.SetDrawing;
import linewalk.samples.style.DraftingStyle;

/** A drawing set of circuits by chance: one a page, references between them, all at one scale. */
public final class RandomSet {
    private final Machine machine;
    private final DraftingStyle style;

    private RandomSet(Machine machine, DraftingStyle style) {
        this.machine = machine;
        this.style = style;
    }

    /** The same for the same style, seed and count. */
    public static RandomSet of(DraftingStyle style, long seed, int count) {
        Chance chance = new Chance(style.name() + seed);
        List<Integer> pages = IntStream.rangeClosed(1, count).boxed().toList();
        double scale = chance.between(0.6, 1.05);
        DraftingStyle scaled = style.with(pages, scale, scale * chance.between(0.85, 1.2));
        List<RandomSheet> sheets = new ArrayList<>();
        pages.forEach(number -> sheets.add(RandomSheet.of(scaled, chance, number)));
        Links links = new Links(
                sheets.stream().flatMap(sheet -> sheet.references().stream()).toList(), chance);
        List<SheetPlan> plans =
                sheets.stream().map(sheet -> sheet.plan(links.names())).toList();
        return new RandomSet(machine(plans, links), scaled);
    }

    private static Machine machine(List<SheetPlan> plans, Links links) {
        List<Misprint> loose = new ArrayList<>();
        List<Reference> references =
                plans.stream().flatMap(plan -> plan.references().stream()).toList();
        for (String link : links.loose()) {
            references.stream()
                    .filter(reference -> reference.links().contains(link))
                    .forEach(reference -> loose.add(new Misprint(
                            Misprint.Kind.NO_SUCH_SHEET, link, reference.sheet(), null, 0, "no second end")));
        }
        Map<String, Words> sizes = references.stream()
                .flatMap(reference -> reference.links().stream())
                .distinct()
                .collect(java.util.stream.Collectors.toMap(link -> link, link -> new Words("25x3", "1-1/2")));
        return new Machine(
                "RANDOM CIRCUITS - HYDRAULIC INSTALLATION", "RND-1-H", plans, List.of(), List.of(), loose, sizes);
    }

    /** Writes the PDF; returns its sheets in the order of pages. */
    public List<DrawnSheet> write(OutputStream out) throws IOException {
        return new SetDrawing(machine, style).write(out);
    }
}
