package linewalk.importer.frame;

import java.util.List;
import java.util.Set;
import linewalk.drawing.SheetReading;
import linewalk.importer.lettering.Label;

/**
 * What the title block says (ISO 7200 lists its fields).
 *
 * @param names candidates for the sheet's name, most likely first
 * @param sheetCount or null
 * @param drawingNumber or null
 * @param title or null
 * @param revision or null
 * @param labels the labels that said so
 */
public record TitleBlock(
        List<SheetReading.Name> names,
        Integer sheetCount,
        String drawingNumber,
        String title,
        String revision,
        Set<Label> labels) {

    public TitleBlock {
        names = List.copyOf(names);
        labels = Set.copyOf(labels);
    }
}
