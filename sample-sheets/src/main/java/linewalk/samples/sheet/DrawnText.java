package linewalk.samples.sheet;

/** A text on the page, where it stands and what it is for. */
public record DrawnText(String text, Box box, boolean turned, Role role) {
    public enum Role {
        REFERENCE,
        TAG,
        LABEL,
        PORT,
        FRAME,
        TITLE,
        OTHER
    }
}
