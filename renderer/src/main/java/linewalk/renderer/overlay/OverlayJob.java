package linewalk.renderer.overlay;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.Sheet;

/**
 * All that one overlay is made of.
 *
 * @param sheets those to print, of the set and in its order
 * @param sources where a source named in a page key lies; the file may be missing
 * @param date the date of the file made
 */
public record OverlayJob(
        DrawingSet set, List<Sheet> sheets, Function<String, Path> sources, LocalDate date, String setTitle) {

    public OverlayJob {
        sheets = List.copyOf(sheets);
    }
}
