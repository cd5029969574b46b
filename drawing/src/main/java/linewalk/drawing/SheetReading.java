package linewalk.drawing;

import java.util.List;

/**
 * What one page alone can say: candidates with likelihoods and local evidence. Ids are unique on the page and come from
 * the kind and place of the thing, so the same drawing read again gives the same ids.
 *
 * @param toPage from points as displayed to the page's own user space (for drawing the page's content again)
 * @param names what the sheet may be called, most likely first; empty where nothing was found
 * @param sheetCount the {@code n} of "sheet 3 of n", or null
 * @param drawingNumber or null
 * @param grid null where none is printed
 * @param doubts what could not be read surely, as findings of this page
 */
public record SheetReading(
        PageKey page,
        double widthPt,
        double heightPt,
        Affine toPage,
        List<Name> names,
        Integer sheetCount,
        String drawingNumber,
        String title,
        String revision,
        ZoneGrid grid,
        List<ReferenceReading> references,
        List<Component> components,
        List<Enclosure> enclosures,
        List<Line> lines,
        List<Finding> doubts) {

    /**
     * A candidate for the sheet's name.
     *
     * @param evidence where it was read, in words
     */
    public record Name(String name, double likelihood, String evidence) {}

    public SheetReading {
        names = List.copyOf(names);
        references = List.copyOf(references);
        components = List.copyOf(components);
        enclosures = List.copyOf(enclosures);
        lines = List.copyOf(lines);
        doubts = List.copyOf(doubts);
    }
}
