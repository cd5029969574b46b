package linewalk.renderer.card;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Component;
import linewalk.renderer.card.Table.Col;
import linewalk.renderer.card.Table.Fill;
import linewalk.renderer.sheet.Row;
import linewalk.renderer.sheet.TextBlock;

/** The tables of a card, in the order of the work. */
final class Blocks {

    private static final double SIGN_PT = 38;

    private final CardJob job;
    private final Surroundings around;
    private final TextBlock text;

    private Blocks(CardJob job, TextBlock text) {
        this.job = job;
        this.text = text;
        around = new Surroundings(job);
    }

    static List<Block> of(CardJob job, TextBlock text) {
        Blocks b = new Blocks(job, text);
        List<Gauges.Gauge> gauges = Gauges.of(job, b.around);
        List<Block> blocks = new ArrayList<>();
        blocks.add(b.isolation());
        blocks.add(b.energy());
        blocks.add(b.gauges(gauges));
        blocks.add(b.measures(gauges));
        blocks.add(b.parts());
        blocks.add(b.notes());
        blocks.add(b.signatures());
        return blocks;
    }

    private Block isolation() {
        return tasks(
                "Isolation points",
                "Lock out and shut",
                Isolation.of(job, around),
                "The plant's lockout rules and its authorised people decide; this list follows the drawings and may miss"
                        + " something. Block raised loads and lock out drives before valves are shut: a pump that runs"
                        + " against a shut valve can be destroyed.");
    }

    private Block energy() {
        return tasks(
                "Stored energy",
                "Where it may be stored",
                StoredEnergy.of(job, around),
                "Locked out is not safe yet. Release, block or hold what is stored, and check again where it can build"
                        + " up anew (29 CFR 1910.147(d)(5)).");
    }

    private Block tasks(String title, String what, List<Task> tasks, String lead) {
        Table table = table(
                new Col("No.", 0.06, Fill.WORDS),
                new Col(what, 0.34, Fill.WORDS),
                new Col("Where", 0.16, Fill.WORDS),
                new Col("How", 0.25, Fill.WORDS),
                new Col("Done", 0.08, Fill.TICK),
                new Col("By", 0.11, Fill.PEN));
        List<Row> rows = new ArrayList<>();
        for (Task t : tasks) {
            rows.add(table.row(String.valueOf(rows.size() + 1), t.what(), t.where(), t.how()));
        }
        Row blank = table.row("", "", "", "");
        return new Block(title, text.paragraph("", 0, lead), table.head(), rows, List.of(blank, blank), false);
    }

    private Block gauges(List<Gauges.Gauge> gauges) {
        Table table = table(
                new Col("Test point", 0.12, Fill.WORDS),
                new Col("Where", 0.16, Fill.WORDS),
                new Col("Expected", 0.14, Fill.WORDS),
                new Col("Range of gauge", 0.20, Fill.WORDS),
                new Col("Follows from", 0.28, Fill.WORDS),
                new Col("Here", 0.10, Fill.TICK));
        List<Row> rows = new ArrayList<>();
        for (Gauges.Gauge g : gauges) {
            rows.add(table.row(g.tag(), g.where(), expected(g), g.range(), g.why()));
        }
        if (rows.isEmpty()) {
            rows.add(table.row("none drawn", "", "", "", "no test point on or beside this " + job.word()));
        }
        return new Block(
                "Gauges needed",
                text.paragraph(
                        "",
                        0,
                        "Ranges of EN 837-1 (from memory), the highest pressure known at no more than three quarters of"
                                + " the range (common practice). Hoses and couplings must stand the same pressure."),
                table.head(),
                rows,
                List.of(),
                false);
    }

    private static String expected(Gauges.Gauge g) {
        return g.expected().isPresent() ? Pressures.words(g.expected().getAsDouble()) : "not known";
    }

    private Block measures(List<Gauges.Gauge> gauges) {
        Table table = table(
                new Col("Test point", 0.12, Fill.WORDS),
                new Col("Tests", 0.16, Fill.WORDS),
                new Col("Oil there", 0.13, Fill.WORDS),
                new Col("Expected", 0.14, Fill.WORDS),
                new Col("Measured", 0.25, Fill.PEN),
                new Col("Unit", 0.10, Fill.WORDS),
                new Col("OK", 0.10, Fill.TICK));
        List<Row> rows = new ArrayList<>();
        for (Gauges.Gauge g : gauges) {
            rows.add(table.row(g.tag(), g.of(), g.oil().isEmpty() ? "not known" : g.oil(), expected(g), "bar"));
        }
        if (rows.isEmpty()) {
            rows.add(table.row("", "", "", "", ""));
        }
        return new Block(
                "Expected and measured",
                text.paragraph("", 0, job.head().condition() + ". Measure in this state only."),
                table.head(),
                rows,
                List.of(table.row("", "", "", "", "")),
                false);
    }

    private Block parts() {
        Table table = table(
                new Col("No.", 0.06, Fill.WORDS),
                new Col("Item", 0.08, Fill.WORDS),
                new Col("Tag", 0.11, Fill.WORDS),
                new Col("Part, setting", 0.32, Fill.WORDS),
                new Col("Where", 0.15, Fill.WORDS),
                new Col("Checked", 0.12, Fill.TICK),
                new Col("Remark", 0.16, Fill.PEN));
        List<Row> rows = new ArrayList<>();
        for (Component c : Checklist.of(job)) {
            String setting = job.names().setting(c);
            rows.add(table.row(
                    String.valueOf(rows.size() + 1),
                    job.names().item(c),
                    c.tag(),
                    job.names().description(c) + (setting.isEmpty() ? "" : ", " + setting),
                    job.address(c)));
        }
        String title = job.isPath() ? "Parts in the order of the path" : "Parts of this circuit to check";
        return new Block(title, List.of(), table.head(), rows, List.of(), false);
    }

    private Block notes() {
        Table table = table(new Col("Found, done, parts used", 1, Fill.PEN));
        return new Block(
                "Notes", List.of(), table.head(), List.of(table.row(), table.row(), table.row()), List.of(), true);
    }

    private Block signatures() {
        Table table = new Table(
                text.widthPt(),
                SIGN_PT,
                new Col("", 0.18, Fill.WORDS),
                new Col("Name", 0.26, Fill.PEN),
                new Col("Signature", 0.26, Fill.PEN),
                new Col("Date", 0.16, Fill.PEN),
                new Col("Time", 0.14, Fill.PEN));
        List<Row> rows = new ArrayList<>();
        for (String who : List.of("Isolated by", "Work done by", "Tested by", "Released by")) {
            rows.add(table.row(who));
        }
        return new Block("Sign-off", List.of(), table.head(), rows, List.of(), true);
    }

    private Table table(Col... cols) {
        return new Table(text.widthPt(), Table.PEN_PT, cols);
    }
}
