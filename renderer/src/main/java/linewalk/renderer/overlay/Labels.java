package linewalk.renderer.overlay;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Finds room for labels beside what they speak of: off each other, off boxes and lines, off the original's ink. */
final class Labels {

    /** Beside a box or a point of a finding: as far as it takes. */
    static final double FAR = 62;
    /** A port's letter or a line's number says little where it stands off. */
    static final double CLOSE = 14;

    private static final double[] GAPS_ON_A3_PT = {1.5, 4, 8, 14, 22, 32, 46, 62};

    private final Rectangle2D page;
    private final InkMap ink;
    private final Scale scale;
    private final List<Rectangle2D> labels = new ArrayList<>();
    private final List<Rectangle2D> boxes = new ArrayList<>();
    private final List<Line2D> lines = new ArrayList<>();

    Labels(Rectangle2D page, InkMap ink, Scale scale) {
        this.page = page;
        this.ink = ink;
        this.scale = scale;
    }

    void keepOff(Rectangle2D box) {
        boxes.add(box);
    }

    void keepOff(List<Line2D> course) {
        lines.addAll(course);
    }

    /**
     * The best place for a label of the size given, near a box; it is taken from then on.
     *
     * @param reachOnA3 how far off it may stand
     */
    Rectangle2D place(Rectangle2D near, double widthPt, double heightPt, double reachOnA3) {
        Rectangle2D best = null;
        double least = Double.MAX_VALUE;
        for (double gap : GAPS_ON_A3_PT) {
            for (Rectangle2D r : around(near, widthPt, heightPt, scale.pt(gap))) {
                double cost = gap > reachOnA3 || gap >= least ? Double.MAX_VALUE : gap + cost(r, near);
                if (cost < least - 1e-9) {
                    least = cost;
                    best = r;
                }
            }
        }
        labels.add(best);
        return best;
    }

    /** The emptiest of some places, the first of equals. */
    Rectangle2D best(List<Rectangle2D> places) {
        Rectangle2D best = places.get(0);
        for (Rectangle2D r : places) {
            best = cost(r, null) < cost(best, null) - 1e-9 ? r : best;
        }
        labels.add(best);
        return best;
    }

    private static List<Rectangle2D> around(Rectangle2D b, double w, double h, double gap) {
        List<Rectangle2D> all = new ArrayList<>();
        double[] across = {
            b.getMinX(), b.getCenterX() - w / 2, b.getMaxX() - w, b.getMaxX() + gap, b.getMinX() - w - gap
        };
        for (double x : across) {
            all.add(new Rectangle2D.Double(x, b.getMinY() - h - gap, w, h));
            all.add(new Rectangle2D.Double(x, b.getMaxY() + gap, w, h));
        }
        for (double y : new double[] {b.getCenterY() - h / 2, b.getMinY(), b.getMaxY() - h}) {
            all.add(new Rectangle2D.Double(b.getMaxX() + gap, y, w, h));
            all.add(new Rectangle2D.Double(b.getMinX() - w - gap, y, w, h));
        }
        return all;
    }

    private double cost(Rectangle2D r, Rectangle2D near) {
        double cost = page.contains(r) ? 0 : 500;
        cost += 220 * ink.share(r);
        for (Rectangle2D l : labels) {
            cost += 200 * overlap(r, l);
        }
        for (Rectangle2D b : boxes) {
            cost += b.equals(near) ? 0 : 70 * overlap(r, b) + (mistakable(r, b) ? 15 : 0);
        }
        for (Line2D line : lines) {
            cost += line.intersects(r) ? 12 : 0;
        }
        return cost;
    }

    /** Close to another box than its own, a label may be taken for that one's. */
    private boolean mistakable(Rectangle2D r, Rectangle2D other) {
        double close = scale.pt(5);
        return other.intersects(
                r.getX() - close, r.getY() - close, r.getWidth() + 2 * close, r.getHeight() + 2 * close);
    }

    /** A touch counts too: half-covered text is no text. */
    private static double overlap(Rectangle2D r, Rectangle2D other) {
        Rectangle2D both = r.createIntersection(other);
        if (both.getWidth() <= 0 || both.getHeight() <= 0) {
            return 0;
        }
        return 0.3 + both.getWidth() * both.getHeight() / (r.getWidth() * r.getHeight());
    }

    /** The point of a label's edge that looks at a box, and the one of the box that looks back. */
    static Line2D leader(Rectangle2D label, Rectangle2D near) {
        Point2D a = nearest(label, near.getCenterX(), near.getCenterY());
        Point2D b = nearest(near, a.getX(), a.getY());
        return new Line2D.Double(nearest(label, b.getX(), b.getY()), b);
    }

    private static Point2D nearest(Rectangle2D r, double x, double y) {
        return new Point2D.Double(
                Math.max(r.getMinX(), Math.min(r.getMaxX(), x)), Math.max(r.getMinY(), Math.min(r.getMaxY(), y)));
    }
}
