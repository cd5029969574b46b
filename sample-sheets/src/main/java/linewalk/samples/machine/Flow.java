package linewalk.samples.machine;

/** Which way the drawing says the oil goes at a reference. */
public enum Flow {
    OUT,
    IN,
    UNKNOWN;

    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
