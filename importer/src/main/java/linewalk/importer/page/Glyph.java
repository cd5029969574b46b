package linewalk.importer.page;

import java.util.List;
import linewalk.drawing.Point;

/**
 * One character.
 *
 * @param start where its baseline starts
 * @param advancePt along the baseline
 * @param sizePt font size on the page
 * @param angleDeg of the baseline, clockwise from "to the right", 0 to under 360; 270 reads upwards
 * @param readings what a drawn sign may be, most likely first; empty where a text layer says what it is
 */
public record Glyph(
        String text, Point start, double advancePt, double sizePt, double angleDeg, List<Reading> readings) {

    /** One of the letters that a drawn sign may be. */
    public record Reading(String text, double likelihood) {}

    public Glyph {
        readings = List.copyOf(readings);
    }

    /** Of a text layer. */
    public Glyph(String text, Point start, double advancePt, double sizePt, double angleDeg) {
        this(text, start, advancePt, sizePt, angleDeg, List.of());
    }

    public Point end() {
        double a = Math.toRadians(angleDeg);
        return start.plus(advancePt * Math.cos(a), advancePt * Math.sin(a));
    }
}
