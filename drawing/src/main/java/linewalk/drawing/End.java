package linewalk.drawing;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;

/** What a line ends in. */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "at")
@JsonSubTypes({
    @JsonSubTypes.Type(value = End.AtPort.class, name = "port"),
    @JsonSubTypes.Type(value = End.AtReference.class, name = "reference"),
    @JsonSubTypes.Type(value = End.Open.class, name = "open")
})
public sealed interface End {

    /** Where the line stops. */
    Point place();

    /** At a component's port. */
    record AtPort(String component, String port, Point place) implements End {}

    /** At an off-page reference. */
    record AtReference(String reference, Point place) implements End {}

    /** In nothing. */
    record Open(Point place) implements End {}
}
