package linewalk.samples.style;

/** A field of the border grid by its place; {@code name} is letter first. */
public record Zone(int column, int row, String columnLabel, String rowLabel) {
    public String name() {
        return Character.isLetter(columnLabel.charAt(0)) ? columnLabel + rowLabel : rowLabel + columnLabel;
    }

    public String letter() {
        return name().substring(0, 1);
    }

    public String number() {
        return name().substring(1);
    }
}
