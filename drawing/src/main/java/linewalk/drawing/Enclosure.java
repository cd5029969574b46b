package linewalk.drawing;

/**
 * A chain line around a manifold or unit; no component.
 *
 * @param tag its title, or null
 */
public record Enclosure(String tag, PageKey page, Box box) {}
