package linewalk.renderer.report;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.Finding;
import linewalk.drawing.Severity;
import linewalk.drawing.Sheet;
import linewalk.drawing.Zone;

/**
 * All that a report of findings is made of.
 *
 * @param set with its findings weighed and those marked that people keep
 * @param sources where a source named in a page key lies; the file may be missing
 */
public record Report(DrawingSet set, Function<String, Path> sources, String title, LocalDate date) {

    /** Findings that nobody keeps, sheet by sheet in the set's order; those of the whole set first, under null. */
    Map<Sheet, List<Finding>> bySheet() {
        Map<Sheet, List<Finding>> all = new LinkedHashMap<>();
        all.put(null, open().filter(f -> f.page() == null).toList());
        for (Sheet s : set.sheets()) {
            all.put(
                    s,
                    open().filter(f -> s.page().equals(f.page()))
                            .sorted(byZone(s))
                            .toList());
        }
        all.values().removeIf(List::isEmpty);
        return all;
    }

    /** Zone by zone as the sheet reads, what concerns the whole sheet first. */
    private java.util.Comparator<Finding> byZone(Sheet sheet) {
        return java.util.Comparator.comparing(
                        (Finding f) -> zone(sheet, f).map(Zone::letters).orElse(""))
                .thenComparing(f ->
                        zone(sheet, f).map(z -> Integer.parseInt(z.digits())).orElse(0))
                .thenComparing(Finding::severity);
    }

    private Stream<Finding> open() {
        return set.findings().stream().filter(f -> f.kept() == null);
    }

    List<Finding> kept() {
        return set.findings().stream().filter(f -> f.kept() != null).toList();
    }

    static Optional<Zone> zone(Sheet sheet, Finding f) {
        return f.place() == null || sheet.grid() == null
                ? Optional.empty()
                : sheet.grid().zoneAt(f.place());
    }

    /** {@code the set}, {@code sheet 3}, {@code sheet 3, B4}. */
    String where(Finding f) {
        if (f.page() == null) {
            return "the set";
        }
        return f.place() == null ? "sheet " + set.getSheet(f.page()).name() : set.address(f.page(), f.place());
    }

    static String word(Severity s) {
        return s.name().toLowerCase(Locale.ROOT);
    }

    /** {@code 13 sheets, 94 references: 4 errors, 2 warnings, 0 notes, 1 kept}. */
    String summary() {
        String counts = Stream.of(Severity.values())
                .map(s -> counted(open().filter(f -> f.severity() == s).count(), word(s)))
                .collect(Collectors.joining(", "));
        return counted(set.sheets().size(), "sheet") + ", "
                + counted(set.references().size(), "reference") + ": " + counts
                + (kept().isEmpty() ? "" : ", " + kept().size() + " kept");
    }

    private static String counted(long n, String what) {
        return n + " " + what + (n == 1 ? "" : "s");
    }
}
