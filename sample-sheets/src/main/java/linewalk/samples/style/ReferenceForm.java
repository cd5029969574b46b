package linewalk.samples.style;

import java.util.Locale;

/** How a reference looks and reads. */
public enum ReferenceForm {
    /** {@code 5/B4} in a flag whose tip shows the flow. */
    FLAG(0.38),
    /** {@code SHT 2 ZN C-7} beside the line's end, an arrowhead where the flow is told. */
    PLAIN(0.30),
    /** Sheet above a bar and zone below it in a circle, the arrowhead on the line. */
    CIRCLE(0.30);

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
        };
    }

    /** Stands between two targets of one reference. */
    public String separator() {
        return switch (this) {
            case FLAG -> ", ";
            case PLAIN -> " / ";
            case CIRCLE -> " ";
        };
    }

    /** The widest text for one target, for room. */
    public String widest() {
        return this == PLAIN ? "SHT 13 ZN B-8" : "13/M12";
    }

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
