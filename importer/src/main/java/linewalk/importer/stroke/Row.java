package linewalk.importer.stroke;

import java.util.List;

/**
 * Signs on one baseline, in reading order.
 *
 * @param heightPt of its capitals
 * @param baselinePt in the turned page
 * @param lean of its letters to the right, as a share of their height
 */
record Row(Turn turn, List<Placed> signs, double heightPt, double baselinePt, double lean) {

    Row {
        signs = List.copyOf(signs);
    }

    /** Blank space between two neighbours, as a share of the height. */
    double gap(int after) {
        return (signs.get(after + 1).u0() - signs.get(after).u1()) / heightPt;
    }
}
