package linewalk.importer.stroke;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.lettering.Cell;
import linewalk.importer.page.Glyph;
import linewalk.importer.page.Marks;
import linewalk.importer.page.Near;
import linewalk.importer.page.Stroke;

/**
 * What of a page may be lettering.
 *
 * @param rows of two signs and more
 * @param singles signs that stand alone, seen upright
 * @param turned those of them that stand near text that is not upright, seen as it is
 * @param rings boxes of circles
 * @param lean of the page's letters
 */
record PageInk(
        double widthPt,
        double heightPt,
        List<Row> rows,
        List<Row> singles,
        List<Row> turned,
        List<Box> rings,
        double lean) {

    private static final int ROUND = 8;

    /** How far a turned sign may stand from text that is turned like it, in its heights: a sheet's number from its heading. */
    private static final double NEAR_TEXT = 5;

    private static final double SQUARE = 0.05;

    /** Signs in rows of three and more that a page with a text layer must show before drawn letters are looked for. */
    private static final int BESIDE_TEXT = 12;

    static PageInk of(Marks marks) {
        List<Blob> blobs = BlobFinder.find(marks);
        Predicate<Box> told = told(marks.glyphs());
        List<Baselines.Draft> drafts = drafts(blobs, told, marks, Cell.NONE);
        Cell.Measure measure = new Cell.Measure();
        rows(drafts, Lettered.lean(drafts), Cell.NONE)
                .forEach(r -> measure.add(r.signs().stream().map(Placed::span).toList(), r.heightPt()));
        Cell cell = measure.cell();
        if (cell.fixed()) {
            drafts = drafts(blobs, told, marks, cell);
        }
        if (drafts.isEmpty()) {
            return new PageInk(marks.widthPt(), marks.heightPt(), List.of(), List.of(), List.of(), List.of(), 0);
        }
        double lean = Lettered.lean(drafts);
        List<Row> rows = Facing.of(Sizes.split(rows(drafts, lean, cell)));
        Set<Piece> taken = new HashSet<>();
        rows.forEach(r -> r.signs().forEach(s -> taken.addAll(s.pieces())));
        List<Blob> alone = blobs.stream()
                .filter(b -> !taken.contains(b.pieces().get(0)) && !b.straight() && !told.test(b.box()))
                .filter(b -> b.box().heightPt() > 0)
                .toList();
        return new PageInk(
                marks.widthPt(),
                marks.heightPt(),
                rows,
                alone.stream().map(b -> single(b, Turn.of(0), lean)).toList(),
                turned(alone, rows, lean),
                rings(marks),
                lean);
    }

    private static List<Row> turned(List<Blob> alone, List<Row> rows, double lean) {
        Near<Row> near =
                new Near<>(rows.stream().filter(r -> r.turn().deg() != 0).toList(), Row::box);
        List<Row> turned = new ArrayList<>();
        for (Blob b : alone) {
            near.touching(b.box().grow(NEAR_TEXT * b.sizePt())).stream()
                    .min(Comparator.comparingDouble(r -> r.box().distancePt(b.box())))
                    .ifPresent(r -> turned.add(single(b, r.turn(), lean)));
        }
        return turned;
    }

    private static List<Box> rings(Marks marks) {
        return marks.strokes().stream()
                .filter(s -> s.closed() && s.points().size() >= ROUND)
                .map(Stroke::box)
                .filter(b -> Math.abs(b.widthPt() - b.heightPt()) < SQUARE * b.widthPt())
                .toList();
    }

    /** Nothing is drawn here that could be letters. */
    boolean none() {
        return rows.isEmpty();
    }

    private static Row single(Blob b, Turn turn, double lean) {
        Placed p = Placed.of(b, turn);
        return new Row(turn, List.of(p.upright(turn, lean, p.v1())), p.heightPt(), p.v1(), lean, Cell.NONE);
    }

    private static List<Row> rows(List<Baselines.Draft> drafts, double lean, Cell cell) {
        return drafts.stream().map(d -> Lettered.row(d, lean, cell)).toList();
    }

    private static List<Baselines.Draft> drafts(List<Blob> blobs, Predicate<Box> told, Marks marks, Cell cell) {
        List<Baselines.Draft> drafts = drafts(blobs, cell);
        return marks.glyphs().isEmpty() ? drafts : beside(drafts, told);
    }

    /** Rows in every direction; of rows that share ink the longest. */
    private static List<Baselines.Draft> drafts(List<Blob> blobs, Cell cell) {
        List<Baselines.Draft> all = new ArrayList<>();
        for (double deg : new double[] {0, 270, 90}) {
            all.addAll(Baselines.find(blobs, Turn.of(deg), cell));
        }
        all.sort((a, b) -> Integer.compare(b.parts().size(), a.parts().size()));
        Set<Piece> owned = new HashSet<>();
        List<Baselines.Draft> out = new ArrayList<>();
        for (Baselines.Draft d : all) {
            Baselines.Draft free = d.without(owned);
            if (free.lettered()) {
                free.parts().forEach(p -> owned.addAll(p.pieces()));
                out.add(free);
            }
        }
        out.addAll(Oblique.find(blobs, owned, cell));
        return out;
    }

    /** Rows where the text layer says nothing; none where there are too few to be a drafter's habit. */
    private static List<Baselines.Draft> beside(List<Baselines.Draft> drafts, Predicate<Box> told) {
        List<Baselines.Draft> rest = drafts.stream()
                .filter(d ->
                        d.parts().stream().flatMap(p -> p.pieces().stream()).noneMatch(p -> told.test(p.box())))
                .toList();
        int signs =
                rest.stream().mapToInt(d -> d.parts().size()).filter(n -> n > 2).sum();
        return signs < BESIDE_TEXT ? List.of() : rest;
    }

    /** Whether the text layer says something at a place: letters drawn over their own text are printed twice, to look bold. */
    private static Predicate<Box> told(List<Glyph> glyphs) {
        Near<Glyph> near = new Near<>(glyphs, PageInk::box);
        return box -> !near.touching(box).isEmpty();
    }

    private static Box box(Glyph g) {
        double a = Math.toRadians(g.angleDeg());
        double up = StrokeLettering.CAPITALS * g.sizePt();
        Point top = g.start().plus(up * Math.sin(a), -up * Math.cos(a));
        return Box.around(List.of(g.start(), g.end(), top));
    }
}
