package linewalk.linker;

import java.util.List;
import java.util.Set;
import linewalk.drawing.Box;
import linewalk.drawing.Flow;
import linewalk.drawing.LineKind;
import linewalk.drawing.Origin;
import linewalk.drawing.Point;
import linewalk.drawing.Target;
import linewalk.drawing.Zone;

/**
 * A candidate that the linker took for a reference.
 *
 * @param zone where its text stands, or null
 * @param touched every zone that counts as its place: of its text, of its line's end, of most of its box
 * @param kind of the line it ends, or null where none meets it
 * @param keys its names for comparison, made once
 */
record Ref(
        PageDraft page,
        String id,
        Point place,
        Box box,
        Zone zone,
        Set<Zone> touched,
        String text,
        List<Target> targets,
        String label,
        Flow flow,
        Origin origin,
        double confidence,
        LineKind kind,
        Keys keys) {

    /** Its sheet's name, its label and its targets' sheets in the form in which they are compared. */
    record Keys(String sheet, String label, List<String> targets) {
        static Keys of(PageDraft page, String label, List<Target> targets) {
            return new Keys(
                    Names.sheetKey(page.name),
                    Names.labelKey(label),
                    targets.stream().map(t -> Names.sheetKey(t.sheet())).toList());
        }
    }

    String sheetKey() {
        return keys.sheet;
    }

    String labelKey() {
        return keys.label;
    }

    String address() {
        return page.address(place);
    }

    /** {@code '2.E1' on sheet 1, B4}. */
    String said() {
        return "'" + text + "' on " + address();
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof Ref r && r.id.equals(id);
    }

    @Override
    public int hashCode() {
        return id.hashCode();
    }
}
