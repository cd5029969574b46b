package linewalk.drawing;

import com.fasterxml.jackson.annotation.JsonCreator;
import java.util.List;

/**
 * Something on the drawings that does not agree or was read with doubt.
 *
 * @param severity the rule's own, or what the set's settings weigh it with
 * @param page null where it concerns the set as a whole
 * @param place null where it concerns the page as a whole
 * @param references ids
 * @param components designations
 * @param message the evidence in a sentence
 * @param remedy what likely puts it right, or null
 * @param id short and the same as long as the drawing there stays as it is; null until the set is checked
 * @param kept why a person keeps it as it is, or null
 */
public record Finding(
        Rule rule,
        Severity severity,
        PageKey page,
        Point place,
        List<String> references,
        List<String> components,
        String message,
        String remedy,
        String id,
        String kept) {

    @JsonCreator
    public Finding {
        severity = severity == null ? rule.severity() : severity;
        references = List.copyOf(references);
        components = List.copyOf(components);
    }

    /** A finding of its rule's own severity that nobody has looked at. */
    public Finding(
            Rule rule,
            PageKey page,
            Point place,
            List<String> references,
            List<String> components,
            String message,
            String remedy) {
        this(rule, rule.severity(), page, place, references, components, message, remedy, null, null);
    }

    public Finding weighed(Severity value) {
        return new Finding(rule, value, page, place, references, components, message, remedy, id, kept);
    }

    public Finding called(String value) {
        return new Finding(rule, severity, page, place, references, components, message, remedy, value, kept);
    }

    public Finding saying(String value) {
        return new Finding(rule, severity, page, place, references, components, value, remedy, id, kept);
    }

    public Finding kept(String reason) {
        return new Finding(rule, severity, page, place, references, components, message, remedy, id, reason);
    }
}
