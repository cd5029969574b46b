package linewalk.drawing;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;

/**
 * One position of a component and what it joins in it.
 *
 * @param by what brings it there: any of these solenoids, levers or pilots; the single word {@code rest} for the
 *     position as drawn
 * @param how null where not known
 */
public record Position(List<String> by, How how, List<Passage> passages) {

    public static final String REST = "rest";

    /** Instead of the name of a solenoid that has none. */
    public static final String UNNAMED = "solenoid";

    /** What moves the component into the position. */
    public enum How {
        @JsonProperty("solenoid")
        SOLENOID,
        @JsonProperty("spring")
        SPRING,
        @JsonProperty("lever")
        LEVER,
        @JsonProperty("pilot")
        PILOT,
        @JsonProperty("detent")
        DETENT
    }

    public Position {
        by = List.copyOf(by);
        passages = List.copyOf(passages);
    }

    /** Moved by an operator that nothing is printed beside: which column of a cycle chart means it is not known. */
    @JsonIgnore
    public boolean isUnnamed() {
        return by.equals(List.of(UNNAMED));
    }

    @JsonIgnore
    public boolean isRest() {
        return by.contains(REST);
    }
}
