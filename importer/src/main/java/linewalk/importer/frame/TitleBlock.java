package linewalk.importer.frame;

import java.util.List;
import linewalk.drawing.SheetReading;

/**
 * What the title block says (ISO 7200 lists its fields).
 *
 * @param names candidates for the sheet's name, most likely first
 * @param sheetCount or null
 * @param drawingNumber or null
 * @param title or null
 * @param revision or null
 */
public record TitleBlock(
        List<SheetReading.Name> names, Integer sheetCount, String drawingNumber, String title, String revision) {

    public TitleBlock {
        names = List.copyOf(names);
    }
}
