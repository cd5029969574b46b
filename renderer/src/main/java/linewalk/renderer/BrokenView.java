package linewalk.renderer;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.drawing.Reference;
import linewalk.drawing.Sheet;

/**
 * The areas of one sheet that a stay needs, at one scale, with the empty stretches between them pulled together as in a
 * broken view. What is straight and parallel to an edge stays so.
 */
final class BrokenView {

    /** Empty stretches shorter than this, on the print, are kept. */
    private static final double LEAST_GAP_PT = 52;
    /** Lettering of the original is brought to 2.5 mm capital height; round letters measure a little more. */
    private static final double READABLE_CAP_PT = 7.09 * 1.025;
    /** Smaller print on the original than this is not what the path is read by. */
    private static final double FINE_PRINT_PT = 3.6;

    /** How much of the original is shown on both sides of a line, on the print. */
    static final double BESIDE_PT = 20;

    private static final double LEAST_SCALE = 0.6;
    private static final double MOST_SCALE = 2;

    /** A window: the area of the original and its place in the view. */
    record Cell(Box source, Rectangle2D view) {}

    /** A stretch of a course in the view; {@code seen} where the original lies beneath, else left out. */
    record Stretch(List<Point2D> points, boolean seen) {}

    final Stay stay;
    final double scale;
    /** Areas of the original that must be seen. */
    final List<Box> keys;

    final List<Cell> cells = new ArrayList<>();
    private final List<Box> phrases;
    private final BrokenAxis across;
    private final BrokenAxis down;

    private BrokenView(Stay stay, Sheet sheet, List<SourceLetters.Letter> letters, double scale) {
        this.stay = stay;
        this.scale = scale;
        phrases = SourceLetters.phrases(letters);
        Box page = new Box(0, 0, sheet.widthPt(), sheet.heightPt());
        keys = stay.keys(letters, scale).stream().map(k -> within(k, page)).toList();
        across = new BrokenAxis(
                keys.stream().map(k -> new double[] {k.x0Pt(), k.x1Pt()}).toList(), scale, LEAST_GAP_PT / scale);
        down = new BrokenAxis(
                keys.stream().map(k -> new double[] {k.y0Pt(), k.y1Pt()}).toList(), scale, LEAST_GAP_PT / scale);
        for (BrokenAxis.Kept row : down.kept) {
            for (BrokenAxis.Kept column : across.kept) {
                cell(row, column);
            }
        }
    }

    /** So large that all lettering in its windows can be read. */
    static BrokenView of(Stay stay, Sheet sheet, List<SourceLetters.Letter> letters) {
        BrokenView view = new BrokenView(stay, sheet, letters, scale(stay.keys(letters, 1), letters));
        double all = scale(view.cells.stream().map(Cell::source).toList(), letters);
        return all > view.scale ? new BrokenView(stay, sheet, letters, all) : view;
    }

    private static Box within(Box b, Box page) {
        return new Box(
                Math.max(b.x0Pt(), page.x0Pt()),
                Math.max(b.y0Pt(), page.y0Pt()),
                Math.max(b.x0Pt() + 1, Math.min(b.x1Pt(), page.x1Pt())),
                Math.max(b.y0Pt() + 1, Math.min(b.y1Pt(), page.y1Pt())));
    }

    /** As drawn where nothing tells the size of its lettering. */
    private static double scale(List<Box> keys, List<SourceLetters.Letter> letters) {
        double least = letters.stream()
                .filter(l -> l.capHeightPt() >= FINE_PRINT_PT)
                .filter(l -> keys.stream().anyMatch(k -> k.contains(l.box().center())))
                .mapToDouble(SourceLetters.Letter::capHeightPt)
                .min()
                .orElse(READABLE_CAP_PT);
        return Math.max(LEAST_SCALE, Math.min(MOST_SCALE, READABLE_CAP_PT / least));
    }

    /** A window is no larger than what of the path and its parts lies in its row and column. */
    private void cell(BrokenAxis.Kept row, BrokenAxis.Kept column) {
        Rectangle2D all = new Rectangle2D.Double(
                column.fromPt(), row.fromPt(), column.toPt() - column.fromPt(), row.toPt() - row.fromPt());
        Rectangle2D used = null;
        for (Box k : keys) {
            used = joined(used, rectangle(k), all);
        }
        for (List<Point> course : stay.courses().values()) {
            List<Point2D> plain = course.stream().map(BrokenView::plain).toList();
            for (List<Point2D> piece : new Clip(plain, all).pieces) {
                for (int i = 1; i < piece.size(); i++) {
                    used = joined(used, strip(piece.get(i - 1), piece.get(i)), all);
                }
            }
        }
        if (used != null) {
            Box source = new Box(used.getMinX(), used.getMinY(), used.getMaxX(), used.getMaxY());
            cells.add(new Cell(source, map(source)));
        }
    }

    private static Rectangle2D joined(Rectangle2D used, Rectangle2D more, Rectangle2D within) {
        Rectangle2D part = more.createIntersection(within);
        if (part.getWidth() <= 0 || part.getHeight() <= 0) {
            return used;
        }
        return used == null ? part : used.createUnion(part);
    }

    private Rectangle2D strip(Point2D p, Point2D q) {
        double beside = BESIDE_PT / scale;
        Rectangle2D r = new Rectangle2D.Double();
        r.setFrameFromDiagonal(p, q);
        r.setRect(r.getX() - beside, r.getY() - beside, r.getWidth() + 2 * beside, r.getHeight() + 2 * beside);
        return r;
    }

    private static Rectangle2D rectangle(Box b) {
        return new Rectangle2D.Double(b.x0Pt(), b.y0Pt(), b.widthPt(), b.heightPt());
    }

    private static Point2D plain(Point p) {
        return new Point2D.Double(p.xPt(), p.yPt());
    }

    Rectangle2D extent() {
        return new Rectangle2D.Double(0, 0, across.lengthPt(), down.lengthPt());
    }

    Point2D map(Point p) {
        return new Point2D.Double(across.map(p.xPt()), down.map(p.yPt()));
    }

    Rectangle2D map(Box b) {
        Rectangle2D r = new Rectangle2D.Double();
        r.setFrameFromDiagonal(map(new Point(b.x0Pt(), b.y0Pt())), map(new Point(b.x1Pt(), b.y1Pt())));
        return r;
    }

    /** From the page as displayed to the view, true within one cell. */
    AffineTransform transform(Cell cell) {
        AffineTransform t = AffineTransform.getTranslateInstance(
                cell.view().getX(), cell.view().getY());
        t.scale(scale, scale);
        t.translate(-cell.source().x0Pt(), -cell.source().y0Pt());
        return t;
    }

    /** A course in the view, divided where it passes from a window into a stretch left out and back. */
    List<Stretch> map(List<Point> course) {
        List<Stretch> stretches = new ArrayList<>();
        List<Point2D> points = new ArrayList<>();
        Boolean seen = null;
        for (int i = 1; i < course.size(); i++) {
            List<Point> stops = stops(course.get(i - 1), course.get(i));
            for (int k = 1; k < stops.size(); k++) {
                Point p = stops.get(k - 1);
                Point q = stops.get(k);
                boolean here = seen(new Point((p.xPt() + q.xPt()) / 2, (p.yPt() + q.yPt()) / 2));
                if (seen == null || here != seen) {
                    if (seen != null) {
                        stretches.add(new Stretch(points, seen));
                    }
                    points = new ArrayList<>(List.of(map(p)));
                    seen = here;
                }
                points.add(map(q));
            }
        }
        if (seen != null) {
            stretches.add(new Stretch(points, seen));
        }
        return stretches;
    }

    /** A reference with all of its lettering, in the view. */
    Rectangle2D map(Reference r) {
        return map(Stay.whole(r.box(), phrases, r.box().widthPt() + r.box().heightPt()));
    }

    boolean seen(Point p) {
        return across.keeps(p.xPt()) && down.keeps(p.yPt());
    }

    /** A straight piece with the places where it meets the edges of kept stretches. */
    private List<Point> stops(Point p, Point q) {
        List<Double> shares = new ArrayList<>(List.of(0.0, 1.0));
        for (BrokenAxis.Kept k : across.kept) {
            addShare(shares, p.xPt(), q.xPt(), k.fromPt());
            addShare(shares, p.xPt(), q.xPt(), k.toPt());
        }
        for (BrokenAxis.Kept k : down.kept) {
            addShare(shares, p.yPt(), q.yPt(), k.fromPt());
            addShare(shares, p.yPt(), q.yPt(), k.toPt());
        }
        return shares.stream()
                .sorted()
                .map(t -> p.plus(t * (q.xPt() - p.xPt()), t * (q.yPt() - p.yPt())))
                .toList();
    }

    private static void addShare(List<Double> shares, double from, double to, double at) {
        double t = (at - from) / (to - from);
        if (t > 1e-9 && t < 1 - 1e-9) {
            shares.add(t);
        }
    }
}
