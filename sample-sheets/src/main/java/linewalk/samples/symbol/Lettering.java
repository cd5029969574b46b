package linewalk.samples.symbol;

/** How a text is set. {@code height} is the font size in drawing units. */
public record Lettering(double height, boolean bold, Align align, boolean turned) {
    /** Which point of the text its place names; vertically it is always the middle of the capitals. */
    public enum Align {
        LEFT,
        CENTRE,
        RIGHT
    }

    public static Lettering left(double height) {
        return new Lettering(height, false, Align.LEFT, false);
    }

    public static Lettering centred(double height) {
        return new Lettering(height, false, Align.CENTRE, false);
    }

    public static Lettering right(double height) {
        return new Lettering(height, false, Align.RIGHT, false);
    }

    public Lettering inBold() {
        return new Lettering(height, true, align, turned);
    }

    /** Reading upwards. */
    public Lettering turnedUp(boolean yes) {
        return new Lettering(height, bold, align, yes);
    }
}
