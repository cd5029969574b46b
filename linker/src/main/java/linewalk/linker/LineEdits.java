package linewalk.linker;

import java.util.List;
import java.util.function.UnaryOperator;
import linewalk.drawing.Component;
import linewalk.drawing.End;
import linewalk.drawing.Line;
import linewalk.drawing.Port;
import linewalk.drawing.Position;

/** Copies of lines and components with one thing changed. */
final class LineEdits {

    private LineEdits() {}

    static void replaceEnds(PageDraft page, UnaryOperator<End> change) {
        page.lines.replaceAll(l -> {
            List<End> ends = l.ends().stream().map(change).toList();
            return ends.equals(l.ends()) ? l : with(l, ends, l.confidence());
        });
    }

    static Line with(Line l, List<End> ends, double confidence) {
        return new Line(l.id(), l.page(), l.kind(), l.label(), l.size(), confidence, ends, l.runs());
    }

    static Component with(Component c, List<Port> ports, List<Position> positions) {
        return new Component(
                c.id(),
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
}
