package linewalk.importer.page;

import java.util.Comparator;
import java.util.List;

/**
 * The one form that a page comes down to before it is understood.
 *
 * @param widthPt of the page as displayed
 * @param pictures images that the page paints; a page of pictures and hardly anything else is a scan
 */
public record Marks(
        double widthPt,
        double heightPt,
        List<Stroke> strokes,
        List<Fill> fills,
        List<Glyph> glyphs,
        List<Picture> pictures) {

    /** How near ends must be to touch: a little more than a usual line is wide, every line counted by its length. */
    public double tolerancePt() {
        List<Stroke> byWidth = strokes.stream()
                .sorted(Comparator.comparingDouble(Stroke::widthPt))
                .toList();
        double half = strokes.stream().mapToDouble(Stroke::lengthPt).sum() / 2;
        double usual = 1;
        for (Stroke s : byWidth) {
            half -= s.lengthPt();
            if (half <= 0) {
                usual = s.widthPt();
                break;
            }
        }
        return Math.max(0.8, Math.min(3, 1.1 * usual));
    }

    public Marks {
        strokes = List.copyOf(strokes);
        fills = List.copyOf(fills);
        glyphs = List.copyOf(glyphs);
        pictures = List.copyOf(pictures);
    }
}
