package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Point;
import linewalk.importer.lettering.LabelBuilder;
import linewalk.importer.ocr.ReadLetter;
import linewalk.importer.page.Glyph;

/** Rows as read to glyphs on the upright page, in points. */
final class ScanGlyphs {

    /** Less likely letters are not worth telling. */
    private static final double LEAST = 0.02;

    /** A word whose capitals or figures differ by more from the row's was lettered in another size. */
    private static final double OTHER_SIZE = 0.2;

    private final Upright page;
    private final double pxPerPt;

    ScanGlyphs(Upright page, double pxPerPt) {
        this.page = page;
        this.pxPerPt = pxPerPt;
    }

    List<Glyph> of(List<ReadRow> rows) {
        List<Glyph> glyphs = new ArrayList<>();
        rows.forEach(r -> add(r, glyphs));
        return glyphs;
    }

    /** A letter reaches to the next one, so that the gap between them is no blank; blanks are glyphs of their own. */
    private void add(ReadRow r, List<Glyph> glyphs) {
        List<ReadRow.Letter> letters = r.letters();
        List<Sign> signs = Sign.of(r.row(), r.upright());
        double cap = r.cap();
        for (int i = 0; i < letters.size(); i++) {
            ReadRow.Letter l = letters.get(i);
            ReadRow.Letter next = i + 1 == letters.size() ? null : letters.get(i + 1);
            cap = i == 0 || l.afterBlank() ? cap(r, word(letters, i), signs) : cap;
            double end = next == null || next.afterBlank() ? l.x1() : Math.max(l.x0() + 1, next.x0());
            glyphs.add(glyph(r, cap, l.text(), l.x0(), end, readings(l)));
            if (next != null && next.afterBlank()) {
                glyphs.add(glyph(r, cap, " ", end, Math.max(end, next.x0()), List.of()));
            }
        }
    }

    private static List<ReadRow.Letter> word(List<ReadRow.Letter> letters, int from) {
        int to = from + 1;
        while (to < letters.size() && !letters.get(to).afterBlank()) {
            to++;
        }
        return letters.subList(from, to);
    }

    /** A designation and the smaller name of its solenoid may stand in one row: a word with tall letters has its own size. */
    private static double cap(ReadRow r, List<ReadRow.Letter> word, List<Sign> signs) {
        double tallest = 0;
        boolean tells = false;
        for (Sign c : signs) {
            double middle = (c.x0() + c.x1()) / 2;
            for (ReadRow.Letter l : word) {
                if (middle > l.x0() && middle < l.x1()) {
                    tallest = Math.max(tallest, r.baseline() - c.y0());
                    tells |= tall(l, c, r);
                }
            }
        }
        return tells && Math.abs(tallest - r.cap()) > OTHER_SIZE * Math.max(tallest, r.cap()) ? tallest : r.cap();
    }

    /** Capitals, figures, letters with a stem; and what was read as a y but does not hang below the line is a Y. */
    private static boolean tall(ReadRow.Letter l, Sign c, ReadRow r) {
        return l.text().matches("[A-Z0-9bdfhklt]")
                || l.text().matches("[gjpqy]") && c.y1() < r.baseline() + ReadRow.HANGS * c.height();
    }

    /** What is said first comes first, whatever made it so. */
    private static List<Glyph.Reading> readings(ReadRow.Letter l) {
        List<Glyph.Reading> out = new ArrayList<>();
        double most = l.options().stream()
                .mapToDouble(ReadLetter.Option::likelihood)
                .max()
                .orElse(l.likelihood());
        out.add(new Glyph.Reading(l.text(), Math.max(most, l.likelihood())));
        for (ReadLetter.Option o : l.options()) {
            if (!o.text().equals(l.text()) && o.likelihood() > LEAST) {
                out.add(new Glyph.Reading(o.text(), o.likelihood()));
            }
        }
        return out;
    }

    private Glyph glyph(ReadRow r, double cap, String text, double fromX, double toX, List<Glyph.Reading> readings) {
        Point start = place(r, fromX);
        double size = cap / pxPerPt / LabelBuilder.CAP_HEIGHT;
        return new Glyph(text, start, start.distancePt(place(r, toX)), size, (360 - 90 * r.turn()) % 360, readings);
    }

    private Point place(ReadRow r, double x) {
        double px = r.upright().backX(x, r.baseline());
        double py = r.upright().backY(x, r.baseline());
        return new Point(page.x(px, py) / pxPerPt, page.y(px, py) / pxPerPt);
    }
}
