package linewalk.renderer.overlay;

import java.awt.geom.Rectangle2D;
import java.util.List;
import linewalk.drawing.Sheet;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;

/** The line on every sheet that says what it is and what not to trust, near the lower or upper edge. */
final class SheetCaption {

    static final String CAUTION = "Readings by a program: check on the machine.";

    private final Sheet sheet;
    private final Canvas canvas;
    private final Scale scale;

    SheetCaption(Sheet sheet, Canvas canvas, Scale scale) {
        this.sheet = sheet;
        this.canvas = canvas;
        this.scale = scale;
    }

    void paint(Labels labels, boolean originalMissing) {
        String revision = sheet.revision() == null ? "" : ", revision " + sheet.revision();
        String grid = sheet.grid() == null ? ", no zone grid read" : "";
        String text = Words.titled(sheet) + revision + grid + " (number known by "
                + sheet.origin().name().toLowerCase(java.util.Locale.ROOT) + "). " + CAUTION + " Legend: page 1.";
        Tag tag = new Tag(
                originalMissing ? List.of("ORIGINAL MISSING OR NOT READABLE: " + sheet.page(), text) : List.of(text),
                Ink.DOUBT,
                scale.textPt());
        double margin = scale.pt(3);
        double w = tag.widthPt();
        double h = tag.heightPt();
        double bottom = sheet.heightPt() - h - margin;
        tag.draw(
                canvas,
                labels.best(List.of(
                        new Rectangle2D.Double(margin, bottom, w, h),
                        new Rectangle2D.Double((sheet.widthPt() - w) / 2, bottom, w, h),
                        new Rectangle2D.Double(sheet.widthPt() - w - margin, bottom, w, h),
                        new Rectangle2D.Double(margin, margin, w, h),
                        new Rectangle2D.Double((sheet.widthPt() - w) / 2, margin, w, h),
                        new Rectangle2D.Double(sheet.widthPt() - w - margin, margin, w, h))));
    }
}
