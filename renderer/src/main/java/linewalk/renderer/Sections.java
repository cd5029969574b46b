package linewalk.renderer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import linewalk.drawing.Component;
import linewalk.drawing.End;
import linewalk.drawing.Line;
import linewalk.drawing.Origin;
import linewalk.drawing.PageKey;
import linewalk.drawing.Reference;
import linewalk.drawing.Sheet;
import linewalk.drawing.Target;
import linewalk.linker.Leg;
import linewalk.renderer.sheet.Ink;
import linewalk.renderer.sheet.Lettering;
import linewalk.renderer.sheet.Row;
import linewalk.renderer.sheet.TextBlock;

/** What a print says beside its picture, in reading order. */
final class Sections {

    static final String CAUTIONS = "Before you open anything";

    private static final double SAMPLE_PT = 52;

    private final PrintJob job;
    private final Words words;
    private final Doubts doubts;
    private final TextBlock text;
    private final List<Row> rows = new ArrayList<>();

    private Sections(PrintJob job, Doubts doubts, double widthPt) {
        this.job = job;
        this.doubts = doubts;
        words = new Words(job);
        text = new TextBlock(widthPt);
    }

    static List<Row> of(PrintJob job, Doubts doubts, Picture picture, double widthPt) {
        Sections s = new Sections(job, doubts, widthPt);
        s.shifts();
        s.cautions();
        s.doubts(picture);
        s.table();
        s.legend(picture.legend());
        s.walk();
        s.sheets();
        return s.rows;
    }

    private void shifts() {
        Set<String> lines = new LinkedHashSet<>();
        for (Leg leg : job.subject().legs()) {
            if (leg instanceof Leg.Through t && t.shift() != null) {
                lines.add(words.shift(t.component(), t.shift()) + ".");
            }
        }
        if (lines.isEmpty()) {
            return;
        }
        List<String> paragraphs = new ArrayList<>();
        paragraphs.add("This path is open only after valves have shifted:");
        paragraphs.addAll(lines);
        rows.addAll(text.framed(paragraphs));
    }

    private void doubts(Picture picture) {
        rows.addAll(text.heading("Doubts"));
        if (job.subject().isPath() && !Words.arrives(job.trace())) {
            rows.addAll(text.paragraph("!", 26, "This walk stops before it arrives: see its last sentence."));
        } else if (doubts.all().isEmpty() && unread().isEmpty()) {
            rows.addAll(text.paragraph(
                    "",
                    0,
                    job.subject().isPath()
                            ? "None on this path. That does not prove the drawing right. Its branches were not checked."
                            : "None in this circuit. That does not prove the drawing right."));
        }
        for (Doubts.Doubt d : doubts.all()) {
            String where = d.page() == null
                    ? ""
                    : " ("
                            + (d.place() == null
                                    ? "sheet " + job.set().getSheet(d.page()).name()
                                    : job.set().address(d.page(), d.place()))
                            + ")";
            rows.addAll(text.paragraph(
                    d.mark(), 26, d.text() + where + (picture.marks(d) ? "" : " (not marked in the picture)")));
        }
        if (!unread().isEmpty()) {
            rows.addAll(text.paragraph(
                    "!",
                    26,
                    "Which way these let oil through was not read: " + String.join(", ", unread())
                            + ". The path takes it to be along its arrows: look at their symbols on the drawing."));
        }
        Set<String> corrected = corrected();
        if (!corrected.isEmpty()) {
            rows.addAll(text.paragraph(
                    "!", 26, "The drawing says otherwise; corrected by hand: " + String.join("; ", corrected) + "."));
        }
        picture.remarks().forEach(r -> rows.addAll(text.paragraph("!", 26, r)));
    }

    /** Where the drawing itself still says something else. */
    private Set<String> corrected() {
        Set<String> remarks = new LinkedHashSet<>();
        SetIndex index = new SetIndex(job.set());
        for (Line line : job.subject().excerpt().lines()) {
            for (End e : line.ends()) {
                Reference r = e instanceof End.AtReference at ? index.reference(at.reference()) : null;
                if (r == null || r.origin() != Origin.HAND) {
                    continue;
                }
                String targets = r.targets().stream().map(Target::toString).collect(Collectors.joining(", "));
                if (!targets.isEmpty() && !targets.equals(r.text())) {
                    remarks.add(words.address(r) + ", " + r.text() + " to " + targets);
                }
            }
        }
        return remarks;
    }

    private Set<String> unread() {
        Set<String> parts = new LinkedHashSet<>();
        for (Leg leg : job.subject().legs()) {
            if (leg instanceof Leg.Through t && Words.isWayUnread(t)) {
                parts.add(words.called(t.component()));
            }
        }
        return parts;
    }

    private void table() {
        rows.addAll(text.heading(job.subject().isPath() ? "Parts on this path" : "Parts of this circuit"));
        double w = text.widthPt();
        List<Double> widths = List.of(32.0, 62.0, 74.0, w * 0.52 - 74, w * 0.48 - 94);
        rows.add(text.cells(widths, List.of("Item", "Tag", "Sheet", "Description", "Setting"), true));
        for (Component c : listed()) {
            String address = words.address(c).replaceFirst("^sheet ", "");
            rows.add(text.cells(
                            widths,
                            List.of(words.balloon(c), c.tag(), address, words.description(c), words.setting(c)),
                            false)
                    .about(c.id()));
        }
        rows.add(Row.gap(4));
    }

    /** Of a circuit, with the gauges and test points on its lines; cuttings show all that its lines lead to. */
    private Set<Component> components() {
        Set<Component> parts = new LinkedHashSet<>(job.subject().excerpt().parts());
        SetIndex index = new SetIndex(job.set());
        for (Line line : job.subject().isPath()
                ? Set.<Line>of()
                : job.subject().excerpt().lines()) {
            line.ends().stream()
                    .filter(End.AtPort.class::isInstance)
                    .map(e -> index.part(((End.AtPort) e).component()))
                    .filter(c -> c != null && (job.form().look() == Look.CUTTINGS || SchemeDraft.isInstrument(c)))
                    .forEach(parts::add);
        }
        return parts;
    }

    /** A path in its order; a circuit by item number, those without one last. */
    private List<Component> listed() {
        List<Component> parts = new ArrayList<>(components());
        if (!job.subject().isPath()) {
            parts.sort(Comparator.comparingInt(c -> words.item(c.tag()).orElse(Integer.MAX_VALUE)));
        }
        return parts;
    }

    private void legend(List<Picture.Mark> marks) {
        rows.addAll(text.heading("Marks on this print"));
        for (Picture.Mark m : marks) {
            List<String> lines = Lettering.wrap(m.meaning(), Lettering.TEXT_PT, text.widthPt() - SAMPLE_PT);
            double height = Math.max(25, lines.size() * Lettering.LEADING_PT + 5);
            rows.add(new Row(height, false, (c, x, y) -> {
                m.sample().paint(c, x, y + 1);
                c.pen(Ink.BLACK, Ink.line(1));
                for (int i = 0; i < lines.size(); i++) {
                    c.text(lines.get(i), x + SAMPLE_PT, y + 13 + i * Lettering.LEADING_PT, Lettering.TEXT_PT);
                }
            }));
        }
    }

    private void cautions() {
        List<Row> all = new ArrayList<>(text.heading(CAUTIONS));
        String stored = new HeldEnergy(job)
                .accumulators(job.subject().excerpt()).stream()
                        .map(c -> c.tag() + ": " + words.address(c).replaceFirst("^sheet ", ""))
                        .distinct()
                        .collect(Collectors.joining("; "));
        Cautions.all(stored).forEach(c -> all.addAll(text.paragraph("\u2022", 12, c)));
        rows.addAll(Row.together(all));
    }

    private void walk() {
        if (!job.subject().isPath()) {
            return;
        }
        rows.addAll(text.heading("The walk in words"));
        int n = 1;
        for (String sentence : Walk.sentences(job)) {
            rows.addAll(text.paragraph(n++ + ".", 26, sentence));
        }
    }

    private void sheets() {
        rows.addAll(text.heading("Source sheets"));
        SheetTitles titles = SheetTitles.of(job.set());
        for (Sheet s : sheets(job)) {
            String title = s.title() == null ? "no title read" : titles.own(s.title());
            String revision = s.revision() == null ? ", no revision read" : ", revision " + s.revision();
            String file = s.page().source().replaceFirst("^.*[/\\\\]", "");
            rows.addAll(text.paragraph(
                    s.name(),
                    34,
                    title + revision + " (" + file + " page " + s.page().page() + ")"));
        }
    }

    /** The sheets shown, each once, in the order first reached. */
    static List<Sheet> sheets(PrintJob job) {
        Set<PageKey> pages = new LinkedHashSet<>();
        for (Leg leg : job.subject().legs()) {
            if (leg instanceof Leg.Through t) {
                pages.add(t.component().page());
            } else if (leg instanceof Leg.Along a) {
                pages.add(a.line().page());
            } else if (leg instanceof Leg.Across x) {
                pages.add(x.from().page());
                pages.add(x.to().page());
            }
        }
        job.subject().excerpt().parts().forEach(c -> pages.add(c.page()));
        job.subject().excerpt().lines().forEach(l -> pages.add(l.page()));
        return pages.stream().map(job.set()::getSheet).toList();
    }
}
