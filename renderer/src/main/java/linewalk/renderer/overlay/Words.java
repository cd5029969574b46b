package linewalk.renderer.overlay;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import linewalk.drawing.Component;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.Flow;
import linewalk.drawing.Kind;
import linewalk.drawing.Line;
import linewalk.drawing.LineKind;
import linewalk.drawing.Origin;
import linewalk.drawing.PageKey;
import linewalk.drawing.Point;
import linewalk.drawing.Reference;
import linewalk.drawing.Sheet;
import linewalk.drawing.Target;

/** What was read, in the few words that a label has room for. */
final class Words {

    private static final int MOST_MATES = 3;

    private final DrawingSet set;

    Words(DrawingSet set) {
        this.set = set;
    }

    static List<String> of(Component c) {
        String kind =
                c.kind() == Kind.UNKNOWN ? "kind not known" : c.kind().word().replace('-', ' ');
        List<String> rows = new ArrayList<>();
        rows.add((c.tag() == null || c.tag().isBlank() ? "no designation" : c.tag())
                + (c.setting() == null ? "" : "  " + c.setting()));
        rows.add(kind + " " + confidence(c.confidence()) + how(c.origin()));
        return rows;
    }

    List<String> of(Reference r) {
        List<String> rows = new ArrayList<>();
        String to = r.targets().isEmpty()
                ? "to nowhere"
                : "to " + r.targets().stream().map(Target::toString).collect(Collectors.joining(", "));
        rows.add(to + (r.label() == null ? "" : "  " + r.label()) + "  " + flow(r.flow()) + " "
                + confidence(r.confidence()) + how(r.origin()));
        if (r.origin() == Origin.OCR) {
            rows.add("read: " + r.text());
        }
        rows.add(mates(r));
        return rows;
    }

    private String mates(Reference r) {
        if (r.mates().isEmpty()) {
            return "no mate";
        }
        String places = r.mates().stream().limit(MOST_MATES).map(this::address).collect(Collectors.joining("; "));
        int more = r.mates().size() - MOST_MATES;
        return "mate: " + places + (more > 0 ? "; " + more + " more" : "") + " " + confidence(r.mateConfidence());
    }

    private String address(String id) {
        return set.references().stream()
                .filter(m -> m.id().equals(id))
                .findFirst()
                .map(m -> sheet(m.page()) + (m.zone() == null ? "" : "/" + m.zone()))
                .orElse("not in the set");
    }

    private String sheet(PageKey page) {
        return set.getSheet(page).name();
    }

    /** Empty where there is nothing to say of a line beyond its course. */
    static String of(Line line) {
        List<String> words = new ArrayList<>();
        words.add(line.label());
        words.add(line.size());
        words.add(line.kind() == LineKind.WORKING ? null : line.kind().name().toLowerCase(Locale.ROOT));
        words.add(Doubt.of(line) ? confidence(line.confidence()) + "?" : null);
        return words.stream().filter(Objects::nonNull).collect(Collectors.joining(" "));
    }

    /** "C7", or null where the sheet has no grid. */
    static String zone(Sheet sheet, Point place) {
        return sheet.grid() == null || place == null
                ? null
                : sheet.grid().zoneAt(place).map(Object::toString).orElse(null);
    }

    static String titled(Sheet sheet) {
        return "Sheet " + sheet.name() + (sheet.title() == null ? "" : ": " + sheet.title());
    }

    static String confidence(double value) {
        // never rounded up to a promise that was not made
        return String.format(Locale.ROOT, "%.2f", Math.floor(value * 100 + 1e-9) / 100);
    }

    private static String flow(Flow flow) {
        return flow == Flow.UNKNOWN ? "flow ?" : flow == Flow.OUT ? "out" : "in";
    }

    static String how(Origin origin) {
        return switch (origin) {
            case TEXT -> "";
            case OCR -> " ocr";
            case HAND -> " by hand";
            case ORDER -> " by order";
        };
    }
}
