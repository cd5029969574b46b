package linewalk.drawing;

/**
 * Where a line meets a component.
 *
 * @param id unique in the set
 * @param name the letter printed beside it (P, T, A, B, X, Y, L, M after ISO 9461), or null
 */
public record Port(String id, String name, Point place) {}
