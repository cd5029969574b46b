package linewalk.importer.page;

import java.util.List;

/**
 * The one form that a page comes down to before it is understood.
 *
 * @param widthPt of the page as displayed
 * @param pictures how many images the page paints: a page with pictures and hardly anything else is a scan
 */
public record Marks(
        double widthPt, double heightPt, List<Stroke> strokes, List<Fill> fills, List<Glyph> glyphs, int pictures) {

    /** How near ends must be to touch: a little more than a usual line is wide. */
    public double tolerancePt() {
        double[] widths = strokes.stream().mapToDouble(Stroke::widthPt).sorted().toArray();
        double usual = widths.length == 0 ? 1 : widths[widths.length / 2];
        return Math.max(0.8, Math.min(3, 1.1 * usual));
    }

    public Marks {
        strokes = List.copyOf(strokes);
        fills = List.copyOf(fills);
        glyphs = List.copyOf(glyphs);
    }
}
