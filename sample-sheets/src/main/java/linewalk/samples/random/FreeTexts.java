package linewalk.samples.random;

import java.util.ArrayList;
import java.util.List;
import linewalk.samples.sheet.Box;
import linewalk.samples.sheet.DrawnSheet;
import linewalk.samples.sheet.DrawnText;

/** Whether the texts of a drawn sheet stand free: the last look, once the fonts have taken their room. */
public final class FreeTexts {
    private FreeTexts() {}

    /** Texts on lines or on other texts, in words; empty on a sheet as it should be. */
    public static List<String> faults(DrawnSheet sheet) {
        List<String> faults = new ArrayList<>();
        List<DrawnText> texts = sheet.texts();
        for (int i = 0; i < texts.size(); i++) {
            String text = texts.get(i).text();
            Box box = texts.get(i).box().shrunk(0.3);
            for (DrawnText other : texts.subList(i + 1, texts.size())) {
                if (box.overlaps(other.box())) {
                    faults.add("'" + text + "' over '" + other.text() + "'");
                }
            }
            Area area = new Area(box.x0Pt(), box.y0Pt(), box.x1Pt(), box.y1Pt());
            for (double[] stroke : sheet.strokes()) {
                if (area.isMetBy(stroke)) {
                    faults.add("'" + text + "' on a line");
                    break;
                }
            }
        }
        return faults;
    }
}
