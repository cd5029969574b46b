package linewalk.renderer;

import java.nio.file.Path;
import java.util.Map;
import java.util.function.Function;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.Part;
import linewalk.renderer.ink.Palette;

/**
 * What all prints of a set share.
 *
 * @param itemNumbers by designation; they belong to the set and are the same on all its prints
 * @param parts rows of the parts list by designation
 * @param sources where a source named in a page key lies; the file may be missing
 */
public record SetFacts(
        String title,
        DrawingSet set,
        Map<String, Integer> itemNumbers,
        Map<String, Part> parts,
        Function<String, Path> sources,
        Palette palette) {

    public SetFacts {
        itemNumbers = Map.copyOf(itemNumbers);
        parts = Map.copyOf(parts);
    }
}
