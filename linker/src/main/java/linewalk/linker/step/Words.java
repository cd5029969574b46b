package linewalk.linker.step;

import java.util.Locale;
import java.util.regex.Pattern;
import linewalk.drawing.Port;

/** How designations and ports are spelt: case and punctuation are drafting habits. */
final class Words {

    private static final Pattern DRAIN = Pattern.compile("(?i)(L|Y|DR|DRAIN)\\d?");
    private static final Pattern PILOT = Pattern.compile("(?i)(X|Z|LS)\\d?");
    private static final Pattern GAUGE = Pattern.compile("(?i)M\\d?");

    private Words() {}

    static String plain(String text) {
        StringBuilder plain = new StringBuilder();
        text.toUpperCase(Locale.ROOT).chars().filter(Character::isLetterOrDigit).forEach(c -> plain.append((char) c));
        return plain.toString();
    }

    static boolean drain(Port p) {
        return p.name() != null && DRAIN.matcher(p.name().strip()).matches();
    }

    static boolean pilot(Port p) {
        return p.name() != null && PILOT.matcher(p.name().strip()).matches();
    }

    /** Not on the way of working oil. */
    static boolean aside(Port p) {
        return drain(p)
                || pilot(p)
                || p.name() != null && GAUGE.matcher(p.name().strip()).matches();
    }
}
