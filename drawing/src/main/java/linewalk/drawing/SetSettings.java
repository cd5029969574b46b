package linewalk.drawing;

import java.util.List;

/**
 * What people set for a drawing set ({@code set.json}).
 *
 * @param sources PDF files, relative to the set's folder or absolute, in order
 * @param patterns the set's own forms of reference: regular expressions with the named groups {@code sheet} and, if
 *     wanted, {@code zone} and {@code label}
 * @param standardGrid a standard's grid for sheets that print none: {@code iso5457}, {@code asme-y14.1} or
 *     {@code columnsxrows} such as {@code 4x4}; null for none
 * @param palette colours of the pressure classes on prints: {@code own} or {@code published}; null for own
 */
public record SetSettings(List<String> sources, List<String> patterns, String standardGrid, String palette) {

    public SetSettings {
        sources = sources == null ? List.of() : List.copyOf(sources);
        patterns = patterns == null ? List.of() : List.copyOf(patterns);
    }

    /** With the palette left to its default. */
    public SetSettings(List<String> sources, List<String> patterns, String standardGrid) {
        this(sources, patterns, standardGrid, null);
    }
}
