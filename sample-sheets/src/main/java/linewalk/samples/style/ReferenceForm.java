package linewalk.samples.style;

import java.util.Locale;

/** How a reference looks and reads. */
public enum ReferenceForm {
    /** {@code 5/B4} in a flag whose tip shows the flow. */
    FLAG(0.38),
    /** {@code SHT 2 ZN C-7} beside the line's end, an arrowhead where the flow is told. */
    PLAIN(0.30),
    /** Sheet above a bar and zone below it in a circle, the arrowhead on the line. */
    CIRCLE(0.30),
    /** {@code 3.B4} beside the line's end with an arrow character where the flow is told. */
    DOTTED(0.34),
    /** {@code TO SHEET 3} over {@code ZONE B4} at the line's end. */
    WORDS(0.28),
    /** {@code B4/3}, zone first, in a hexagon, the arrowhead on the line. */
    HEXAGON(0.32);

    /** Font size in units. */
    public final double height;

    ReferenceForm(double height) {
        this.height = height;
    }

    /** The text for one target; in a circle the two lines are parted by a blank. */
    public String text(String sheet, Zone zone) {
        return switch (this) {
            case FLAG -> sheet + "/" + zone.name();
            case PLAIN -> "SHT " + sheet + " ZN " + zone.letter() + "-" + zone.number();
            case CIRCLE -> sheet + " " + zone.name();
            case DOTTED -> sheet + "." + zone.name();
            case WORDS -> "SHEET " + sheet + " ZONE " + zone.name();
            case HEXAGON -> zone.name() + "/" + sheet;
        };
    }

    /** Stands between two targets of one reference. */
    public String separator() {
        return switch (this) {
            case FLAG -> ", ";
            case PLAIN -> " / ";
            case CIRCLE, WORDS -> " ";
            case DOTTED -> "; ";
            case HEXAGON -> "  ";
        };
    }

    /** The widest text for one target, for room. */
    public String widest() {
        return switch (this) {
            case FLAG, CIRCLE -> "13/M12";
            case PLAIN -> "SHT 13 ZN B-8";
            case DOTTED -> "\u2192 13.F9";
            case WORDS -> "FROM SHEET 13";
            case HEXAGON -> "H12/14";
        };
    }

    /** Whether it reads upwards at an upright line. */
    public boolean turns() {
        return this != CIRCLE && this != WORDS;
    }

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
