package linewalk.drawing;

import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;

/**
 * Something on the drawings that does not agree or was read with doubt.
 *
 * @param page null where it concerns the set as a whole
 * @param place null where it concerns the page as a whole
 * @param references ids
 * @param components designations
 * @param message the evidence in a sentence
 * @param remedy what likely puts it right, or null
 */
public record Finding(
        Rule rule,
        PageKey page,
        Point place,
        List<String> references,
        List<String> components,
        String message,
        String remedy) {

    public Finding {
        references = List.copyOf(references);
        components = List.copyOf(components);
    }

    @JsonIgnore
    public Severity severity() {
        return rule.severity();
    }
}
