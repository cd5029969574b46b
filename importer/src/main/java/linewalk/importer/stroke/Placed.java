package linewalk.importer.stroke;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Point;
import linewalk.importer.lettering.Cell;

/** Ink seen along a baseline, with its extent in points. */
record Placed(List<Piece> pieces, double u0, double u1, double v0, double v1, double penPt, boolean straight) {

    static Placed of(Blob b, Turn turn) {
        double u0 = Double.MAX_VALUE;
        double u1 = -Double.MAX_VALUE;
        double v0 = Double.MAX_VALUE;
        double v1 = -Double.MAX_VALUE;
        for (Piece piece : b.pieces()) {
            for (Point p : piece.points()) {
                double u = turn.along(p);
                double v = turn.down(p);
                u0 = Math.min(u0, u);
                u1 = Math.max(u1, u);
                v0 = Math.min(v0, v);
                v1 = Math.max(v1, v);
            }
        }
        return new Placed(b.pieces(), u0, u1, v0, v1, b.penPt(), b.straight());
    }

    Cell.Span span() {
        return new Cell.Span(u0, u1);
    }

    double heightPt() {
        return v1 - v0;
    }

    double widthPt() {
        return u1 - u0;
    }

    Placed with(Placed o) {
        List<Piece> both = new ArrayList<>(pieces);
        both.addAll(o.pieces);
        return new Placed(
                both,
                Math.min(u0, o.u0),
                Math.max(u1, o.u1),
                Math.min(v0, o.v0),
                Math.max(v1, o.v1),
                Math.max(penPt, o.penPt),
                false);
    }

    /** Moved so that letters that lean stand upright above the baseline. */
    Placed upright(Turn turn, double lean, double baseline) {
        double a = Double.MAX_VALUE;
        double b = -Double.MAX_VALUE;
        for (Piece piece : pieces) {
            for (Point p : piece.points()) {
                double u = turn.along(p) - lean * (baseline - turn.down(p));
                a = Math.min(a, u);
                b = Math.max(b, u);
            }
        }
        return new Placed(pieces, a, b, v0, v1, penPt, straight);
    }
}
