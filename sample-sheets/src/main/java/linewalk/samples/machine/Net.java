package linewalk.samples.machine;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Line work of one sheet that is joined. {@code classes} has one letter a state, a dot where no class is claimed. */
public record Net(String id, int sheet, LineKind kind, String classes, List<Run> runs) {
    private static final Map<Character, String> CLASS_NAMES = Map.of(
            'S', "supply", 'E', "reduced", 'H', "held", 'R', "return", 'I', "intake", 'D', "drain", 'X', "pilot");

    /** Ports as TAG:PORT and reference ids, in drawing order. */
    public List<String> ends() {
        List<String> out = new ArrayList<>();
        for (Run run : runs) {
            for (Run.End end : List.of(run.first(), run.last())) {
                if (end.port() != null) {
                    out.add(end.port());
                } else if (end.reference() != null) {
                    out.add(end.reference().id());
                }
            }
        }
        return out;
    }

    /** The pressure class in a state, or null where none is claimed. */
    public String classIn(int state) {
        return CLASS_NAMES.get(classes.charAt(state));
    }
}
