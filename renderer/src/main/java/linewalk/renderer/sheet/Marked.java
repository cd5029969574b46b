package linewalk.renderer.sheet;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.DoubleStream;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDPropertyList;

/**
 * Says in a PDF what stands where: a flow line, a symbol or the picture's field is one sequence of marked content with
 * its place in points of the page, y downwards. Whoever reads the page back need not guess it from strokes. Other
 * outputs get the drawing alone.
 */
public final class Marked {

    private Marked() {}

    /**
     * A line in which oil flows: {@code /Line <</Net (L-7) /Course [x0 y0 x1 y1 ..]>>}.
     *
     * @param net lines of one net may meet and run together; null where a line is a net of its own
     * @param course what a pencil would follow, without dashes, hops and marks
     */
    public static void line(Canvas c, String net, List<Point2D> course, Consumer<Canvas> drawing) {
        double[] xyPt = course.stream().flatMapToDouble(Marked::coordinates).toArray();
        paint(c, "Line", about("Net", net, "Course", onPage(c, xyPt)), drawing);
    }

    private static DoubleStream coordinates(Point2D p) {
        return DoubleStream.of(p.getX(), p.getY());
    }

    /**
     * A symbol: {@code /Symbol <</Name (1V2) /Box [x0 y0 x1 y1]>>}.
     *
     * @param box as far as no other symbol and no line but its own may come
     */
    public static void symbol(Canvas c, String name, Rectangle2D box, Consumer<Canvas> drawing) {
        paint(c, "Symbol", about("Name", name, "Box", onPage(c, corners(box))), drawing);
    }

    /** All of the picture: {@code /Field <</Box [x0 y0 x1 y1]>>}, the area it may fill. */
    public static void field(Canvas c, Rectangle2D box, Consumer<Canvas> drawing) {
        paint(c, "Field", about("Name", null, "Box", onPage(c, corners(box))), drawing);
    }

    /** Out of the canvas's own space, where it has one. */
    private static double[] onPage(Canvas c, double[] xyPt) {
        double[] page = new double[xyPt.length];
        c.graphics().getTransform().transform(xyPt, 0, page, 0, xyPt.length / 2);
        return page;
    }

    private static double[] corners(Rectangle2D box) {
        return new double[] {box.getMinX(), box.getMinY(), box.getMaxX(), box.getMaxY()};
    }

    private static COSDictionary about(String nameKey, String name, String placeKey, double[] placePt) {
        COSDictionary about = new COSDictionary();
        if (name != null) {
            about.setString(nameKey, name);
        }
        COSArray place = new COSArray();
        for (double v : placePt) {
            place.add(new COSFloat((float) v));
        }
        about.setItem(placeKey, place);
        return about;
    }

    private static void paint(Canvas c, String tag, COSDictionary about, Consumer<Canvas> drawing) {
        if (c.graphics() instanceof PdfBoxGraphics2D pdf) {
            pdf.drawInMarkedContentSequence(
                    COSName.getPDFName(tag), PDPropertyList.create(about), inside -> drawing.accept(c.on(inside)));
        } else {
            drawing.accept(c);
        }
    }
}
