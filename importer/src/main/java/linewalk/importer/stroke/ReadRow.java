package linewalk.importer.stroke;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import linewalk.drawing.Point;
import linewalk.importer.page.Glyph;

/**
 * A row and what its signs say.
 *
 * @param options for every sign, most likely first
 */
record ReadRow(Row row, List<List<Option>> options) {

    /** Whatever was read, it is a letter. */
    private static final double SURE = 0.9;

    record Option(String text, double likelihood) {}

    /**
     * Without what stands apart at its ends and is line work beside a text.
     *
     * @param strange of each sign, whether its shape is often seen and part of no word
     */
    ReadRow trimmed(double blank, IntPredicate strange) {
        int from = 0;
        int to = options.size();
        while (to - from > 1 && stray(from, strange) && row.gap(from) >= blank) {
            from++;
        }
        while (to - from > 1 && stray(to - 1, strange) && row.gap(to - 2) >= blank) {
            to--;
        }
        return to - from == options.size()
                ? this
                : new ReadRow(
                        row.with(row.signs().subList(from, to), row.heightPt(), row.baselinePt()),
                        options.subList(from, to));
    }

    private boolean stray(int i, IntPredicate strange) {
        Option o = options.get(i).get(0);
        boolean letter = Character.isLetterOrDigit(o.text().charAt(0));
        return row.signs().get(i).straight() && !letter || strange.test(i) && o.likelihood() < SURE;
    }

    double likelihood() {
        return options.stream()
                .mapToDouble(o -> o.get(0).likelihood())
                .average()
                .orElse(0);
    }

    /** @param blank from this gap on, in heights of a capital, a word ends */
    List<Glyph> glyphs(double blank) {
        double size = row.heightPt() / StrokeLettering.CAPITALS;
        List<Glyph> out = new ArrayList<>();
        for (int i = 0; i < options.size(); i++) {
            Placed s = row.signs().get(i);
            boolean inWord = i + 1 < options.size() && row.gap(i) < blank;
            double advance = (inWord ? row.signs().get(i + 1).u0() : s.u1()) - s.u0();
            Point start = row.turn().back(s.u0(), row.baselinePt());
            List<Glyph.Reading> readings = options.get(i).stream()
                    .map(o -> new Glyph.Reading(o.text(), o.likelihood()))
                    .toList();
            out.add(new Glyph(
                    readings.get(0).text(), start, advance, size, row.turn().deg(), readings));
            if (!inWord && i + 1 < options.size()) {
                Point end = row.turn().back(s.u1(), row.baselinePt());
                double wide = row.signs().get(i + 1).u0() - s.u1();
                List<Glyph.Reading> blankOnly = List.of(new Glyph.Reading(" ", 1));
                out.add(new Glyph(" ", end, wide, size, row.turn().deg(), blankOnly));
            }
        }
        return out;
    }
}
