package linewalk.importer.stroke;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
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
    private final Supplier<LetterBook> book;

    /** @param book asked for at the first page with drawn letters */
    public StrokeLettering(LetterReader reader, Supplier<LetterBook> book) {
        this.reader = reader;
        this.book = book;
    }

    public Marks read(Marks marks) {
        PageInk ink = PageInk.of(marks);
        if (ink.none()) {
            return marks;
        }
        PageReader page = new PageReader(ink, book.get().shapes, reader);
        List<Glyph> glyphs = new ArrayList<>(marks.glyphs());
        Set<Object> used = Collections.newSetFromMap(new IdentityHashMap<>());
        for (ReadRow r : page.read()) {
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
}
