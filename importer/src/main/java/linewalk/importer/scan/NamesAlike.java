package linewalk.importer.scan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * How the names of a page are made: {@code MP9} of {@code MP4} and {@code MP10}. Of two ways to read a name the one made
 * like others of the page is the likelier one.
 */
final class NamesAlike {

    private static final Pattern NUMBER = Pattern.compile("\\d+");

    /** Of the two coils of a valve, say. */
    private static final Pattern LETTER_BEHIND = Pattern.compile("(?<=9)\\p{L}$");

    private final Map<String, Integer> makes = new HashMap<>();

    /** @param names as read, each as often as it stands on the page */
    NamesAlike(List<String> names) {
        names.forEach(n -> makes.merge(make(n), 1, Integer::sum));
    }

    /**
     * By how much another way to read a name is likelier than the first since more of the page's names are made like it.
     *
     * @param read how the name is counted now
     */
    double odds(String read, String other) {
        int elsewhere = makes.getOrDefault(make(read), 1) - 1;
        return make(read).equals(make(other)) ? 1 : (1.0 + makes.getOrDefault(make(other), 0)) / (1 + elsewhere);
    }

    /** How many names of the page are made like this one. */
    int like(String name) {
        return makes.getOrDefault(make(name), 0);
    }

    private static String make(String name) {
        return LETTER_BEHIND.matcher(NUMBER.matcher(name).replaceAll("9")).replaceFirst("A");
    }
}
