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

    @JsonIgnore
    public boolean isRest() {
        return by.contains(REST);
    }
}
