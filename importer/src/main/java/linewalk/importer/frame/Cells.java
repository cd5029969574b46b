package linewalk.importer.frame;

import java.util.List;
import java.util.Optional;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.lettering.Label;
import linewalk.importer.page.Near;
import linewalk.importer.page.Segment;

/** The ruled fields of a title block: wherever in its own field a value stands, it belongs to the caption there. */
final class Cells {

    /** Highest field, in heights of the value's letters, and how far from a label its rulings are looked for. */
    private static final double HIGHEST = 6;

    private static final double FARTHEST = 60;

    private final Near<Segment> rulings;

    /** @param rulings straight pieces of line work */
    Cells(List<Segment> rulings) {
        this.rulings = new Near<>(
                rulings.stream().filter(s -> s.horizontal() || s.vertical()).toList(), Segment::box);
    }

    /** Rulings enclose both on all four sides, and none stands between them. */
    boolean share(Label caption, Label value) {
        return around(caption, value.sizePt())
                .filter(cell -> cell.contains(value.center()) && cell.heightPt() < HIGHEST * value.sizePt())
                .isPresent();
    }

    private Optional<Box> around(Label l, double sizePt) {
        Point m = l.center();
        double far = FARTHEST * sizePt;
        double left = -1;
        double right = Double.MAX_VALUE;
        for (Segment s : rulings.touching(new Box(m.xPt() - far, m.yPt(), m.xPt() + far, m.yPt()))) {
            double x = s.a().xPt();
            left = s.vertical() && x < m.xPt() ? Math.max(left, x) : left;
            right = s.vertical() && x > m.xPt() ? Math.min(right, x) : right;
        }
        double top = -1;
        double bottom = Double.MAX_VALUE;
        double near = HIGHEST * sizePt;
        for (Segment s : rulings.touching(new Box(m.xPt(), m.yPt() - near, m.xPt(), m.yPt() + near))) {
            double y = s.a().yPt();
            top = s.horizontal() && y < m.yPt() ? Math.max(top, y) : top;
            bottom = s.horizontal() && y > m.yPt() ? Math.min(bottom, y) : bottom;
        }
        boolean closed = left >= 0 && top >= 0 && right < Double.MAX_VALUE && bottom < Double.MAX_VALUE;
        return closed ? Optional.of(new Box(left, top, right, bottom)) : Optional.empty();
    }
}
