package linewalk.drawing;

import com.fasterxml.jackson.annotation.JsonCreator;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What people set for a drawing set ({@code set.json}).
 *
 * @param sources PDF files, relative to the set's folder or absolute, in order
 * @param patterns the set's own forms of reference: regular expressions with the named groups {@code sheet} and, if
 *     wanted, {@code zone} and {@code label}
 * @param standardGrid a standard's grid for sheets that print none: {@code iso5457}, {@code asme-y14.1} or
 *     {@code columnsxrows} such as {@code 4x4}; null for none
 * @param palette colours of the pressure classes on prints: {@code own} or {@code published}; null for own
 * @param rules what findings of a rule weigh, by the rule's word: {@code off}, {@code note}, {@code warning} or {@code
 *     error}
 */
public record SetSettings(
        List<String> sources, List<String> patterns, String standardGrid, String palette, Map<String, String> rules) {

    @JsonCreator
    public SetSettings {
        sources = sources == null ? List.of() : List.copyOf(sources);
        patterns = patterns == null ? List.of() : List.copyOf(patterns);
        rules = rules == null ? Map.of() : Collections.unmodifiableMap(new LinkedHashMap<>(rules));
    }

    /** Our own palette, and all rules with their own weights. */
    public SetSettings(List<String> sources, List<String> patterns, String standardGrid) {
        this(sources, patterns, standardGrid, null, null);
    }
}
