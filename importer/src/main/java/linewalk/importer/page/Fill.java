package linewalk.importer.page;

import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Point;

/**
 * A painted outline.
 *
 * @param light painted in white or nearly so: a mask over what lies beneath, no mark
 */
public record Fill(List<Point> outline, boolean curved, boolean light) {

    public Fill {
        outline = List.copyOf(outline);
    }

    public Box box() {
        return Box.around(outline);
    }
}
