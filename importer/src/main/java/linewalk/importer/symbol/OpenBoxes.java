package linewalk.importer.symbol;

import java.util.List;
import linewalk.drawing.Point;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Near;
import linewalk.importer.page.Segment;
import linewalk.importer.page.Stroke;

/** Boxes of which three sides are drawn, on the side of a figure of the same pen: a solenoid, the pilot stage of a valve. */
final class OpenBoxes {

    /** How much longer than the open side its figure is at most; frames of units are longer. */
    private static final double FIGURE = 6;

    private static final double ONE_PEN = 1.1;

    private final Near<Stroke> figures;
    private final double tolPt;

    private OpenBoxes(List<Stroke> strokes, double tolPt) {
        this.figures = new Near<>(
                strokes.stream().filter(s -> s.closed() && !s.curved()).toList(), Stroke::box);
        this.tolPt = tolPt;
    }

    /** The strokes with such boxes closed. */
    static List<Stroke> close(List<Stroke> strokes, double tolPt) {
        OpenBoxes boxes = new OpenBoxes(strokes, tolPt);
        return strokes.stream()
                .map(s -> boxes.isOpen(s) ? new Stroke(s.points(), true, false, s.widthPt(), s.dash(), s.filled()) : s)
                .toList();
    }

    private boolean isOpen(Stroke s) {
        boolean threeSides =
                !s.closed() && !s.curved() && s.dash().solid() && s.points().size() == 4;
        return threeSides
                && square(s, 1)
                && square(s, 2)
                && figures.touching(s.box().grow(tolPt)).stream().anyMatch(f -> standsOn(s, f));
    }

    private static boolean square(Stroke s, int corner) {
        Direction in = Direction.of(s.points().get(corner - 1), s.points().get(corner));
        Direction out = Direction.of(s.points().get(corner), s.points().get(corner + 1));
        return Math.abs(in.along(out)) < 0.05;
    }

    private boolean standsOn(Stroke s, Stroke figure) {
        double open = s.first().distancePt(s.last());
        double size = Math.max(figure.box().widthPt(), figure.box().heightPt());
        boolean onePen = Math.max(s.widthPt(), figure.widthPt()) <= ONE_PEN * Math.min(s.widthPt(), figure.widthPt());
        if (!onePen || size > FIGURE * open || s.first().distancePt(s.points().get(1)) > size) {
            return false;
        }
        List<Point> corners = figure.points();
        for (int i = 0; i < corners.size(); i++) {
            Segment side = new Segment(corners.get(i), corners.get((i + 1) % corners.size()));
            if (side.distancePt(s.first()) < tolPt && side.distancePt(s.last()) < tolPt) {
                return true;
            }
        }
        return false;
    }
}
