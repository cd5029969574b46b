package linewalk.renderer.copy;

import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.drawing.Sheet;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** Places on a page as displayed in the page's own user space. */
public final class OnPage {

    private OnPage() {}

    /** Upright in user space, whatever the page's rotation. */
    public static Box box(Sheet sheet, Box box) {
        Point a = sheet.toPage().apply(new Point(box.x0Pt(), box.y0Pt()));
        Point b = sheet.toPage().apply(new Point(box.x1Pt(), box.y1Pt()));
        return new Box(
                Math.min(a.xPt(), b.xPt()),
                Math.min(a.yPt(), b.yPt()),
                Math.max(a.xPt(), b.xPt()),
                Math.max(a.yPt(), b.yPt()));
    }

    public static PDRectangle rectangle(Sheet sheet, Box box) {
        Box own = box(sheet, box);
        return new PDRectangle((float) own.x0Pt(), (float) own.y0Pt(), (float) own.widthPt(), (float) own.heightPt());
    }

    /** x and y of each point, one after the other. */
    public static float[] course(Sheet sheet, List<Point> points) {
        float[] all = new float[2 * points.size()];
        for (int i = 0; i < points.size(); i++) {
            Point p = sheet.toPage().apply(points.get(i));
            all[2 * i] = (float) p.xPt();
            all[2 * i + 1] = (float) p.yPt();
        }
        return all;
    }
}
