package linewalk.importer;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.Locale;
import linewalk.drawing.Component;
import linewalk.drawing.End;
import linewalk.drawing.Flow;
import linewalk.drawing.Line;
import linewalk.drawing.Port;
import linewalk.drawing.ReferenceReading;
import linewalk.drawing.SheetReading;
import linewalk.drawing.Target;
import linewalk.drawing.ZoneGrid;

/** What a reading says, in short words. */
final class Said {

    private Said() {}

    /** One text a line: its ends in order of name, such as {@code P1 - V1:P - to 2/B4 - open}. */
    static List<String> lines(SheetReading r) {
        return r.lines().stream().map(l -> line(l, r)).sorted().toList();
    }

    static String line(Line l, SheetReading r) {
        return l.ends().stream().map(e -> end(e, r)).sorted().collect(joining(" - "));
    }

    private static String end(End e, SheetReading r) {
        if (e instanceof End.AtPort at) {
            Component c = r.components().stream()
                    .filter(x -> x.id().equals(at.component()))
                    .findFirst()
                    .orElse(null);
            if (c == null) {
                return "?";
            }
            Port p = c.findPort(at.port()).orElseThrow();
            String tag = c.tag() == null ? "?" : c.tag();
            return p.name() == null ? tag : tag + ":" + p.name();
        }
        if (e instanceof End.AtReference at) {
            return r.references().stream()
                    .filter(x -> x.id().equals(at.reference()))
                    .map(x -> "to " + targets(x))
                    .findFirst()
                    .orElseThrow();
        }
        return "open";
    }

    /** One text a reference: targets of the likeliest reading and, where known, label and flow. */
    static List<String> references(SheetReading r) {
        return r.references().stream().map(Said::reference).sorted().toList();
    }

    static String reference(ReferenceReading r) {
        String flow = r.flow() == Flow.UNKNOWN ? "" : " " + r.flow().name().toLowerCase(Locale.ROOT);
        return targets(r) + (r.label() == null ? "" : " " + r.label()) + flow;
    }

    /** {@code 2/B4} or {@code 2/B4, 3/C1}. */
    static String targets(ReferenceReading r) {
        return r.readings().get(0).targets().stream().map(Target::toString).collect(joining(", "));
    }

    static List<String> tags(SheetReading r) {
        return r.components().stream().map(Component::tag).sorted().toList();
    }

    static Component component(SheetReading r, String tag) {
        return r.components().stream()
                .filter(c -> tag.equals(c.tag()))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + tag + " among " + tags(r)));
    }

    static String columns(ZoneGrid g) {
        return g.columns().stream().map(ZoneGrid.Band::label).collect(joining(" "));
    }

    static String rows(ZoneGrid g) {
        return g.rows().stream().map(ZoneGrid.Band::label).collect(joining(" "));
    }
}
