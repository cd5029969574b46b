package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/** The corners of a closed shape as they were drawn, before ink and thinning bent its sides. */
final class RingShape {

    /** A side this short, in widths of the pen, is a corner. */
    private static final double CUT = 1.6;

    /** So short a side is bent by what meets it at its other end. */
    static final double ASKEW = 4;

    private static final double PULLED_PX = 1.2;

    private static final double PULLED = 0.65;

    /** How far a smudge bends a box, in widths of its pen. */
    private static final double SMUDGE = 2;

    private RingShape() {}

    /** The upright box that the ring is but for smudges at a corner or two; null where it is another shape. */
    static List<double[]> box(Polygon part, double width) {
        Envelope e = part.getEnvelopeInternal();
        double slack = SMUDGE * width + 1;
        boolean along = Math.min(e.getWidth(), e.getHeight()) > 4 * slack;
        for (Coordinate c : part.getExteriorRing().getCoordinates()) {
            double off = Math.min(
                    Math.min(c.x - e.getMinX(), e.getMaxX() - c.x), Math.min(c.y - e.getMinY(), e.getMaxY() - c.y));
            along &= off < slack;
        }
        double lost = e.getArea() - part.getArea();
        double onePixel = Math.max(e.getWidth(), e.getHeight());
        return !along || lost > 2 * slack * slack + onePixel
                ? null
                : List.of(
                        new double[] {e.getMinX(), e.getMinY()},
                        new double[] {e.getMaxX(), e.getMinY()},
                        new double[] {e.getMaxX(), e.getMaxY()},
                        new double[] {e.getMinX(), e.getMaxY()});
    }

    /** Thinning cuts corners: a side no longer than the pen is wide gives way to the place where its neighbours cross. */
    static List<double[]> sharp(List<double[]> corners, double width) {
        List<double[]> out = new ArrayList<>(corners);
        for (int i = 0; i < out.size() && out.size() > 3; i++) {
            int n = out.size();
            double[] a = out.get(i);
            double[] b = out.get((i + 1) % n);
            double length = Math.hypot(b[0] - a[0], b[1] - a[1]);
            double[] before = out.get((i + n - 1) % n);
            double[] after = out.get((i + 2) % n);
            if (length > ASKEW * width + 1) {
                continue;
            }
            double[] x = line(before, a).crossing(line(b, after));
            double near = x == null ? Double.MAX_VALUE : Math.hypot(x[0] - a[0], x[1] - a[1]);
            double far = x == null ? Double.MAX_VALUE : Math.hypot(x[0] - b[0], x[1] - b[1]);
            boolean cut = length < CUT * width + 1 && near < 3 * width + 2;
            // beside a line that meets a side next to the corner
            boolean askew = Math.min(near, far) < CUT * width && Math.max(near, far) < length + CUT * width;
            if (cut || askew) {
                out.set(i, x);
                out.remove((i + 1) % n);
            }
        }
        return out;
    }

    private static Straight line(double[] a, double[] b) {
        double length = Math.max(1e-9, Math.hypot(b[0] - a[0], b[1] - a[1]));
        return new Straight(a[0], a[1], (b[0] - a[0]) / length, (b[1] - a[1]) / length);
    }

    /** Without the places where something only meets a side, which thinning pulls towards it. */
    static List<double[]> corners(Polygon p, double width) {
        double pulled = Math.max(PULLED_PX, PULLED * width);
        Coordinate[] c = p.getExteriorRing().getCoordinates();
        List<double[]> out = new ArrayList<>();
        for (int i = 1; i < c.length; i++) {
            out.add(new double[] {c[i].x, c[i].y});
        }
        for (boolean changed = true; changed && out.size() > 3; ) {
            changed = false;
            for (int i = 0; i < out.size() && out.size() > 3; i++) {
                double[] a = out.get((i + out.size() - 1) % out.size());
                double[] b = out.get(i);
                double[] d = out.get((i + 1) % out.size());
                double chord = Math.hypot(d[0] - a[0], d[1] - a[1]);
                double off =
                        Math.abs((b[0] - a[0]) * (d[1] - a[1]) - (b[1] - a[1]) * (d[0] - a[0])) / Math.max(1e-9, chord);
                if (off < pulled) {
                    out.remove(i--);
                    changed = true;
                }
            }
        }
        return out;
    }
}
