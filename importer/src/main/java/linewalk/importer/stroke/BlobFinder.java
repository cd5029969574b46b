package linewalk.importer.stroke;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linewalk.drawing.Box;
import linewalk.importer.page.Fill;
import linewalk.importer.page.Marks;
import linewalk.importer.page.Near;
import linewalk.importer.page.Segment;
import linewalk.importer.page.Stroke;
import linewalk.importer.page.WholeStrokes;

/**
 * Marks to blobs small enough to be letters. Strokes of a letter meet on their centre lines; what reaches a longer
 * stroke or is part of a chain line is line work, and what holds other ink inside is an outline.
 */
final class BlobFinder {

    /** The largest letters, as a share of the sheet's shorter side: 15 mm on A1 (ISO 3098 ends at 20 mm). */
    private static final double LARGEST = 1 / 40.0;

    /** How far centre lines may miss each other and still meet, as a share of the pen. */
    private static final double MEETS = 0.4;

    private static final double LEAST_PT = 0.12;

    private final List<Piece> small = new ArrayList<>();
    private final List<Piece> large = new ArrayList<>();
    private final int[] parent;
    private final double largestPt;

    private BlobFinder(Marks marks) {
        largestPt = LARGEST * Math.min(marks.widthPt(), marks.heightPt());
        int order = 0;
        Set<Stroke> chains = Collections.newSetFromMap(new IdentityHashMap<>());
        WholeStrokes.rows(marks, true).forEach(chains::addAll);
        for (Stroke s : marks.strokes()) {
            sort(Piece.of(order++, s), s.dash().solid() && !chains.contains(s));
        }
        for (Fill f : marks.fills()) {
            if (!f.light()) {
                sort(Piece.of(order++, f), true);
            }
        }
        parent = new int[small.size() + 1];
        for (int i = 0; i < parent.length; i++) {
            parent[i] = i;
        }
    }

    private void sort(Piece p, boolean solid) {
        (solid && p.sizePt() <= largestPt ? small : large).add(p);
    }

    static List<Blob> find(Marks marks) {
        List<Blob> blobs = new BlobFinder(marks).blobs();
        blobs.removeAll(Dashes.among(blobs, WholeStrokes.rows(marks, false)));
        return blobs;
    }

    private record Bit(int piece, Segment segment, double penPt) {}

    private List<Blob> blobs() {
        List<Bit> bits = new ArrayList<>();
        for (int i = 0; i < small.size(); i++) {
            Piece p = small.get(i);
            for (Segment s : p.segments()) {
                bits.add(new Bit(i, s, p.penPt()));
            }
        }
        Near<Bit> near = new Near<>(bits, b -> b.segment().box());
        for (Bit b : bits) {
            join(b, near);
        }
        int lineWork = small.size();
        for (Piece p : large) {
            for (Segment s : p.segments()) {
                join(new Bit(lineWork, s, p.penPt()), near);
            }
        }
        return letters(lineWork);
    }

    private void join(Bit b, Near<Bit> near) {
        Box reach = b.segment().box().grow(Math.max(LEAST_PT, MEETS * b.penPt()));
        for (Bit o : near.touching(reach)) {
            if (o.piece() != b.piece() && root(o.piece()) != root(b.piece()) && meet(b, o)) {
                parent[root(o.piece())] = root(b.piece());
            }
        }
    }

    private static boolean meet(Bit a, Bit b) {
        // painted letters may nearly touch their neighbours, since their outlines are exact
        boolean painted = a.penPt() == 0 && b.penPt() == 0;
        double reach = painted ? 0 : Math.max(LEAST_PT, MEETS * Math.min(a.penPt(), b.penPt()));
        return distance(a.segment(), b.segment()) <= reach;
    }

    static double distance(Segment a, Segment b) {
        if (a.crossing(b) != null) {
            return 0;
        }
        return Math.min(
                Math.min(a.distancePt(b.a()), a.distancePt(b.b())), Math.min(b.distancePt(a.a()), b.distancePt(a.b())));
    }

    private int root(int i) {
        while (parent[i] != i) {
            parent[i] = parent[parent[i]];
            i = parent[i];
        }
        return i;
    }

    private List<Blob> letters(int lineWork) {
        paintHoles();
        Map<Integer, List<Piece>> parts = new HashMap<>();
        for (int i = 0; i < small.size(); i++) {
            if (root(i) != root(lineWork)) {
                parts.computeIfAbsent(root(i), k -> new ArrayList<>()).add(small.get(i));
            }
        }
        List<Blob> blobs = new ArrayList<>();
        parts.values().forEach(p -> blobs.add(Blob.of(p)));
        blobs.removeIf(b -> b.sizePt() > largestPt);
        blobs.removeAll(outlines(blobs));
        blobs.sort((a, b) -> Integer.compare(a.order(), b.order()));
        return blobs;
    }

    /** A painted letter and its holes are contours inside each other. */
    private void paintHoles() {
        List<Integer> painted = new ArrayList<>();
        for (int i = 0; i < small.size(); i++) {
            if (small.get(i).painted()) {
                painted.add(i);
            }
        }
        Near<Integer> near = new Near<>(painted, i -> small.get(i).box());
        for (int i : painted) {
            for (int o : near.touching(small.get(i).box())) {
                if (o != i && small.get(o).box().contains(small.get(i).box())) {
                    parent[root(i)] = root(o);
                }
            }
        }
    }

    private static Set<Blob> outlines(List<Blob> blobs) {
        Near<Blob> near = new Near<>(blobs, Blob::box);
        Set<Blob> out = new HashSet<>();
        for (Blob b : blobs) {
            for (Blob o : near.touching(b.box())) {
                if (o != b && b.box().contains(o.box()) && o.sizePt() > 0.25 * b.sizePt() && !o.straight()) {
                    out.add(b);
                }
            }
        }
        return out;
    }
}
