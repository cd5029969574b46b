package linewalk.samples.machine;

import java.util.List;

/** A flow path in a state: tags and links in the order of flow; {@code via} is what a person would name. */
public record Journey(String state, List<String> steps, List<String> via) {}
