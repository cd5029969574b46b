package linewalk.drawing;

import com.fasterxml.jackson.annotation.JsonCreator;

/**
 * Where a line meets a component.
 *
 * @param id unique in the set
 * @param name the letter printed beside it (P, T, A, B, X, Y, L, M after ISO 9461), or null
 * @param confidence that a line meets the component here, 0 to 1
 */
public record Port(String id, String name, Point place, double confidence) {

    @JsonCreator
    public Port {}

    /** A port that is surely there. */
    public Port(String id, String name, Point place) {
        this(id, name, place, 1);
    }
}
