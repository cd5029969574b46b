package linewalk.linker.step;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Which way oil goes in each line.
 *
 * @param senses by line id, one for each of the line's ends in their order
 */
public record LineFlows(Map<String, List<Sense>> senses) {

    public LineFlows {
        senses = Map.copyOf(senses);
    }

    /** What several answers for the same lines have in common. */
    static LineFlows agreed(List<LineFlows> answers) {
        Map<String, List<Sense>> agreed = new HashMap<>(answers.get(0).senses);
        answers.forEach(a -> a.senses.forEach((line, ends) -> agreed.merge(line, ends, LineFlows::agreed)));
        return new LineFlows(agreed);
    }

    private static List<Sense> agreed(List<Sense> a, List<Sense> b) {
        List<Sense> agreed = new ArrayList<>();
        for (int i = 0; i < a.size(); i++) {
            agreed.add(a.get(i) == b.get(i) ? a.get(i) : Sense.UNKNOWN);
        }
        return agreed;
    }
}
