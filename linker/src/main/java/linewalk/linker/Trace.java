package linewalk.linker;

import java.util.List;
import linewalk.drawing.Finding;

/**
 * An ordered walk through passages, lines and mates.
 *
 * @param question as asked, with {@code to} filled in
 * @param sheets names of the sheets passed, in order, a sheet again each time it is entered
 * @param doubts joins, mates and passages on the way that are not sure (only with cross-doubt)
 */
public record Trace(Question question, List<Leg> legs, List<String> sheets, List<Finding> doubts) {

    public Trace {
        legs = List.copyOf(legs);
        sheets = List.copyOf(sheets);
        doubts = List.copyOf(doubts);
    }
}
