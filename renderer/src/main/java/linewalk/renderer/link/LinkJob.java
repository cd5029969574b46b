package linewalk.renderer.link;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import linewalk.drawing.DrawingSet;
import linewalk.linker.Trace;

/**
 * All that the linked copies of a set are made of.
 *
 * @param sources where a source named in a page key lies
 * @param names the file name of each source's copy; copies find one another by it, side by side in one folder
 * @param trace a path to be shown too
 */
public record LinkJob(
        DrawingSet set, Function<String, Path> sources, Map<String, String> names, Optional<Trace> trace) {

    public LinkJob {
        names = Map.copyOf(names);
    }
}
