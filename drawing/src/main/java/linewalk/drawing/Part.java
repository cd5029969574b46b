package linewalk.drawing;

/** A row of the parts list; every field but the designation may be null. */
public record Part(String tag, String description, Kind kind, String setting, String testPoint) {}
