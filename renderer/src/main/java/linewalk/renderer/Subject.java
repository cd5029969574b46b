package linewalk.renderer;

import java.util.List;
import linewalk.linker.Excerpt;
import linewalk.linker.Excerpts;
import linewalk.linker.Leg;
import linewalk.linker.Trace;

/**
 * What a print shows: a path, or a circuit.
 *
 * @param trace null for a circuit
 */
public record Subject(Excerpt excerpt, Trace trace) {

    public static Subject of(Trace trace) {
        return new Subject(Excerpts.path(trace), trace);
    }

    public static Subject of(Excerpt circuit) {
        return new Subject(circuit, null);
    }

    public String title() {
        return trace == null ? excerpt.title() : Words.route(trace.question());
    }

    /** None for a circuit. */
    List<Leg> legs() {
        return trace == null ? List.of() : trace.legs();
    }

    boolean isPath() {
        return trace != null;
    }
}
