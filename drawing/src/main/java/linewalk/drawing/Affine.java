package linewalk.drawing;

import java.util.List;

/** x' = a x + b y + c, y' = d x + e y + f. */
public record Affine(double a, double b, double c, double d, double e, double f) {

    public static final Affine IDENTITY = new Affine(1, 0, 0, 0, 1, 0);

    public Point apply(Point p) {
        return new Point(a * p.xPt() + b * p.yPt() + c, d * p.xPt() + e * p.yPt() + f);
    }

    /** The way back. */
    public Affine inverse() {
        double det = a * e - b * d;
        double ia = e / det;
        double ib = -b / det;
        double id = -d / det;
        double ie = a / det;
        return new Affine(ia, ib, -(ia * c + ib * f), id, ie, -(id * c + ie * f));
    }

    /** The upright box around a box's corners, moved. */
    public Box apply(Box box) {
        return this.equals(IDENTITY)
                ? box
                : Box.around(List.of(
                        apply(new Point(box.x0Pt(), box.y0Pt())),
                        apply(new Point(box.x1Pt(), box.y0Pt())),
                        apply(new Point(box.x0Pt(), box.y1Pt())),
                        apply(new Point(box.x1Pt(), box.y1Pt()))));
    }
}
