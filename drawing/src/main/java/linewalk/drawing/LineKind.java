package linewalk.drawing;

import com.fasterxml.jackson.annotation.JsonProperty;

/** Working lines are solid, pilot and drain lines dashed (ISO 1219-1). */
public enum LineKind {
    @JsonProperty("working")
    WORKING,
    @JsonProperty("pilot")
    PILOT,
    @JsonProperty("drain")
    DRAIN
}
