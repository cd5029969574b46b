package linewalk.drawing;

import com.fasterxml.jackson.annotation.JsonCreator;
import java.util.List;

/**
 * A chain line around a manifold or unit; no component.
 *
 * @param tag its title, or null
 * @param ports where lines pass its faces beside a printed name
 */
public record Enclosure(String tag, PageKey page, Box box, List<FacePort> ports) {

    /** A port on a face. */
    public record FacePort(String name, Point place) {}

    @JsonCreator
    public Enclosure {
        ports = List.copyOf(ports);
    }

    public Enclosure(String tag, PageKey page, Box box) {
        this(tag, page, box, List.of());
    }
}
