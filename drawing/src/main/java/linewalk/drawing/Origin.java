package linewalk.drawing;

import com.fasterxml.jackson.annotation.JsonProperty;

/** How something is known. */
public enum Origin {
    @JsonProperty("text")
    TEXT,
    @JsonProperty("ocr")
    OCR,
    @JsonProperty("hand")
    HAND,
    /** By the place in a row: a page's number taken from the order of pages. */
    @JsonProperty("order")
    ORDER
}
