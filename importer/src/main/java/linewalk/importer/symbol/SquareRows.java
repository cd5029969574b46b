package linewalk.importer.symbol;

import java.util.List;
import java.util.stream.Stream;
import linewalk.drawing.Box;
import linewalk.importer.page.Segment;

/** Valves' rows of squares, drawn one by one or as one rectangle with dividers. */
final class SquareRows {

    /** Longer side of a square in its shorter one. */
    private static final double SQUARE = 2;

    private static final int MOST = 4;

    private final List<Box> rows;

    /**
     * @param closed outlines
     * @param straight pieces of line work
     */
    SquareRows(List<Outline> closed, List<Segment> straight, double tolPt) {
        List<Box> boxes = closed.stream()
                .filter(o -> o.rectangle() && o.stroke().dash().solid())
                .map(Outline::box)
                .toList();
        List<Box> squares = boxes.stream()
                .filter(b -> longer(b) < SQUARE * shorter(b) && shorter(b) > 4 * tolPt)
                .toList();
        Stream<Box> pairs = squares.stream()
                .flatMap(a ->
                        squares.stream().filter(b -> sideBySide(a, b, tolPt)).map(a::union));
        Stream<Box> cut = boxes.stream()
                .filter(b -> shorter(b) > 4 * tolPt && longer(b) >= SQUARE * shorter(b) - tolPt)
                .filter(b -> divided(b, straight, tolPt));
        rows = Stream.concat(pairs, cut).toList();
    }

    /** A row stands within, clear of the sides. */
    boolean within(Box b, double clearPt) {
        return rows.stream().anyMatch(b.grow(-clearPt)::contains);
    }

    private static boolean sideBySide(Box a, Box b, double tolPt) {
        double dx = Math.abs(a.center().xPt() - b.center().xPt());
        double dy = Math.abs(a.center().yPt() - b.center().yPt());
        return Math.abs(a.widthPt() - b.widthPt()) <= tolPt
                && Math.abs(a.heightPt() - b.heightPt()) <= tolPt
                && (dy <= tolPt && Math.abs(dx - a.widthPt()) <= tolPt
                        || dx <= tolPt && Math.abs(dy - a.heightPt()) <= tolPt);
    }

    /** Rules from side to side cut it into equal squares. */
    private static boolean divided(Box b, List<Segment> straight, double tolPt) {
        int n = (int) Math.round(longer(b) / shorter(b));
        boolean level = b.widthPt() > b.heightPt();
        if (n > MOST) {
            return false;
        }
        for (int i = 1; i < n; i++) {
            double at = (level ? b.x0Pt() : b.y0Pt()) + i * longer(b) / n;
            if (straight.stream().noneMatch(s -> level ? upright(s, at, b, tolPt) : level(s, at, b, tolPt))) {
                return false;
            }
        }
        return true;
    }

    private static boolean upright(Segment s, double xPt, Box b, double tolPt) {
        return s.vertical()
                && Math.abs(s.a().xPt() - xPt) <= tolPt
                && Math.abs(s.box().y0Pt() - b.y0Pt()) <= tolPt
                && Math.abs(s.box().y1Pt() - b.y1Pt()) <= tolPt;
    }

    private static boolean level(Segment s, double yPt, Box b, double tolPt) {
        return s.horizontal()
                && Math.abs(s.a().yPt() - yPt) <= tolPt
                && Math.abs(s.box().x0Pt() - b.x0Pt()) <= tolPt
                && Math.abs(s.box().x1Pt() - b.x1Pt()) <= tolPt;
    }

    private static double longer(Box b) {
        return Math.max(b.widthPt(), b.heightPt());
    }

    private static double shorter(Box b) {
        return Math.min(b.widthPt(), b.heightPt());
    }
}
