package linewalk.importer.frame;

import java.util.Set;
import linewalk.drawing.Box;
import linewalk.drawing.ZoneGrid;
import linewalk.importer.lettering.Label;

/**
 * The border of a sheet.
 *
 * @param grid null where no zone labels are printed
 * @param inner the drawing area inside the strips of zone labels; the whole page where there is no grid
 * @param labels the zone labels themselves
 */
public record Frame(ZoneGrid grid, Box inner, Set<Label> labels) {

    public Frame {
        labels = Set.copyOf(labels);
    }
}
