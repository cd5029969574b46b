package linewalk.importer.stroke;

import java.util.Comparator;
import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.lettering.Cell;

/**
 * Signs on one baseline, in reading order.
 *
 * @param heightPt of its capitals
 * @param baselinePt in the turned page
 * @param lean of its letters to the right, as a share of their height
 * @param cell the room of each letter
 */
record Row(Turn turn, List<Placed> signs, double heightPt, double baselinePt, double lean, Cell cell) {

    Row {
        signs = List.copyOf(signs);
    }

    /** Blank space between two neighbours, as a share of the height. */
    double gap(int after) {
        return cell.gap(signs.get(after).span(), signs.get(after + 1).span(), heightPt);
    }

    /** Of the same hand. */
    Row with(List<Placed> other, double otherHeightPt, double otherBaselinePt) {
        return new Row(turn, other, otherHeightPt, otherBaselinePt, lean, cell);
    }

    double penPt() {
        return signs.get(0).penPt();
    }

    /** On the page, in the middle of its first and last sign. */
    Point center() {
        double along = (signs.get(0).u0() + signs.get(signs.size() - 1).u1()) / 2;
        return turn.back(along, baselinePt - heightPt / 2);
    }

    Box box() {
        return signs.stream()
                .flatMap(s -> s.pieces().stream())
                .map(Piece::box)
                .reduce(Box::union)
                .orElseThrow();
    }

    /** The same ink read the other way round. */
    Row turnedRound() {
        Turn other = Turn.of((turn.deg() + 180) % 360);
        double base = -(baselinePt - heightPt);
        List<Placed> turned = signs.stream()
                .map(s -> Placed.of(Blob.of(s.pieces()), other).upright(other, lean, base))
                .sorted(Comparator.comparingDouble(Placed::u0))
                .toList();
        return new Row(other, turned, heightPt, base, lean, cell);
    }
}
