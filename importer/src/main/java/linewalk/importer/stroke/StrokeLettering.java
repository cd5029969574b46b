package linewalk.importer.stroke;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import linewalk.importer.ocr.LetterReader;
import linewalk.importer.page.Glyph;
import linewalk.importer.page.Marks;

/**
 * Letters that are drawn. Needs a page's marks as they were painted; leaves marks in which lettering is glyphs and no
 * stroke or fill any more.
 */
public final class StrokeLettering {

    /** Capitals of common lettering, as a share of the font size. */
    static final double CAPITALS = 0.72;

    private final LetterReader reader;

    public StrokeLettering(LetterReader reader) {
        this.reader = reader;
    }

    public Marks read(Marks marks) {
        List<Blob> blobs = BlobFinder.find(marks);
        List<Baselines.Draft> drafts = drafts(blobs);
        if (System.getProperty("dbgd") != null) {
            int n = drafts.stream().filter(d -> d.parts().size() > 2).mapToInt(d -> d.parts().size()).sum();
            System.err.println("glyphs " + marks.glyphs().size() + " blobs " + blobs.size() + " drafts " + drafts.size() + " signs in long " + n + " ");
            if (!marks.glyphs().isEmpty()) return marks;
        }
        double lean = Lettered.lean(drafts);
        List<Row> rows = drafts.stream().map(d -> Lettered.row(d, lean)).toList();
        PageRows page = new PageRows(rows, reader);
        List<Glyph> glyphs = new ArrayList<>(marks.glyphs());
        Set<Object> used = Collections.newSetFromMap(new IdentityHashMap<>());
        Set<Piece> taken = new HashSet<>();
        for (ReadRow r : page.read()) {
            glyphs.addAll(r.glyphs(page.blank()));
            r.row().signs().forEach(s -> s.pieces().forEach(p -> {
                used.add(p.mark());
                taken.add(p);
            }));
        }
        for (ReadRow r : new Singles(blobs, taken, page, marks, lean, reader).read()) {
            glyphs.addAll(r.glyphs(page.blank()));
            r.row().signs().forEach(s -> s.pieces().forEach(p -> used.add(p.mark())));
        }
        return new Marks(
                marks.widthPt(),
                marks.heightPt(),
                marks.strokes().stream().filter(s -> !used.contains(s)).toList(),
                marks.fills().stream().filter(f -> !used.contains(f)).toList(),
                glyphs,
                marks.pictures());
    }

    /** Rows in every direction; of rows that share ink the longest. */
    private static List<Baselines.Draft> drafts(List<Blob> blobs) {
        List<Baselines.Draft> all = new ArrayList<>();
        for (double deg : new double[] {0, 270, 90}) {
            all.addAll(Baselines.find(blobs, Turn.of(deg)));
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
        return out;
    }
}
