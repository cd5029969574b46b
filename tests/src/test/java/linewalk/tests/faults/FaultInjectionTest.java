package linewalk.tests.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import linewalk.drawing.CycleChart;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.Finding;
import linewalk.drawing.Reference;
import linewalk.drawing.SetSettings;
import linewalk.drawing.Severity;
import linewalk.drawing.SheetReading;
import linewalk.drawing.store.SetFolder;
import linewalk.importer.SourceImporter;
import linewalk.linker.Linker;
import linewalk.samples.DemoSet;
import linewalk.samples.style.DraftingStyle;
import linewalk.tests.faults.Editor.Edited;
import linewalk.tests.faults.Editor.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Random drafting errors, one at a time, in sets that have none: the demo in its six styles without its misprints, drawn
 * and read from PDF, less the few references of errors that are part of the machine (a line with one end, with two numbers, with two
 * arrows). The seed is fixed. Found is an error or warning that was not there before and names the reference
 * or its mate; right is a remedy that names the mate by text, sheet and zone.
 */
class FaultInjectionTest {

    private static final int EDITS = 500;
    private static final SetSettings SETTINGS = new SetSettings(List.of("correct.pdf"), null, null);

    @TempDir
    Path folder;

    private static final class Count {
        int edits;
        int found;
        int mated;
        int named;
    }

    private final Map<Kind, Count> counts = new EnumMap<>(Kind.class);
    private final List<String> missed = new ArrayList<>();

    @Test
    void draftingErrorsAreFoundAndTheirMatesNamed() throws IOException {
        Random random = new Random(2210);
        List<List<SheetReading>> sets = new ArrayList<>();
        for (DraftingStyle style : DraftingStyle.ALL) {
            sets.add(correct(style));
        }
        for (int done = 0; done < EDITS; ) {
            List<SheetReading> readings = sets.get(done % sets.size());
            DrawingSet before = link(readings);
            Editor editor = new Editor(before, readings, random);
            Kind kind = Kind.values()[random.nextInt(Kind.values().length)];
            Optional<Edited> edited = editor.edit(kind);
            if (edited.isPresent()) {
                count(kind, before, editor, edited.get());
                done++;
            }
        }
        print();
        assertThat(ratio(c -> c.found, c -> c.edits)).isGreaterThanOrEqualTo(0.98);
        assertThat(ratio(c -> c.named, c -> c.mated)).isGreaterThanOrEqualTo(0.9);
    }

    private List<SheetReading> correct(DraftingStyle style) throws IOException {
        Path pdf = folder.resolve(style.name() + ".pdf");
        DemoSet.writeCorrect(pdf, style);
        SourceImporter importer = new SourceImporter(
                SETTINGS, SetFolder.at(folder.resolve(style.name())).readings(), (page, of) -> {});
        List<SheetReading> drawn = importer.read(pdf, "correct.pdf");
        Set<String> wrong = new HashSet<>();
        link(drawn).findings().stream()
                .filter(f -> f.severity() != Severity.NOTE)
                .forEach(f -> wrong.addAll(f.references()));
        assertThat(wrong).hasSizeLessThan(link(drawn).references().size() / 4);
        List<SheetReading> readings = Editor.without(drawn, link(drawn), wrong);
        assertThat(link(readings).findings())
                .as("a set without drafting errors has no loud findings about references: %s", style.name())
                .noneMatch(f -> f.severity() != Severity.NOTE && !f.references().isEmpty());
        return readings;
    }

    private static DrawingSet link(List<SheetReading> readings) {
        return Linker.link(readings, List.of(), SETTINGS, List.of(), CycleChart.NONE);
    }

    private void count(Kind kind, DrawingSet before, Editor editor, Edited edited) {
        DrawingSet after = link(edited.readings());
        Set<String> old = new HashSet<>();
        before.findings().forEach(f -> old.add(f.rule() + f.message()));
        Set<String> near = new HashSet<>();
        for (Reference r : edited.wrong()) {
            near.addAll(List.of(r.id(), r.id() + "-twin", editor.mate(r).id()));
        }
        List<Finding> told = after.findings().stream()
                .filter(f -> f.severity() != Severity.NOTE && !old.contains(f.rule() + f.message()))
                .filter(f -> f.references().stream().anyMatch(near::contains))
                .toList();
        Count c = counts.computeIfAbsent(kind, k -> new Count());
        c.edits++;
        c.found += told.isEmpty() ? 0 : 1;
        boolean mated = kind != Kind.REMOVE && kind != Kind.DUPLICATE;
        boolean named = edited.wrong().stream().allMatch(r -> named(told, after, r, editor.mate(r)));
        c.mated += mated ? 1 : 0;
        c.named += mated && named ? 1 : 0;
        if (told.isEmpty() || mated && !named) {
            missed.add(kind + " "
                    + edited.wrong().stream()
                            .map(r -> r.text() + " on " + before.address(r.page(), r.place()))
                            .toList() + ": "
                    + told.stream()
                            .map(f -> f.message() + " [" + f.remedy() + "]")
                            .toList());
        }
    }

    /** One end's finding names the other. */
    private static boolean named(List<Finding> told, DrawingSet set, Reference r, Reference mate) {
        return told.stream()
                .filter(f -> f.remedy() != null)
                .anyMatch(f -> f.references().contains(r.id()) && f.remedy().contains(said(set, mate.id()))
                        || f.references().contains(mate.id()) && f.remedy().contains(said(set, r.id())));
    }

    private static String said(DrawingSet set, String id) {
        return set.references().stream()
                .filter(r -> r.id().equals(id))
                .findFirst()
                .map(r -> "'" + r.text() + "' on " + set.address(r.page(), r.place()))
                .orElse("nothing");
    }

    private double ratio(java.util.function.ToIntFunction<Count> part, java.util.function.ToIntFunction<Count> whole) {
        return counts.values().stream().mapToInt(part).sum()
                / (double) counts.values().stream().mapToInt(whole).sum();
    }

    private void print() {
        missed.forEach(m -> System.out.println("missed: " + m));
        counts.forEach((k, c) -> System.out.printf(
                "%-12s %3d edits, %3d found, mate named in %3d of %3d%n", k, c.edits, c.found, c.named, c.mated));
        System.out.printf(
                "%d random edits: %.3f found, the right mate named in %.3f of those that have one%n",
                EDITS, ratio(c -> c.found, c -> c.edits), ratio(c -> c.named, c -> c.mated));
    }
}
