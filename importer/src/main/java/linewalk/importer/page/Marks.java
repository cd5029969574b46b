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

    public Marks {
        strokes = List.copyOf(strokes);
        fills = List.copyOf(fills);
        glyphs = List.copyOf(glyphs);
    }
}
