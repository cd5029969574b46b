package linewalk.drawing;

/** x' = a x + b y + c, y' = d x + e y + f. */
public record Affine(double a, double b, double c, double d, double e, double f) {

    public static final Affine IDENTITY = new Affine(1, 0, 0, 0, 1, 0);

    public Point apply(Point p) {
        return new Point(a * p.xPt() + b * p.yPt() + c, d * p.xPt() + e * p.yPt() + f);
    }
}
