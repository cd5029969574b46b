package linewalk.drawing;

import com.fasterxml.jackson.annotation.JsonProperty;

/** How much a finding matters. */
public enum Severity {
    @JsonProperty("error")
    ERROR,
    @JsonProperty("warning")
    WARNING,
    @JsonProperty("note")
    NOTE
}
