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

    private static final Pattern LETTER = Pattern.compile("\\p{L}");

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
        if (noughtOrLetter(read, other)) {
            return formed(form(read)) > 1 ? 1 : 1.0 + formed(form(other));
        }
        int elsewhere = makes.getOrDefault(make(read), 1) - 1;
        return make(read).equals(make(other)) ? 1 : (1.0 + makes.getOrDefault(make(other), 0)) / (1 + elsewhere);
    }

    /** They differ in their first sign alone, which is a nought in one and an O in the other. */
    private static boolean noughtOrLetter(String one, String other) {
        return one.length() == other.length()
                && one.substring(1).equals(other.substring(1))
                && (one.charAt(0) + "" + other.charAt(0)).matches("0O|O0");
    }

    /** How many names of the page are of this form: {@code AA9} is one of a few letters and a number. */
    private int formed(String form) {
        return makes.entrySet().stream()
                .filter(e -> form(e.getKey()).equals(form))
                .mapToInt(Map.Entry::getValue)
                .sum();
    }

    private static String form(String name) {
        return NUMBER.matcher(LETTER.matcher(name).replaceAll("A")).replaceAll("9");
    }

    /** How many names of the page are made like this one. */
    int like(String name) {
        return makes.getOrDefault(make(name), 0);
    }

    private static String make(String name) {
        return LETTER_BEHIND.matcher(NUMBER.matcher(name).replaceAll("9")).replaceFirst("A");
    }
}
