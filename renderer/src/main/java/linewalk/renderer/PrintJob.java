package linewalk.renderer;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.function.Function;
import linewalk.drawing.CycleChart;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.Part;
import linewalk.linker.Trace;

/**
 * All that one print is made of.
 *
 * @param step the step that the trace was asked for, or null for the machine at rest, as drawn
 * @param itemNumbers by designation; they belong to the set and are the same on all its prints
 * @param parts rows of the parts list by designation
 * @param sources where a source named in a page key lies; the file may be missing
 * @param upright the paper's short side is its width
 * @param date printed, and the date of the file made
 */
public record PrintJob(
        DrawingSet set,
        Trace trace,
        CycleChart.Step step,
        Map<String, Integer> itemNumbers,
        Map<String, Part> parts,
        Function<String, Path> sources,
        Paper paper,
        boolean upright,
        Look look,
        LocalDate date,
        String setTitle) {

    public PrintJob {
        itemNumbers = Map.copyOf(itemNumbers);
        parts = Map.copyOf(parts);
    }

    double widthPt() {
        return upright ? paper.heightPt() : paper.widthPt();
    }

    double heightPt() {
        return upright ? paper.widthPt() : paper.heightPt();
    }

    /** Wide enough for a column of text beside the picture. */
    boolean isWide() {
        return widthPt() > 1000;
    }
}
