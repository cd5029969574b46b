package linewalk.renderer;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Box;

/** Divides a view into parts that fit the page, past parts and references where that can be had. */
final class ViewCuts {

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

    private void trimmed(Rectangle2D part, List<Rectangle2D> parts) {
        Rectangle2D used = null;
        for (BrokenView.Cell cell : view.cells) {
            Rectangle2D r = cell.view().createIntersection(part);
            if (r.getWidth() > 0 && r.getHeight() > 0) {
                used = used == null ? r : used.createUnion(r);
            }
        }
        if (used != null && holdsPath(used)) {
            parts.add(used);
        }
    }

    private boolean holdsPath(Rectangle2D part) {
        if (view.keys.stream().anyMatch(k -> view.map(k).intersects(part))) {
            return true;
        }
        return view.stay.courses().values().stream()
                .flatMap(c -> view.map(c).stream())
                .anyMatch(s -> !new Clip(s.points(), part).pieces.isEmpty());
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

    private double lastFree(double from, double downTo, boolean vertical) {
        for (double at = from; at > downTo; at -= 2) {
            if (isFree(at, vertical)) {
                return at;
            }
        }
        return from;
    }

    private boolean isFree(double at, boolean vertical) {
        for (Box key : view.keys) {
            Rectangle2D k = view.map(key);
            double lo = vertical ? k.getMinX() : k.getMinY();
            double hi = vertical ? k.getMaxX() : k.getMaxY();
            if (at > lo && at < hi) {
                return false;
            }
        }
        return true;
    }

    static Point2D center(Rectangle2D r) {
        return new Point2D.Double(r.getCenterX(), r.getCenterY());
    }
}
