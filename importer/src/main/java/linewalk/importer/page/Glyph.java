package linewalk.importer.page;

import linewalk.drawing.Point;

/**
 * One character.
 *
 * @param start where its baseline starts
 * @param advancePt along the baseline
 * @param sizePt font size on the page
 * @param angleDeg of the baseline, clockwise from "to the right", 0 to under 360; 270 reads upwards
 */
public record Glyph(String text, Point start, double advancePt, double sizePt, double angleDeg) {

    public Point end() {
        double a = Math.toRadians(angleDeg);
        return start.plus(advancePt * Math.cos(a), advancePt * Math.sin(a));
    }
}
