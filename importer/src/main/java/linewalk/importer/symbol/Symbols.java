package linewalk.importer.symbol;

import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.page.Stroke;

/**
 * What closed outlines and motifs claimed of a page's strokes.
 *
 * @param bodies figures of parts
 * @param flags closed outlines around a label that a line may end at: flags, circles, boxes; they are references,
 *     balloons or bubbles
 * @param named those of the flags that are empty and have a name and a list of sheets beside them
 * @param enclosures chain lines around manifolds and units
 * @param portMarks small circles where lines pass an enclosure's face
 * @param tables boxes of ruled tables
 * @param arrows arrowheads, filled and open
 * @param lineWork strokes that nothing claimed
 * @param balloons item numbers and what they point at
 * @param tolerancePt how near ends must be to touch, from the drawing's own line widths
 */
public record Symbols(
        List<Body> bodies,
        List<Outline> flags,
        List<NamedFlag> named,
        List<Box> enclosures,
        List<Outline> portMarks,
        List<Box> tables,
        List<Arrowhead> arrows,
        List<Stroke> lineWork,
        Balloons balloons,
        double tolerancePt) {

    /** What slants from a balloon to its part, and may run over the part's own strokes. */
    public List<Stroke> leaders() {
        return balloons.pointers().stream()
                .filter(Balloons.Pointer::slants)
                .map(Balloons.Pointer::leader)
                .toList();
    }

    public boolean inTable(Point p) {
        return tables.stream().anyMatch(t -> t.contains(p));
    }
}
