package linewalk.drawing;

import com.fasterxml.jackson.annotation.JsonProperty;

/**
 * What a component joins inside.
 *
 * @param from a port's id
 * @param to a port's id
 * @param oneWay oil passes only from {@code from} to {@code to}
 * @param opens what must push it open, or null where it stands open
 */
public record Passage(String from, String to, boolean oneWay, boolean throttled, Opens opens) {

    /** What opens a passage that is shut at rest. */
    public enum Opens {
        @JsonProperty("pressure")
        PRESSURE,
        @JsonProperty("pilot")
        PILOT
    }
}
