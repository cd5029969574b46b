package linewalk.renderer.overlay;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.PageKey;
import linewalk.drawing.Sheet;
import linewalk.renderer.sheet.Row;
import linewalk.renderer.sheet.TextBlock;

/** The first page: caution, legend, how much was read of each sheet, and what concerns the set as a whole. */
final class FrontPage {

    private static final List<String> HEAD =
            List.of("Sheet", "Lines", "Parts", "References", "Without mate", "Below 0.9", "Findings");
    private static final List<Double> SHARES = List.of(0.14, 0.12, 0.12, 0.18, 0.15, 0.14, 0.15);

    private final OverlayJob job;
    private final double width;

    FrontPage(OverlayJob job, double width) {
        this.job = job;
        this.width = width;
    }

    List<Row> rows() {
        TextBlock block = new TextBlock(width);
        List<Row> rows = new ArrayList<>(block.framed(List.of(
                SheetCaption.CAUTION + " What is drawn over these sheets is what a program made of them; it can be"
                        + " wrong or incomplete without showing doubt.")));
        rows.addAll(block.heading("What the marks mean"));
        rows.addAll(new Legend(width).rows());
        rows.addAll(block.heading("What was read"));
        List<Double> widths = SHARES.stream().map(s -> s * width).toList();
        rows.add(block.cells(widths, HEAD, true));
        job.sheets().forEach(s -> rows.add(block.cells(widths, counts(s), false)));
        rows.addAll(block.paragraph("", 0, "Numbers count what was found, not what is there: compare with the sheet."));
        List<Numbered> whole = Numbered.ofTheWhole(job.set());
        if (!whole.isEmpty()) {
            rows.addAll(block.heading("About the set as a whole"));
            rows.addAll(FindingRows.of(whole, null, width));
        }
        return rows;
    }

    private List<String> counts(Sheet sheet) {
        DrawingSet set = job.set();
        PageKey key = sheet.page();
        long low = Stream.of(
                        set.lines().stream().filter(l -> l.page().equals(key) && Doubt.of(l)),
                        set.components().stream().filter(c -> c.page().equals(key) && Doubt.of(c)),
                        set.references().stream().filter(r -> r.page().equals(key) && Doubt.of(r)))
                .mapToLong(Stream::count)
                .sum();
        return List.of(
                sheet.name(),
                text(set.lines().stream().filter(l -> l.page().equals(key)).count()),
                text(set.components().stream().filter(c -> c.page().equals(key)).count()),
                text(set.references().stream().filter(r -> r.page().equals(key)).count()),
                text(set.references().stream()
                        .filter(r -> r.page().equals(key) && r.mates().isEmpty())
                        .count()),
                text(low),
                text(Numbered.on(sheet, set).size()));
    }

    private static String text(long count) {
        return Long.toString(count);
    }
}
