package linewalk.drawing;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A drawn part.
 *
 * @param id unique in the set; in a reading, unique on the page
 * @param tag the designation printed beside it: {@code P1}, {@code 0V2}
 * @param setting such as {@code 210 bar}, or null
 * @param positions empty where what it joins is not known
 * @param confidence that designation, outline and place belong together, 0 to 1; on a scan also that the kind is right
 * @param symbol what its shape says about the kind, or null where it says nothing
 */
public record Component(
        String id,
        String tag,
        PageKey page,
        Point place,
        Box box,
        Kind kind,
        String setting,
        Origin origin,
        double confidence,
        List<Port> ports,
        List<Position> positions,
        KindReading symbol) {

    private static final Pattern CLOSED =
            Pattern.compile("(?i).*\\bclosed\\b.*|.*\\b(?:locked|held|kept) shut\\b.*|n ?[./]? ?c(?:\\.|\\b).*");

    /** A component whose kind was not read from its shape. */
    public Component(
            String id,
            String tag,
            PageKey page,
            Point place,
            Box box,
            Kind kind,
            String setting,
            Origin origin,
            double confidence,
            List<Port> ports,
            List<Position> positions) {
        this(id, tag, page, place, box, kind, setting, origin, confidence, ports, positions, null);
    }

    public Component {
        ports = List.copyOf(ports);
        positions = List.copyOf(positions);
    }

    public Optional<Port> findPort(String portId) {
        return ports.stream().filter(p -> p.id().equals(portId)).findFirst();
    }

    public Optional<Port> findPortNamed(String name) {
        return ports.stream().filter(p -> name.equalsIgnoreCase(p.name())).findFirst();
    }

    /** Its setting says that it is closed at rest: {@code normally closed}, {@code N.C.}, {@code locked shut}. */
    public boolean normallyClosed() {
        return setting != null && CLOSED.matcher(setting.strip()).matches();
    }

    public Optional<Position> rest() {
        return positions.stream().filter(Position::isRest).findFirst();
    }
}
