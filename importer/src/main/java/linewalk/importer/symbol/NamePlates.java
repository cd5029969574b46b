package linewalk.importer.symbol;

import java.util.List;
import linewalk.drawing.Box;
import linewalk.importer.lettering.Label;
import linewalk.importer.page.Near;
import linewalk.importer.page.Stroke;

/** Frames drawn closely around designations that stand beside their parts: no parts, nothing is joined to them. */
final class NamePlates {

    /** How far the frame may stand off the name, in text sizes, both sides together. */
    private static final double ROOM = 1.5;

    private NamePlates() {}

    static List<Outline> find(List<Outline> closed, List<Label> labels, List<Stroke> strokes, double tolPt) {
        Near<Label> names = new Near<>(labels, Label::box);
        Near<Stroke> near = new Near<>(strokes, Stroke::box);
        return closed.stream()
                .filter(o -> o.rectangle() && o.stroke().dash().solid())
                .filter(o -> isAroundName(o.box(), names.touching(o.box())))
                .filter(o -> isFree(o, near, tolPt))
                .toList();
    }

    private static boolean isAroundName(Box b, List<Label> inside) {
        return inside.size() == 1
                && inside.stream()
                        .allMatch(l -> b.contains(l.box())
                                && Designations.looksLike(l.text())
                                && b.widthPt() - l.box().widthPt() < ROOM * l.sizePt()
                                && b.heightPt() - l.box().heightPt() < ROOM * l.sizePt());
    }

    /** No stroke bends or ends at it. */
    static boolean isFree(Outline o, Near<Stroke> strokes, double tolPt) {
        Box around = o.box().grow(tolPt);
        return strokes.touching(around).stream()
                .noneMatch(s -> s != o.stroke() && s.points().stream().anyMatch(around::contains));
    }
}
