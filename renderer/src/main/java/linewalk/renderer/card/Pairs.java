package linewalk.renderer.card;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import linewalk.drawing.Component;
import linewalk.drawing.Kind;

/**
 * Which motor drives a pump, told by designations alone: 0M1 drives 0P1, M2 drives P2. Common practice, no source; no
 * other guess is made where a wrong motor would be locked out.
 */
final class Pairs {

    private Pairs() {}

    static Optional<Component> motorOf(Component pump, List<Component> motors) {
        String tag = spelled(pump.tag());
        // P1.1 and P1.2 share a drive that their tags do not name
        String wanted = tag.replaceFirst("P(?=-?\\d+$)", "M");
        return wanted.equals(tag)
                ? Optional.empty()
                : motors.stream()
                        .filter(m -> m.kind() == Kind.ELECTRIC_MOTOR
                                && spelled(m.tag()).equals(wanted))
                        .findFirst();
    }

    private static String spelled(String tag) {
        return tag.toUpperCase(Locale.ROOT).replaceAll("\\s", "");
    }

    /** A designation for comparison: letters and digits only. */
    static String plain(String tag) {
        return tag.toUpperCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{Nd}]", "");
    }
}
