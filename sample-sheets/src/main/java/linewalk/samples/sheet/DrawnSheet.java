package linewalk.samples.sheet;

import java.util.List;
import linewalk.samples.machine.SheetPlan;
import linewalk.samples.symbol.Spot;

/** What a drawn page holds; {@code strokes} are the line work's segments (x0, y0, x1, y1) in points. */
public record DrawnSheet(
        SheetPlan plan,
        int page,
        Placement placement,
        List<DrawnReference> references,
        List<DrawnText> texts,
        List<double[]> strokes) {
    /** Where a place in units stands on the displayed page, in points. */
    public Spot pt(Spot units) {
        return placement.pt(units);
    }
}
