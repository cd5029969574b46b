package linewalk.drawing;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A field of the border grid: {@code B4}. Drawings print either order (IEC 61082-1 shows both {@code B3} and {@code
 * 18A}); here letters always come first and numbers have no leading zeros.
 */
public record Zone(String letters, String digits) {

    private static final Pattern LETTERS_FIRST = Pattern.compile("([A-Z]{1,2})[ -]?(\\d{1,2})");
    private static final Pattern DIGITS_FIRST = Pattern.compile("(\\d{1,2})[ -]?([A-Z]{1,2})");

    public static Optional<Zone> parse(String text) {
        String plain = text.strip().toUpperCase(Locale.ROOT);
        Matcher m = LETTERS_FIRST.matcher(plain);
        if (m.matches()) {
            return Optional.of(new Zone(m.group(1), number(m.group(2))));
        }
        m = DIGITS_FIRST.matcher(plain);
        return m.matches() ? Optional.of(new Zone(m.group(2), number(m.group(1)))) : Optional.empty();
    }

    @JsonCreator
    static Zone fromJson(String text) {
        return parse(text).orElseThrow(() -> new IllegalArgumentException("'" + text + "' is no zone such as B4"));
    }

    private static String number(String digits) {
        return Integer.toString(Integer.parseInt(digits));
    }

    @JsonValue
    @Override
    public String toString() {
        return letters + digits;
    }

    // written out: a record's own are spun at run time, which a short command waits for
    @Override
    public boolean equals(Object o) {
        return o instanceof Zone z && letters.equals(z.letters) && digits.equals(z.digits);
    }

    @Override
    public int hashCode() {
        return 31 * letters.hashCode() + digits.hashCode();
    }
}
