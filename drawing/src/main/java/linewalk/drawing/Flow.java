package linewalk.drawing;

import com.fasterxml.jackson.annotation.JsonProperty;

/** Which way the oil goes at a reference, seen from its own sheet. */
public enum Flow {
    @JsonProperty("out")
    OUT,
    @JsonProperty("in")
    IN,
    @JsonProperty("unknown")
    UNKNOWN
}
