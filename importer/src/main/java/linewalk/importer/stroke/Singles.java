package linewalk.importer.stroke;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import linewalk.importer.ocr.LetterReader;
import linewalk.importer.page.Marks;
import linewalk.importer.stroke.ReadRow.Option;

/**
 * Letters that stand alone: ports, zones, flags. One is taken where its shape is one of the rows', at the height and with
 * the pen of other lettering, or in the border.
 */
final class Singles {

    private static final double SAME_HEIGHT = 0.03;
    private static final double BORDER = 0.06;

    /** Signs that no usual symbol looks like. */
    private static final String DISTINCT = "ABEFGJKPQRS2345689";

    private static final String ROUND = "O0oQ";

    private final List<Blob> blobs;
    private final Set<Piece> taken;
    private final PageRows page;
    private final Marks marks;
    private final double lean;
    private final LetterReader reader;

    Singles(List<Blob> blobs, Set<Piece> taken, PageRows page, Marks marks, double lean, LetterReader reader) {
        this.blobs = blobs;
        this.taken = taken;
        this.page = page;
        this.marks = marks;
        this.lean = lean;
        this.reader = reader;
    }

    List<ReadRow> read() {
        List<ReadRow> out = new ArrayList<>();
        for (Blob b : blobs) {
            if (!taken.contains(b.pieces().get(0)) && !b.straight()) {
                ReadRow r = read(b);
                if (r != null) {
                    out.add(r);
                }
            }
        }
        return out;
    }

    private ReadRow read(Blob b) {
        Turn turn = Turn.of(0);
        Placed p = Placed.of(b, turn);
        Row row = new Row(turn, List.of(p.upright(turn, lean, p.v1())), p.heightPt(), p.v1(), lean);
        if (p.heightPt() <= 0) {
            return null;
        }
        ShapeClass c = page.book().find(Shape.of(row.signs().get(0), row));
        if (c == null || c.candidates().isEmpty()) {
            return null;
        }
        String best = c.candidates().get(0);
        return best.length() == 1
                        && Character.isLetterOrDigit(best.charAt(0))
                        && (usual(p) || inBorder(p) || DISTINCT.contains(best) || !ROUND.contains(best) && samePen(p))
                ? new ReadRow(row, List.of(List.of(new Option(best, c.share(best)))))
                : null;
    }

    private boolean usual(Placed p) {
        return page.rows().stream()
                .anyMatch(r -> Math.abs(r.heightPt() - p.heightPt()) < SAME_HEIGHT * r.heightPt()
                        && Math.abs(pen(r) - p.penPt()) <= 0.1 * p.penPt());
    }

    /** As heavy for its height as other lettering. */
    private boolean samePen(Placed p) {
        double share = p.penPt() / p.heightPt();
        return page.rows().stream().anyMatch(r -> Math.abs(pen(r) / r.heightPt() - share) < SAME_HEIGHT * share);
    }

    private static double pen(Row r) {
        return r.signs().get(0).penPt();
    }

    private boolean inBorder(Placed p) {
        return p.u0() < BORDER * marks.widthPt()
                || p.u1() > (1 - BORDER) * marks.widthPt()
                || p.v0() < BORDER * marks.heightPt()
                || p.v1() > (1 - BORDER) * marks.heightPt();
    }
}
