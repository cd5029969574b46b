package linewalk.linker;

import java.util.List;
import java.util.regex.Pattern;
import linewalk.drawing.Component;
import linewalk.drawing.Port;

/** Which ports carry working oil: not those named for pilot, drain or gauge (ISO 9461), nor those on such lines. */
final class PortRoles {

    private static final Pattern ASIDE = Pattern.compile("(?i)(L|X|Y|M|DR)\\d?");

    private final Circuit circuit;

    PortRoles(Circuit circuit) {
        this.circuit = circuit;
    }

    static boolean namedAside(Port p) {
        return p.name() != null && ASIDE.matcher(p.name().strip()).matches();
    }

    boolean working(Port p) {
        return !namedAside(p) && !circuit.aside(p);
    }

    List<Port> working(Component c) {
        return c.ports().stream().filter(this::working).toList();
    }

    /** Of a part with two ports both pass, whatever lines they are on; of more only the working ones. */
    List<Port> passing(Component c) {
        List<Port> unnamed = c.ports().stream().filter(p -> !namedAside(p)).toList();
        return unnamed.size() <= 2 ? unnamed : working(c);
    }
}
