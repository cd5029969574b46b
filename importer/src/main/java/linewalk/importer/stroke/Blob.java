package linewalk.importer.stroke;

import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Point;

/** Ink that holds together: pieces that touch each other and nothing else. */
record Blob(List<Piece> pieces, Box box) {

    Blob {
        pieces = List.copyOf(pieces);
    }

    static Blob of(List<Piece> pieces) {
        return new Blob(
                pieces, pieces.stream().map(Piece::box).reduce(Box::union).orElseThrow());
    }

    int order() {
        return pieces.get(0).order();
    }

    double penPt() {
        return pieces.stream().mapToDouble(Piece::penPt).max().orElse(0);
    }

    double sizePt() {
        return Math.max(box.widthPt(), box.heightPt());
    }

    /** Painted strokes have a width; this share of their length is that of a heavy I. */
    private static final double PAINTED = 0.25;

    private static final double DRAWN = 0.04;

    /** All of it is one straight stroke: it may be an I or a hyphen, but as well a dash. */
    boolean straight() {
        Point a = pieces.get(0).points().get(0);
        Point far = a;
        for (Piece p : pieces) {
            for (Point q : p.points()) {
                far = q.distancePt(a) > far.distancePt(a) ? q : far;
            }
        }
        double length = a.distancePt(far);
        if (length == 0) {
            return true;
        }
        double dx = (far.xPt() - a.xPt()) / length;
        double dy = (far.yPt() - a.yPt()) / length;
        double reach = Math.max((pieces.get(0).painted() ? PAINTED : DRAWN) * length, 0.05);
        return pieces.stream().flatMap(p -> p.points().stream()).allMatch(q -> {
            double off = (q.xPt() - a.xPt()) * dy - (q.yPt() - a.yPt()) * dx;
            return Math.abs(off) <= reach;
        });
    }
}
