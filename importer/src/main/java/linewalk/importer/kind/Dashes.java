package linewalk.importer.kind;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Point;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Segment;

/** Dashes that a program drew one by one, and too few of them in a row to be seen as a dashed line before. */
final class Dashes {

    /** How much longer than its neighbours a dash may be. */
    private static final double LONGER = 1.6;

    /** How long a gap is at most, in dashes. */
    private static final double GAP = 0.65;

    private final double onPt;

    /** @param onPt how long the figure's dashes are */
    Dashes(double onPt) {
        this.onPt = onPt;
    }

    /** Takes rows of short pieces with gaps between out of the solid ones and adds each row as one dashed piece. */
    void move(List<Segment> solid, List<Segment> dashed) {
        List<Segment> open = new ArrayList<>(
                solid.stream().filter(s -> s.lengthPt() < LONGER * onPt).toList());
        while (!open.isEmpty()) {
            List<Segment> row = row(open.remove(open.size() - 1), open);
            if (row.size() > 1) {
                open.removeAll(row);
                solid.removeAll(row);
                dashed.add(whole(row));
            }
        }
    }

    private List<Segment> row(Segment first, List<Segment> open) {
        List<Segment> row = new ArrayList<>(List.of(first));
        boolean grown = true;
        while (grown) {
            grown = false;
            for (Segment o : open) {
                if (!row.contains(o) && row.stream().anyMatch(r -> follows(r, o))) {
                    row.add(o);
                    grown = true;
                }
            }
        }
        return row;
    }

    /** In one line with it, a gap between. */
    private boolean follows(Segment a, Segment b) {
        Direction way = Direction.of(a.a(), a.b());
        boolean line = Math.abs(way.along(Direction.of(b.a(), b.b()))) > 0.995
                && way.aside(a.a(), b.a()) < 0.1 * onPt
                && way.aside(a.a(), b.b()) < 0.1 * onPt;
        double gap = Math.min(
                Math.min(a.a().distancePt(b.a()), a.a().distancePt(b.b())),
                Math.min(a.b().distancePt(b.a()), a.b().distancePt(b.b())));
        return line && gap > 0.2 * onPt && gap < GAP * onPt;
    }

    private static Segment whole(List<Segment> row) {
        Segment best = row.get(0);
        for (Segment s : row) {
            for (Segment o : row) {
                for (Point p : List.of(s.a(), s.b())) {
                    for (Point q : List.of(o.a(), o.b())) {
                        best = p.distancePt(q) > best.lengthPt() ? new Segment(p, q) : best;
                    }
                }
            }
        }
        return best;
    }
}
