package linewalk.importer.symbol;

import java.util.List;
import java.util.regex.Pattern;
import linewalk.importer.lettering.Label;
import linewalk.importer.page.Near;
import linewalk.importer.page.Stroke;

/** Triangles with a revision's letter or number, set beside what a revision changed: no parts, nothing is joined to them. */
final class RevisionMarks {

    private static final Pattern REVISION = Pattern.compile("[A-Z]|\\d{1,2}");

    private RevisionMarks() {}

    static List<Outline> find(List<Outline> closed, List<Label> labels, List<Stroke> strokes, double tolPt) {
        Near<Label> revisions = new Near<>(
                labels.stream()
                        .filter(l -> REVISION.matcher(l.text()).matches())
                        .toList(),
                Label::box);
        Near<Stroke> near = new Near<>(strokes, Stroke::box);
        return closed.stream()
                .filter(o -> o.stroke().points().size() == 3
                        && o.stroke().dash().solid()
                        && !o.stroke().filled())
                .filter(o -> revisions.touching(o.box()).stream()
                        .anyMatch(l -> o.covers(l.center()) && o.box().contains(l.box())))
                .filter(o -> NamePlates.isFree(o, near, tolPt))
                .toList();
    }
}
