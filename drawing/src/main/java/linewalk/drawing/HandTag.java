package linewalk.drawing;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;

/**
 * What a person says about the drawing; it always wins over what was read. Every field is a plain value so that the
 * same tags can be kept as JSON or as CSV. {@code source} may be null where the set has one source; {@code saw} is the
 * text that stood there when the tag was made, so that a revision which changed it is noticed.
 *
 * <p>Ends are written as {@code P1:P} (a component's port), {@code P1} (a component with one port) or {@code @566,227}
 * (the reference or line end at that place of the page).
 */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "tag")
@JsonSubTypes({
    @JsonSubTypes.Type(value = HandTag.OfSheet.class, name = "sheet"),
    @JsonSubTypes.Type(value = HandTag.OfGrid.class, name = "grid"),
    @JsonSubTypes.Type(value = HandTag.OfReference.class, name = "reference"),
    @JsonSubTypes.Type(value = HandTag.OfMate.class, name = "mate"),
    @JsonSubTypes.Type(value = HandTag.OfComponent.class, name = "component"),
    @JsonSubTypes.Type(value = HandTag.OfPort.class, name = "port"),
    @JsonSubTypes.Type(value = HandTag.OfJoin.class, name = "join"),
    @JsonSubTypes.Type(value = HandTag.OfPosition.class, name = "position"),
    @JsonSubTypes.Type(value = HandTag.OfKept.class, name = "keep")
})
public sealed interface HandTag {

    /** The sheet's name, title and revision; null leaves what was read. */
    record OfSheet(String source, int page, String name, String title, String revision) implements HandTag {}

    /**
     * The sheet's zone grid: labels separated by blanks, columns left to right, rows top to bottom, equally spaced over
     * the box; no box means the frame that was read or else the whole page.
     */
    record OfGrid(
            String source, int page, String columns, String rows, Double x0Pt, Double y0Pt, Double x1Pt, Double y1Pt)
            implements HandTag {}

    /**
     * A reference: there is one here with these targets ({@code 3/B4}, several separated by blanks, {@code 3} without
     * zone), or, with {@code absent}, there is none.
     */
    record OfReference(
            String source,
            int page,
            double xPt,
            double yPt,
            String saw,
            String targets,
            String label,
            String flow,
            Boolean absent)
            implements HandTag {}

    /** The references at two places are mates, or, with {@code absent}, are not. */
    record OfMate(
            String source,
            int page,
            double xPt,
            double yPt,
            String saw,
            String toSource,
            int toPage,
            double toXPt,
            double toYPt,
            String toSaw,
            Boolean absent)
            implements HandTag {}

    /** A component: there is one here, or, with {@code absent}, there is none. {@code widthPt} and {@code heightPt} give its box. */
    record OfComponent(
            String source,
            int page,
            double xPt,
            double yPt,
            String saw,
            String name,
            String kind,
            String setting,
            Double widthPt,
            Double heightPt,
            Boolean absent)
            implements HandTag {}

    /** A port of a component, by the component's designation: its place and name. */
    record OfPort(
            String source, int page, double xPt, double yPt, String saw, String component, String name, Boolean absent)
            implements HandTag {}

    /** Two ends on one page are joined by a line, or, with {@code absent}, are not. {@code kind} is the line's kind. */
    record OfJoin(String source, int page, String from, String to, String kind, String label, Boolean absent)
            implements HandTag {}

    /**
     * A component's position: {@code by} is {@code rest} or solenoids, levers or pilots separated by blanks; {@code
     * passages} are ports by name or number of order, {@code P-A B>T}: a dash both ways, {@code >} one way, {@code ~}
     * instead of either where throttled (both ways); a trailing {@code !pressure} or {@code !pilot} says what opens it.
     */
    record OfPosition(String component, String by, String how, String passages) implements HandTag {}

    /**
     * A finding that stays as it is. {@code saw} is its id, which changes with the drawing at its place; {@code page} and
     * the place are left out where it concerns the whole set or a whole page.
     */
    record OfKept(String source, Integer page, Double xPt, Double yPt, String rule, String saw, String reason)
            implements HandTag {}
}
