package linewalk.importer.page;

import linewalk.drawing.Affine;
import linewalk.drawing.Point;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/**
 * From a page's own user space to points as displayed and back: CropBox, /Rotate and UserUnit applied once.
 *
 * @param toDisplay user space to displayed points
 * @param toPage displayed points to user space
 */
public record PageGeometry(double widthPt, double heightPt, Affine toDisplay, Affine toPage) {

    public static PageGeometry of(PDPage page) {
        PDRectangle crop = page.getCropBox();
        double unit = page.getUserUnit();
        double w = crop.getWidth() * unit;
        double h = crop.getHeight() * unit;
        double x0 = crop.getLowerLeftX();
        double y0 = crop.getLowerLeftY();
        // turned clockwise by /Rotate, y flipped to run downwards
        switch (Math.floorMod(page.getRotation(), 360)) {
            case 90:
                return of(h, w, new Affine(0, unit, -y0 * unit, unit, 0, -x0 * unit));
            case 180:
                return of(w, h, new Affine(-unit, 0, w + x0 * unit, 0, unit, -y0 * unit));
            case 270:
                return of(h, w, new Affine(0, -unit, h + y0 * unit, -unit, 0, w + x0 * unit));
            default:
                return of(w, h, new Affine(unit, 0, -x0 * unit, 0, -unit, h + y0 * unit));
        }
    }

    private static PageGeometry of(double w, double h, Affine m) {
        double det = m.a() * m.e() - m.b() * m.d();
        double a = m.e() / det;
        double b = -m.b() / det;
        double d = -m.d() / det;
        double e = m.a() / det;
        Affine inverse = new Affine(a, b, -(a * m.c() + b * m.f()), d, e, -(d * m.c() + e * m.f()));
        return new PageGeometry(w, h, m, inverse);
    }

    Point display(double x, double y) {
        return toDisplay.apply(new Point(x, y));
    }

    /** How much a length in user space grows. */
    double scale() {
        return Math.sqrt(Math.abs(toDisplay.a() * toDisplay.e() - toDisplay.b() * toDisplay.d()));
    }
}
