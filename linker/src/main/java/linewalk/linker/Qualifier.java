package linewalk.linker;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import linewalk.drawing.Component;
import linewalk.drawing.End;
import linewalk.drawing.Finding;
import linewalk.drawing.Line;
import linewalk.drawing.Passage;
import linewalk.drawing.Port;
import linewalk.drawing.Position;
import linewalk.drawing.ReferenceReading;

/** Ids are unique on their page only: a prefix from the sheet's name makes them unique in the set. */
final class Qualifier {

    private Qualifier() {}

    /** Needs the sheets' names; leaves each page's draft filled with what was read, under ids of the set. */
    static void fill(List<PageDraft> pages) {
        Map<String, Integer> uses = new HashMap<>();
        pages.forEach(p -> uses.merge(Names.sheetKey(p.name), 1, Integer::sum));
        OtherNames others = new OtherNames(pages);
        for (PageDraft p : pages) {
            fill(p, others, prefix(p, uses.get(Names.sheetKey(p.name)) == 1));
        }
    }

    static String prefix(PageDraft page, boolean unique) {
        String name = slug(page.name);
        return unique ? name + ":" : name + "-" + slug(page.page.source()) + "-" + page.page.page() + ":";
    }

    private static String slug(String text) {
        return text.strip().replaceAll("[^\\p{L}\\p{Nd}._-]+", "-");
    }

    private static void fill(PageDraft page, OtherNames others, String prefix) {
        page.idPrefix = prefix;
        page.reading.references().forEach(r -> page.candidates.add(reference(r, others, prefix)));
        page.reading.components().forEach(c -> page.components.add(component(c, prefix)));
        page.reading.lines().forEach(l -> page.lines.add(line(l, prefix)));
        page.enclosures.addAll(page.reading.enclosures());
        page.reading.doubts().forEach(f -> page.doubts.add(finding(f, prefix)));
    }

    private static ReferenceReading reference(ReferenceReading r, OtherNames others, String prefix) {
        return new ReferenceReading(
                prefix + r.id(),
                r.place(),
                r.box(),
                r.text(),
                r.form(),
                others.settle(r),
                r.label(),
                r.flow(),
                r.tip(),
                r.evidence(),
                r.origin(),
                r.confidence());
    }

    private static Component component(Component c, String prefix) {
        List<Port> ports = c.ports().stream()
                .map(p -> new Port(prefix + p.id(), p.name(), p.place(), p.confidence()))
                .toList();
        List<Position> positions =
                c.positions().stream().map(p -> position(p, prefix)).toList();
        return new Component(
                prefix + c.id(),
                c.tag(),
                c.page(),
                c.place(),
                c.box(),
                c.kind(),
                c.setting(),
                c.origin(),
                c.confidence(),
                ports,
                positions,
                c.symbol());
    }

    private static Position position(Position p, String prefix) {
        List<Passage> passages = p.passages().stream()
                .map(x -> new Passage(prefix + x.from(), prefix + x.to(), x.oneWay(), x.throttled(), x.opens()))
                .toList();
        return new Position(p.by(), p.how(), passages);
    }

    private static Line line(Line l, String prefix) {
        List<End> ends = l.ends().stream().map(e -> end(e, prefix)).toList();
        return new Line(prefix + l.id(), l.page(), l.kind(), l.label(), l.size(), l.confidence(), ends, l.runs());
    }

    private static End end(End e, String prefix) {
        if (e instanceof End.AtPort p) {
            return new End.AtPort(prefix + p.component(), prefix + p.port(), p.place());
        }
        return e instanceof End.AtReference r ? new End.AtReference(prefix + r.reference(), r.place()) : e;
    }

    private static Finding finding(Finding f, String prefix) {
        return new Finding(
                f.rule(),
                f.page(),
                f.place(),
                f.references().stream().map(id -> prefix + id).toList(),
                f.components(),
                f.message(),
                f.remedy());
    }
}
