package linewalk.renderer;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import linewalk.drawing.Box;
import linewalk.drawing.Point;

/** Divides a view into parts that fit the page, past parts and references where that can be had. */
final class ViewCuts {

    /** Of a part or of the paper: less of it is shown where the rest is. */
    private static final double LEAST_SHARE = 0.25;

    private static final int SYMBOL = 20;

    private final BrokenView view;

    private ViewCuts(BrokenView view) {
        this.view = view;
    }

    /** Parts with something of the path in them, row by row. */
    static List<Rectangle2D> parts(BrokenView view, double widthPt, double heightPt) {
        ViewCuts v = new ViewCuts(view);
        Rectangle2D all = view.extent();
        List<Double> ys = v.cuts(all.getHeight(), heightPt, false);
        List<Double> xs = v.cuts(all.getWidth(), widthPt, true);
        List<Rectangle2D> parts = new ArrayList<>();
        for (int r = 1; r < ys.size(); r++) {
            for (int c = 1; c < xs.size(); c++) {
                Rectangle2D part = new Rectangle2D.Double(
                        xs.get(c - 1), ys.get(r - 1), xs.get(c) - xs.get(c - 1), ys.get(r) - ys.get(r - 1));
                v.trimmed(part, parts);
            }
        }
        return parts;
    }

    /** No larger than what of the path and its parts lies in it. */
    private void trimmed(Rectangle2D part, List<Rectangle2D> parts) {
        Rectangle2D used = null;
        for (Box key : view.keys) {
            Rectangle2D all = view.map(key);
            Rectangle2D seen = all.createIntersection(part);
            if (isWorthIt(seen, all, part)) {
                used = used == null ? seen : used.createUnion(seen);
            }
        }
        for (List<Point> course : view.stay.courses().values()) {
            for (BrokenView.Stretch s : view.map(course)) {
                for (List<Point2D> piece : new Clip(s.points(), part).pieces) {
                    Rectangle2D strip = strip(piece).createIntersection(part);
                    used = used == null ? strip : used.createUnion(strip);
                }
            }
        }
        if (used != null) {
            parts.add(used);
        }
    }

    /** A rim of something that is shown next door is not. */
    private static boolean isWorthIt(Rectangle2D seen, Rectangle2D all, Rectangle2D part) {
        return seen.getWidth() > 0
                && seen.getHeight() > 0
                && (area(seen) > LEAST_SHARE * area(all) || area(seen) > LEAST_SHARE * area(part));
    }

    private static double area(Rectangle2D r) {
        return r.getWidth() * r.getHeight();
    }

    private static Rectangle2D strip(List<Point2D> piece) {
        Rectangle2D r = new Rectangle2D.Double(piece.get(0).getX(), piece.get(0).getY(), 0, 0);
        piece.forEach(r::add);
        double beside = BrokenView.BESIDE_PT;
        return new Rectangle2D.Double(
                r.getX() - beside, r.getY() - beside, r.getWidth() + 2 * beside, r.getHeight() + 2 * beside);
    }

    private List<Double> cuts(double lengthPt, double roomPt, boolean vertical) {
        List<Double> cuts = new ArrayList<>(List.of(0.0));
        double at = 0;
        while (lengthPt - at > roomPt) {
            at = lastFree(at + roomPt, at + roomPt / 3, vertical);
            cuts.add(at);
        }
        cuts.add(lengthPt);
        return cuts;
    }

    /** Where the fewest parts and references are cut through, the last of such places. */
    private double lastFree(double from, double downTo, boolean vertical) {
        double best = from;
        long least = Long.MAX_VALUE;
        for (double at = from; at > downTo && least > 0; at -= 2) {
            long cut = cutThrough(at, vertical);
            if (cut < least) {
                least = cut;
                best = at;
            }
        }
        return best;
    }

    /** A symbol in two halves is worse than a designation or a bend apart from its line. */
    private long cutThrough(double at, boolean vertical) {
        Stream<Rectangle2D> symbols = Stream.concat(view.stay.parts().stream(), view.stay.beside().stream())
                .map(t -> view.map(Stay.anchor(t)));
        return view.keys.stream()
                        .map(view::map)
                        .filter(k -> cuts(at, k, vertical))
                        .count()
                + SYMBOL * symbols.filter(k -> cuts(at, k, vertical)).count();
    }

    private static boolean cuts(double at, Rectangle2D k, boolean vertical) {
        return at > (vertical ? k.getMinX() : k.getMinY()) && at < (vertical ? k.getMaxX() : k.getMaxY());
    }

    static Point2D center(Rectangle2D r) {
        return new Point2D.Double(r.getCenterX(), r.getCenterY());
    }
}
