package linewalk.importer.stroke;

import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linewalk.drawing.Box;
import linewalk.importer.page.Near;
import linewalk.importer.page.Stroke;

/**
 * Dashes that were drawn one by one, and their corners: they stand beside names as letters do. Bars of an E, hyphens and
 * strokes of a one may stand in rows as well, but they are parts of letters or have letters beside them.
 */
final class Dashes {

    /** In a row, pieces of it that are no part of a letter. */
    private static final double MOST = 0.75;

    /** In lengths of a sign: how near a letter stands that is level with it, and how level. */
    private static final double BESIDE = 1.25;

    private static final double LEVEL = 0.1;

    private final Map<Stroke, Blob> blobs = new IdentityHashMap<>();
    private final Near<Blob> near;

    private Dashes(List<Blob> all) {
        all.forEach(b -> b.pieces().stream()
                .filter(p -> p.mark() instanceof Stroke)
                .forEach(p -> blobs.put((Stroke) p.mark(), b)));
        near = new Near<>(all, Blob::box);
    }

    /** @param rows strokes that stand in rows like dashes; what is in none of the blobs is line work */
    static Set<Blob> among(List<Blob> blobs, List<List<Stroke>> rows) {
        return new Dashes(blobs).among(rows);
    }

    private Set<Blob> among(List<List<Stroke>> rows) {
        Set<Stroke> inRows = identical(rows);
        Set<Stroke> dashes =
                identical(rows.stream().filter(r -> isDashed(r, inRows)).toList());
        Set<Blob> out = new HashSet<>();
        dashes.stream()
                .map(blobs::get)
                .filter(b -> b != null && isOf(b, dashes))
                .forEach(out::add);
        return out;
    }

    private static Set<Stroke> identical(List<List<Stroke>> rows) {
        Set<Stroke> all = Collections.newSetFromMap(new IdentityHashMap<>());
        rows.forEach(all::addAll);
        return all;
    }

    private boolean isDashed(List<Stroke> row, Set<Stroke> inRows) {
        long pure = row.stream()
                .map(blobs::get)
                .filter(b -> b == null || isOf(b, inRows))
                .count();
        Set<Stroke> own = identical(List.of(row));
        long beside = row.stream()
                .map(blobs::get)
                .filter(b -> b != null && hasLetterBeside(b, own))
                .count();
        return pure >= MOST * row.size() && 2 * beside < row.size();
    }

    private static boolean isOf(Blob b, Set<Stroke> strokes) {
        return b.pieces().stream().allMatch(p -> p.mark() instanceof Stroke s && strokes.contains(s));
    }

    /** A sign that is not of the row begins and ends where this one does: letters of one height, on one line. */
    private boolean hasLetterBeside(Blob own, Set<Stroke> row) {
        Box b = own.box();
        double length = own.sizePt();
        boolean upright = !own.straight() || b.heightPt() > b.widthPt();
        boolean lying = !own.straight() || !upright;
        return near.touching(b.grow(BESIDE * length)).stream()
                .filter(o -> o != own && !isOf(o, row))
                .map(Blob::box)
                .anyMatch(o -> upright && Math.abs(o.y0Pt() - b.y0Pt()) + Math.abs(o.y1Pt() - b.y1Pt()) < LEVEL * length
                        || lying && Math.abs(o.x0Pt() - b.x0Pt()) + Math.abs(o.x1Pt() - b.x1Pt()) < LEVEL * length);
    }
}
