package linewalk.importer.lettering;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import linewalk.importer.lettering.Label.Reading;
import linewalk.importer.page.Glyph;

/** What a label may say, from what each of its letters may be: the most likely few of all combinations. */
public final class Readings {

    private static final int MOST = 8;

    /** Readings less likely than this, compared with the first, are not worth telling. */
    private static final double LEAST = 0.02;

    private Readings() {}

    /**
     * Empty where all of them have a text layer.
     *
     * @param words the glyphs of each word
     */
    public static List<Reading> of(List<List<Glyph>> words) {
        List<Reading> out = List.of(new Reading("", 1));
        boolean drawn = false;
        for (List<Glyph> word : words) {
            if (!out.get(0).text().isEmpty()) {
                out = with(out, List.of(new Reading(" ", 1)));
            }
            for (Glyph g : word) {
                drawn |= !g.readings().isEmpty();
                List<Reading> next = g.readings().isEmpty()
                        ? List.of(new Reading(g.text(), 1))
                        : g.readings().stream()
                                .map(r -> new Reading(r.text(), r.likelihood()))
                                .toList();
                out = with(out, next);
            }
        }
        return drawn ? out : List.of();
    }

    /** Of lines that are one text together; empty where all of them have a text layer. */
    public static List<Reading> joined(List<Label> lines) {
        if (lines.stream().noneMatch(Label::drawn)) {
            return List.of();
        }
        List<Reading> out = List.of(new Reading("", 1));
        for (Label l : lines) {
            out = out.get(0).text().isEmpty() ? out : with(out, List.of(new Reading(" ", 1)));
            out = with(out, l.drawn() ? l.readings() : List.of(new Reading(l.text(), 1)));
        }
        return out;
    }

    /** Every reading followed by every other, most likely first. */
    static List<Reading> with(List<Reading> before, List<Reading> after) {
        List<Reading> all = new ArrayList<>();
        for (Reading b : before) {
            for (Reading a : after) {
                all.add(new Reading(b.text() + a.text(), b.likelihood() * a.likelihood()));
            }
        }
        all.sort(Comparator.comparingDouble((Reading r) -> -r.likelihood()));
        double least = LEAST * all.get(0).likelihood();
        return all.stream().filter(r -> r.likelihood() >= least).limit(MOST).toList();
    }
}
