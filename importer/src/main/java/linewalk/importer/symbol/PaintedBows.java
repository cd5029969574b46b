package linewalk.importer.symbol;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Point;
import linewalk.importer.page.Dash;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Fill;
import linewalk.importer.page.Near;
import linewalk.importer.page.Stroke;

/** A shut valve painted without an outline: two dark triangles of one size, tip to tip. */
final class PaintedBows {

    private static final double ALIKE = 0.1;

    /** Cosine between the ways from both tips. */
    private static final double OPPOSITE = -0.97;

    private PaintedBows() {}

    /** A closed outline around each triangle. */
    static List<Outline> find(List<Fill> fills, double tolPt) {
        List<Fill> triangles = fills.stream()
                .filter(f -> !f.light() && f.outline().size() == 3)
                .toList();
        Near<Fill> near = new Near<>(triangles, Fill::box);
        List<Outline> found = new ArrayList<>();
        for (Fill a : triangles) {
            boolean half = near.touching(a.box().grow(tolPt)).stream().anyMatch(b -> b != a && tipToTip(a, b, tolPt));
            if (half) {
                found.add(Outline.of(new Stroke(a.outline(), true, false, 0, Dash.SOLID, true)));
            }
        }
        return found;
    }

    private static boolean tipToTip(Fill a, Fill b, double tolPt) {
        double size = Math.max(a.box().widthPt(), a.box().heightPt());
        double other = Math.max(b.box().widthPt(), b.box().heightPt());
        return Math.abs(size - other) < ALIKE * size
                && a.outline().stream().anyMatch(p -> b.outline().stream()
                        .anyMatch(q -> p.distancePt(q) <= tolPt && away(a, p).along(away(b, q)) < OPPOSITE));
    }

    /** From a corner to the middle of the side across. */
    private static Direction away(Fill f, Point tip) {
        List<Point> base = f.outline().stream().filter(p -> !p.equals(tip)).toList();
        return Direction.of(
                tip,
                new Point(
                        (base.get(0).xPt() + base.get(1).xPt()) / 2,
                        (base.get(0).yPt() + base.get(1).yPt()) / 2));
    }
}
