package linewalk.renderer.link;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linewalk.drawing.Sheet;
import linewalk.renderer.copy.CosText;
import linewalk.renderer.copy.Increment;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;

/** An entry a sheet, by number and title, behind the entries that the file has already. */
final class SheetOutline {

    private SheetOutline() {}

    static void add(Increment copy, List<Sheet> sheets) {
        if (sheets.isEmpty()) {
            return;
        }
        long first = copy.reserve();
        for (int i = 1; i < sheets.size(); i++) {
            copy.reserve();
        }
        long last = first + sheets.size() - 1;
        COSDictionary old = copy.catalog().getCOSDictionary(COSName.OUTLINES);
        COSDictionary before = old == null ? null : old.getCOSDictionary(COSName.LAST);
        boolean behind = before != null && before.getKey() != null && old.getKey() != null;
        String root;
        if (behind) {
            root = CosText.reference(old.getKey());
            int open = Math.max(0, old.getInt(COSName.COUNT, 0));
            Map<COSName, String> longer = new LinkedHashMap<>();
            longer.put(COSName.LAST, last + " 0 R");
            longer.put(COSName.COUNT, "" + (open + sheets.size()));
            copy.change(old, longer);
            copy.change(before, Map.of(COSName.NEXT, first + " 0 R"));
        } else {
            root = copy.add(
                    "<</Type/Outlines/First " + first + " 0 R/Last " + last + " 0 R/Count " + sheets.size() + ">>");
            copy.change(copy.catalog(), Map.of(COSName.OUTLINES, root));
        }
        for (int i = 0; i < sheets.size(); i++) {
            String previous = i > 0 ? first + i - 1 + " 0 R" : behind ? CosText.reference(before.getKey()) : null;
            copy.put(first + i, item(copy, sheets.get(i), root, previous, i + 1 < sheets.size() ? first + i + 1 : 0));
        }
    }

    private static String item(Increment copy, Sheet s, String root, String previous, long next) {
        String title = "Sheet " + s.name() + (s.title() == null ? "" : ": " + s.title());
        return "<</Title " + CosText.text(title) + "/Parent " + root + "/Dest["
                + copy.page(s.page().page()) + "/Fit]" + (previous == null ? "" : "/Prev " + previous)
                + (next == 0 ? "" : "/Next " + next + " 0 R") + ">>";
    }
}
