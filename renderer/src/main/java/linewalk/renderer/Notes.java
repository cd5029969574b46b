package linewalk.renderer;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Finds room beside a place for a balloon or a doubt mark, off lettering and strokes, off the path and off other notes. */
final class Notes {

    private static final int DIRECTIONS = 16;

    private final Rectangle2D frame;
    private final List<Rectangle2D> lettering;
    private final List<List<Point2D>> lines;
    private final List<Line2D> ink;
    private final Margins margins;
    private final List<Rectangle2D> taken = new ArrayList<>();
    private final List<Rectangle2D> notes = new ArrayList<>();

    /** @param margins what may be used beyond the frame */
    Notes(
            Rectangle2D frame,
            List<Rectangle2D> lettering,
            List<List<Point2D>> lines,
            List<Line2D> ink,
            Margins margins) {
        this.frame = frame;
        this.margins = margins;
        this.lettering = lettering;
        this.lines = lines;
        this.ink = ink;
    }

    void keepOff(Rectangle2D place) {
        taken.add(place);
    }

    /** The centre of the best place for a note of the size given, near a box. */
    Point2D place(Rectangle2D near, double widthPt, double heightPt) {
        Point2D best = null;
        double least = Double.MAX_VALUE;
        for (double gap = 6; gap <= 42; gap += 9) {
            for (int i = 0; i < DIRECTIONS; i++) {
                double angle = -Math.PI / 4 + 2 * Math.PI * i / DIRECTIONS;
                // all around a rectangle, so that no place lies over the box itself
                double reach = 1 / Math.max(Math.abs(Math.cos(angle)), Math.abs(Math.sin(angle)));
                double x = near.getCenterX() + reach * Math.cos(angle) * (near.getWidth() / 2 + widthPt / 2 + gap);
                double y = near.getCenterY() + reach * Math.sin(angle) * (near.getHeight() / 2 + heightPt / 2 + gap);
                Rectangle2D r = new Rectangle2D.Double(x - widthPt / 2, y - heightPt / 2, widthPt, heightPt);
                double cost = cost(r) + gap * 0.4;
                if (cost < least - 1e-9) {
                    least = cost;
                    best = new Point2D.Double(x, y);
                }
            }
        }
        Rectangle2D note =
                new Rectangle2D.Double(best.getX() - widthPt / 2, best.getY() - heightPt / 2, widthPt, heightPt);
        notes.add(note);
        margins.take(note);
        return best;
    }

    private double cost(Rectangle2D r) {
        // rather beyond the frame than over the path
        double cost = frame.contains(r) ? 0 : margins.isFree(grown(r, 2), frame) ? 50 : 400;
        for (Rectangle2D t : taken) {
            cost += t.intersects(r) ? 200 : 0;
        }
        // a note under another cannot be read at all
        for (Rectangle2D n : notes) {
            cost += n.intersects(r) ? 1000 : 0;
        }
        for (Rectangle2D l : lettering) {
            cost += l.intersects(r) ? 40 : 0;
        }
        // hiding one stroke of the original is bad, two hardly worse
        cost += Math.min(
                90,
                60
                        * ink.stream()
                                .filter(l -> l.intersects(grown(r, 2)))
                                .limit(2)
                                .count());
        Rectangle2D wide = grown(r, 6);
        for (List<Point2D> line : lines) {
            for (int i = 1; i < line.size(); i++) {
                cost += new Line2D.Double(line.get(i - 1), line.get(i)).intersects(wide) ? 100 : 0;
            }
        }
        return cost;
    }

    private static Rectangle2D grown(Rectangle2D r, double byPt) {
        return new Rectangle2D.Double(
                r.getX() - byPt, r.getY() - byPt, r.getWidth() + 2 * byPt, r.getHeight() + 2 * byPt);
    }
}
