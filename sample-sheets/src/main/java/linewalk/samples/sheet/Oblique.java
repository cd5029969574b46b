package linewalk.samples.sheet;

import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import linewalk.samples.machine.Furniture;
import linewalk.samples.machine.Part;
import linewalk.samples.machine.Run;
import linewalk.samples.machine.SheetPlan;
import linewalk.samples.symbol.Spot;

/** Bends cut off obliquely, at 45 degrees or less steeply, where nothing else of the sheet is in the way. */
final class Oblique {
    private static final double CLEAR = 0.45;
    private static final double[][] CUTS = {{3, 3}, {3.4, 1.8}, {2, 2}, {1.6, 2.6}, {1.2, 1.2}};
    /** Left for the line's number, its size and an arrowhead. */
    private static final double AT_REFERENCE = 4.6;

    private final List<Run> runs;
    private final List<Rectangle2D> taken = new ArrayList<>();

    Oblique(SheetPlan sheet) {
        runs = sheet.nets().stream().flatMap(net -> net.runs().stream()).toList();
        sheet.parts().forEach(part -> {
            taken.add(outline(part));
            taken.add(
                    new Rectangle2D.Double(part.tagAt().x() - 0.2, part.tagAt().y() - 0.4, 3.6, 1.3));
        });
        for (Furniture thing : sheet.furniture()) {
            if (thing instanceof Furniture.Enclosure enclosure) {
                enclosure.ports().forEach(port -> taken.add(around(port.x(), port.y(), 1)));
            } else if (thing instanceof Furniture.Bubble bubble) {
                taken.add(around(bubble.balloon().x(), bubble.balloon().y(), 1));
            }
        }
    }

    private static Rectangle2D outline(Part part) {
        boolean spool = part.symbol().kind().equals("directional-valve");
        double x = part.symbol().half().x() + CLEAR + (spool ? 1.4 : 0);
        double y = part.symbol().half().y() + CLEAR + (spool ? 0.4 : 0);
        boolean turned = part.place().quarters() % 2 == 1;
        double halfX = turned ? y : x;
        double halfY = turned ? x : y;
        return new Rectangle2D.Double(part.place().x() - halfX, part.place().y() - halfY, 2 * halfX, 2 * halfY);
    }

    private static Rectangle2D around(double x, double y, double reach) {
        return new Rectangle2D.Double(x - reach, y - reach, 2 * reach, 2 * reach);
    }

    List<Spot> route(Run run) {
        List<Spot> points = run.points();
        List<Spot> out = new ArrayList<>();
        out.add(points.get(0));
        for (int i = 1; i < points.size() - 1; i++) {
            out.addAll(corner(run, i, out.get(out.size() - 1)));
        }
        out.add(points.get(points.size() - 1));
        return List.copyOf(out);
    }

    private List<Spot> corner(Run run, int i, Spot from) {
        Spot corner = run.points().get(i);
        Spot to = run.points().get(i + 1);
        double before = Gaps.distance(from, corner) - (i == 1 ? leave(run.first()) : 0.4);
        double after = Gaps.distance(corner, to) - (i == run.points().size() - 2 ? leave(run.last()) : 2);
        for (int k = 0; k < CUTS.length; k++) {
            // Start with another cut at each bend, so that a sheet has several slopes.
            double[] cut = CUTS[(k + i + (int) Math.round(corner.x())) % CUTS.length];
            Spot a = towards(corner, from, cut[0]);
            Spot b = towards(corner, to, cut[1]);
            if (cut[0] <= before && cut[1] <= after && isFree(run, a, corner, b)) {
                return List.of(a, b);
            }
        }
        return List.of(corner);
    }

    private static double leave(Run.End end) {
        return end.reference() != null ? AT_REFERENCE : 0.8;
    }

    private static Spot towards(Spot from, Spot to, double by) {
        double t = by / Gaps.distance(from, to);
        return from.plus((to.x() - from.x()) * t, (to.y() - from.y()) * t);
    }

    private boolean isFree(Run run, Spot a, Spot corner, Spot b) {
        Path2D area = new Path2D.Double();
        area.moveTo(a.x(), a.y());
        area.lineTo(corner.x(), corner.y());
        area.lineTo(b.x(), b.y());
        area.closePath();
        Rectangle2D box = area.getBounds2D();
        Rectangle2D wide = new Rectangle2D.Double(
                box.getX() - CLEAR, box.getY() - CLEAR, box.getWidth() + 2 * CLEAR, box.getHeight() + 2 * CLEAR);
        return taken.stream().noneMatch(area::intersects)
                && runs.stream().filter(other -> other != run).noneMatch(other -> meets(other, wide))
                && !meetsItself(run, corner, wide);
    }

    private static boolean meets(Run other, Rectangle2D area) {
        for (int i = 1; i < other.points().size(); i++) {
            if (segment(other, i).intersects(area)) {
                return true;
            }
        }
        return false;
    }

    private static boolean meetsItself(Run run, Spot corner, Rectangle2D area) {
        for (int i = 1; i < run.points().size(); i++) {
            boolean atCorner = run.points().get(i - 1).equals(corner)
                    || run.points().get(i).equals(corner);
            if (!atCorner && segment(run, i).intersects(area)) {
                return true;
            }
        }
        return false;
    }

    private static Line2D segment(Run run, int i) {
        Spot a = run.points().get(i - 1);
        Spot b = run.points().get(i);
        return new Line2D.Double(a.x(), a.y(), b.x(), b.y());
    }
}
