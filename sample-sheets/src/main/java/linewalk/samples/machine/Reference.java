package linewalk.samples.machine;

import java.util.List;
import linewalk.samples.symbol.Spot;

/**
 * One end of a line that goes on elsewhere. {@code links} name the pipes that go on (two for a header that feeds two
 * sheets); a single capital is a match letter. {@code label} is the line number printed beside it, or null.
 */
public record Reference(
        String id, int sheet, List<String> links, Flow flow, Spot end, Heading heading, String label, boolean sized) {
    public boolean isLetter() {
        return links.get(0).length() == 1;
    }
}
