package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import linewalk.importer.ocr.ReadLetter;

/**
 * Where letters may be two and only one of the two makes a word of the drawing (a reference, a designation), that one is
 * said first; the others stay with the letter.
 */
final class WellFormed {

    /** A reading this much less likely than the first is no reading. */
    private static final double LIKELY = 0.3;

    private static final int MOST = 12;

    private final Predicate<String> known;

    private record Way(List<String> letters, double likelihood) {
        String text(List<ReadRow.Letter> row) {
            StringBuilder text = new StringBuilder();
            for (int i = 0; i < letters.size(); i++) {
                text.append(row.get(i).afterBlank() ? " " : "").append(letters.get(i));
            }
            return text.toString();
        }
    }

    WellFormed(Predicate<String> known) {
        this.known = known;
    }

    ReadRow of(ReadRow row) {
        if (row.letters().isEmpty() || known.test(row.text())) {
            return row;
        }
        List<Way> ways = List.of(new Way(List.of(), 1));
        for (ReadRow.Letter l : row.letters()) {
            ways = with(ways, l);
        }
        double best = ways.get(0).likelihood();
        return ways.stream()
                .filter(w -> w.likelihood() > LIKELY * best && known.test(w.text(row.letters())))
                .findFirst()
                .map(w -> said(row, w))
                .orElse(row);
    }

    private static List<Way> with(List<Way> before, ReadRow.Letter letter) {
        List<Way> out = new ArrayList<>();
        for (Way w : before) {
            add(out, w, letter.text(), letter.likelihood());
            for (ReadLetter.Option o : letter.options()) {
                if (!o.text().equals(letter.text())) {
                    add(out, w, o.text(), o.likelihood());
                }
            }
        }
        out.sort(Comparator.comparingDouble((Way w) -> -w.likelihood()));
        return out.subList(0, Math.min(MOST, out.size()));
    }

    private static void add(List<Way> out, Way before, String letter, double likelihood) {
        List<String> letters = new ArrayList<>(before.letters());
        letters.add(letter);
        out.add(new Way(letters, before.likelihood() * likelihood));
    }

    private static ReadRow said(ReadRow row, Way way) {
        List<ReadRow.Letter> out = new ArrayList<>();
        for (int i = 0; i < row.letters().size(); i++) {
            ReadRow.Letter l = row.letters().get(i);
            out.add(
                    l.text().equals(way.letters().get(i))
                            ? l
                            : l.saying(way.letters().get(i)));
        }
        return row.with(out);
    }
}
