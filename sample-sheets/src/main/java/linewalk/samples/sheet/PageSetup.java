package linewalk.samples.sheet;

import linewalk.samples.style.DraftingStyle;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.util.Matrix;

/** Boxes, turn and unit of a page, and the way from the displayed page (points, y up) to its user space. */
final class PageSetup {
    private PageSetup() {}

    static Matrix apply(PDPage page, DraftingStyle style) {
        double scale = 1 / style.userUnit();
        double crop = style.cropPt();
        float width = (float) (Placement.pt(style.widthMm()) * scale);
        float height = (float) (Placement.pt(style.heightMm()) * scale);
        boolean turned = style.rotate() % 180 == 90;
        float across = turned ? height : width;
        float along = turned ? width : height;
        page.setMediaBox(new PDRectangle((float) (across + 2 * crop), (float) (along + 2 * crop)));
        page.setCropBox(new PDRectangle((float) crop, (float) crop, across, along));
        page.setRotation(style.rotate());
        if (style.userUnit() != 1) {
            page.getCOSObject().setItem(COSName.getPDFName("UserUnit"), new COSFloat((float) style.userUnit()));
        }
        float s = (float) scale;
        float c = (float) crop;
        return switch (style.rotate()) {
            case 90 -> new Matrix(0, s, -s, 0, c + height, c);
            case 180 -> new Matrix(-s, 0, 0, -s, c + width, c + height);
            case 270 -> new Matrix(0, -s, s, 0, c, c + width);
            default -> new Matrix(s, 0, 0, s, c, c);
        };
    }
}
