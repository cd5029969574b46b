package linewalk.renderer;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Cuts a layout between its layers into bands that fit the page, and sets the bands side by side, page after page. */
final class Tiling {

    /** Room for match marks above, below and beside a tile. */
    private static final double RIM_PT = 2 * MatchMarks.RADIUS_PT + 2;
    /** How far a mark steps outwards that has no room beside another. */
    static final double STEP_PT = 2 * MatchMarks.RADIUS_PT + 2;

    private static final double APART_PT = 14;

    private final LayeredLayout layout;
    private final double widthPt;
    private final double heightPt;

    Tiling(LayeredLayout layout, double widthPt, double heightPt) {
        this.layout = layout;
        this.widthPt = widthPt;
        this.heightPt = heightPt;
    }

    List<Tile> tiles() {
        List<Tile> tiles = new ArrayList<>();
        int page = 0;
        double x = 0;
        double top = extent().getMinY();
        for (Rectangle2D part : parts()) {
            boolean first = part.getMinY() == top;
            double w = part.getWidth() + 2 * RIM_PT;
            if (x > 0 && x + w > widthPt) {
                page++;
                x = 0;
            }
            tiles.add(new Tile(part, page, x + RIM_PT, first ? 0 : RIM_PT + STEP_PT));
            x += w + APART_PT;
        }
        return tiles;
    }

    private List<Rectangle2D> parts() {
        Rectangle2D all = extent();
        List<Rectangle2D> parts = new ArrayList<>();
        List<Double> ys = cuts(all.getMinY(), all.getMaxY(), heightPt - 2 * (RIM_PT + STEP_PT), false, all);
        for (int i = 1; i < ys.size(); i++) {
            Rectangle2D band =
                    new Rectangle2D.Double(all.getX(), ys.get(i - 1), all.getWidth(), ys.get(i) - ys.get(i - 1));
            Rectangle2D used = used(band);
            List<Double> xs = cuts(used.getMinX(), used.getMaxX(), widthPt - 2 * RIM_PT, true, band);
            for (int k = 1; k < xs.size(); k++) {
                parts.add(new Rectangle2D.Double(
                        xs.get(k - 1), band.getY(), xs.get(k) - xs.get(k - 1), band.getHeight()));
            }
        }
        return parts;
    }

    private Rectangle2D extent() {
        Rectangle2D all = null;
        for (Rectangle2D b : layout.boxes.values()) {
            all = all == null ? b.getBounds2D() : all.createUnion(b);
        }
        for (List<java.awt.geom.Point2D> line : layout.lines.values()) {
            for (java.awt.geom.Point2D p : line) {
                all.add(p);
            }
        }
        all.setRect(all.getX() - 3, all.getY() - 3, all.getWidth() + 6, all.getHeight() + 6);
        return all;
    }

    /** A band without the empty room on its left and right. */
    private Rectangle2D used(Rectangle2D band) {
        double x0 = Double.MAX_VALUE;
        double x1 = -Double.MAX_VALUE;
        for (Rectangle2D b : layout.boxes.values()) {
            if (b.intersects(band)) {
                x0 = Math.min(x0, b.getMinX());
                x1 = Math.max(x1, b.getMaxX());
            }
        }
        for (List<java.awt.geom.Point2D> line : layout.lines.values()) {
            for (List<java.awt.geom.Point2D> piece : new Clip(line, band).pieces) {
                for (java.awt.geom.Point2D p : piece) {
                    x0 = Math.min(x0, p.getX());
                    x1 = Math.max(x1, p.getX());
                }
            }
        }
        return x0 > x1 ? band : new Rectangle2D.Double(x0 - 3, band.getY(), x1 - x0 + 6, band.getHeight());
    }

    /** Places to cut, first and last included, at most {@code room} apart, through no part where that can be had. */
    private List<Double> cuts(double from, double to, double room, boolean vertical, Rectangle2D within) {
        List<Double> cuts = new ArrayList<>(List.of(from));
        double at = from;
        while (to - at > room) {
            at = lastFree(at + room, at + room / 3, vertical, within);
            cuts.add(at);
        }
        cuts.add(to);
        return cuts;
    }

    private double lastFree(double from, double downTo, boolean vertical, Rectangle2D within) {
        for (double at = from; at > downTo; at -= 1) {
            if (isFree(at, vertical, within)) {
                return at;
            }
        }
        return from;
    }

    /** No part, and no line running along the cut. */
    private boolean isFree(double at, boolean vertical, Rectangle2D within) {
        for (Rectangle2D b : layout.boxes.values()) {
            double lo = vertical ? b.getMinX() : b.getMinY();
            double hi = vertical ? b.getMaxX() : b.getMaxY();
            if (b.intersects(within) && at > lo - 2 && at < hi + 2) {
                return false;
            }
        }
        for (List<java.awt.geom.Point2D> line : layout.lines.values()) {
            for (int i = 1; i < line.size(); i++) {
                double p = vertical ? line.get(i - 1).getX() : line.get(i - 1).getY();
                double q = vertical ? line.get(i).getX() : line.get(i).getY();
                if (Math.abs(p - q) < 0.01 && Math.abs(p - at) < 4) {
                    return false;
                }
            }
        }
        return true;
    }
}
