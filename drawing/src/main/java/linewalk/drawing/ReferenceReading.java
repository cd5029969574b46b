package linewalk.drawing;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * A candidate for a reference.
 *
 * @param box covers all its text and its symbol
 * @param text as printed
 * @param form its pattern with letters and numbers taken out ({@code N.AN}): references of one set share few forms
 * @param readings what it may say, most likely first
 * @param label line number, name or letter, or null
 * @param flow by an arrow, a triangle or a word
 * @param tip the flow that the tip of its flag would give; whether tips mean the flow, the whole set must show
 * @param confidence by this page's evidence alone, 0 to 1
 */
public record ReferenceReading(
        String id,
        Point place,
        Box box,
        String text,
        String form,
        List<Says> readings,
        String label,
        Flow flow,
        Flow tip,
        Set<Evidence> evidence,
        Origin origin,
        double confidence) {

    /** One way to read the text. */
    public record Says(List<Target> targets, double likelihood) {
        public Says {
            targets = List.copyOf(targets);
        }
    }

    /** What on the page speaks for a reference. */
    public enum Evidence {
        /** A line ends at it. */
        @JsonProperty("line-end")
        LINE_END,
        /** A closed outline that a line meets holds it. */
        @JsonProperty("flag")
        FLAG,
        /** An arrow stands beside or within it. */
        @JsonProperty("arrow")
        ARROW,
        /** Words such as SHEET, SH or ZONE are part of it. */
        @JsonProperty("words")
        WORDS
    }

    public ReferenceReading {
        readings = List.copyOf(readings);
        evidence = Collections.unmodifiableSet(new TreeSet<>(evidence));
    }
}
