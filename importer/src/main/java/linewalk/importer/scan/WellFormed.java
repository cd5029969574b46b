package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import linewalk.importer.lettering.Confusions;

/**
 * Where letters may be two and only one of the two makes a word of the drawing (a reference, a designation), that one is
 * said first; the others stay with the letter.
 */
final class WellFormed {

    /** A reading this much less likely than the first is no reading. */
    private static final double LIKELY = 0.3;

    /** Rows of so few words are names of parts more often than not. */
    private static final int FEW = 2;

    private static final double LIKELY_NAME = 0.1;

    /** No number is written so. */
    private static final Pattern NOUGHT_FIRST = Pattern.compile("0\\d\\d+");

    /** Nor a designation: circuits are numbers (ISO 1219-2). */
    private static final Pattern LETTER_O_FIRST = Pattern.compile("O\\d+");

    private static final int MOST = 12;

    /** Two words of which the other is more likely than this, against the first, leave it open. */
    private static final double RIVAL = 0.8;

    /** How likely it is the other one even where it was not among what was read, against what was. */
    private static final double OTHER = 0.15;

    private final Predicate<String> known;

    private record Way(List<String> letters, double likelihood) {
        String text(List<ReadRow.Letter> row) {
            StringBuilder text = new StringBuilder();
            for (int i = 0; i < letters.size(); i++) {
                text.append(i > 0 && row.get(i).afterBlank() ? " " : "").append(letters.get(i));
            }
            return text.toString();
        }
    }

    WellFormed(Predicate<String> known) {
        this.known = known;
    }

    boolean knows(String word) {
        return known.test(word);
    }

    /** A word of the drawing, or one but for a letter that is taken for another. */
    boolean couldKnow(String word) {
        return knows(word) || Confusions.variants(word).stream().anyMatch(known);
    }

    /** The whole row is tried first, then each of its words that holds a letter: numbers are left as they are. */
    ReadRow of(ReadRow row) {
        List<ReadRow.Letter> whole = known(row.letters(), LIKELY);
        if (whole != null || row.letters().isEmpty()) {
            return whole == null ? row : row.with(whole);
        }
        List<ReadRow.Letter> out = new ArrayList<>();
        List<List<ReadRow.Letter>> words = words(row.letters());
        for (List<ReadRow.Letter> word : words) {
            boolean number =
                    word.stream().noneMatch(l -> Character.isLetter(l.text().charAt(0)))
                            && !NOUGHT_FIRST.matcher(text(word)).matches();
            List<ReadRow.Letter> better = number ? null : known(word, words.size() > FEW ? LIKELY : LIKELY_NAME);
            out.addAll(better == null ? word : better);
        }
        return row.with(out);
    }

    /** The names of a page once all of it was read: those that would be made like no other may be others. */
    List<ReadRow> alike(List<ReadRow> rows) {
        NamesAlike names = new NamesAlike(rows.stream()
                .flatMap(r -> words(r.letters()).stream())
                .map(WellFormed::text)
                .filter(this::name)
                .toList());
        return rows.stream()
                .map(r -> r.with(words(r.letters()).stream()
                        .flatMap(w -> alike(w, names).stream())
                        .toList()))
                .toList();
    }

    private List<ReadRow.Letter> alike(List<ReadRow.Letter> word, NamesAlike names) {
        String read = text(word);
        if (!name(read)) {
            return likeOthers(word, names);
        }
        List<Way> ways = ways(word, false);
        double asRead = word.stream().mapToDouble(ReadRow.Letter::likelihood).reduce(1, (a, b) -> a * b);
        return ways.stream()
                .filter(w -> name(w.text(word)))
                .filter(w -> w.likelihood() * names.odds(read, w.text(word)) > asRead)
                .findFirst()
                .map(w -> said(word, w))
                .orElse(word);
    }

    /** No name as read, and several when letters are taken for others: the one that is made like most. */
    private List<ReadRow.Letter> likeOthers(List<ReadRow.Letter> word, NamesAlike names) {
        if (!mayBeMisread(word)) {
            return word;
        }
        List<Way> ways = ways(word, true);
        List<Way> good = ways.stream()
                .filter(w -> w.likelihood() > LIKELY_NAME * ways.get(0).likelihood() && name(w.text(word)))
                .map(w -> new Way(w.letters(), w.likelihood() * names.like(w.text(word))))
                .sorted(Comparator.comparingDouble((Way w) -> -w.likelihood()))
                .toList();
        boolean open = good.isEmpty()
                || good.get(0).likelihood() == 0
                || good.size() > 1
                        && good.get(1).likelihood() > RIVAL * good.get(0).likelihood();
        return open ? word : said(word, good.get(0));
    }

    /** @param others whether letters that look alike count where they were not read; the number of a circuit, which begins a designation (ISO 1219-2), stands */
    private static List<Way> ways(List<ReadRow.Letter> word, boolean others) {
        List<Way> ways = List.of(new Way(List.of(), 1));
        for (ReadRow.Letter l : word) {
            boolean circuit = l == word.get(0) && digit(l);
            ways = with(ways, l, others && !circuit);
        }
        return ways;
    }

    private boolean name(String word) {
        return known.test(word)
                && word.chars().anyMatch(Character::isLetter)
                && word.chars().anyMatch(Character::isDigit);
    }

    private static List<List<ReadRow.Letter>> words(List<ReadRow.Letter> letters) {
        List<List<ReadRow.Letter>> words = new ArrayList<>();
        for (ReadRow.Letter l : letters) {
            if (words.isEmpty() || l.afterBlank()) {
                words.add(new ArrayList<>());
            }
            words.get(words.size() - 1).add(l);
        }
        return words;
    }

    /** Null where no likely reading makes a word of the drawing. */
    private List<ReadRow.Letter> known(List<ReadRow.Letter> letters, double likely) {
        List<Way> ways = ways(letters, mayBeMisread(letters));
        double best = ways.get(0).likelihood();
        if (known.test(text(letters))) {
            return letters;
        }
        List<Way> good = ways.stream()
                .filter(w -> w.likelihood() > likely * best
                        && !LETTER_O_FIRST.matcher(w.text(letters)).matches()
                        && known.test(w.text(letters)))
                .toList();
        boolean open = good.isEmpty()
                || good.stream()
                        .anyMatch(w -> w.likelihood() > RIVAL * good.get(0).likelihood()
                                && !w.text(letters).equalsIgnoreCase(good.get(0).text(letters)));
        return open ? null : said(letters, good.get(0));
    }

    /** Some of its signs are figures, and it is no number. */
    private static boolean mayBeMisread(List<ReadRow.Letter> word) {
        boolean number =
                word.stream().noneMatch(l -> Confusions.others(l.text()).isEmpty());
        return word.stream().anyMatch(WellFormed::digit)
                && (!number || NOUGHT_FIRST.matcher(text(word)).matches());
    }

    private static boolean digit(ReadRow.Letter l) {
        return Character.isDigit(l.text().charAt(0));
    }

    private static String text(List<ReadRow.Letter> letters) {
        return new Way(letters.stream().map(ReadRow.Letter::text).toList(), 1).text(letters);
    }

    /** @param others whether letters that look alike count where they were not read */
    private static List<Way> with(List<Way> before, ReadRow.Letter letter, boolean others) {
        List<Way> out = new ArrayList<>();
        for (Way w : before) {
            likelihoods(letter, others).forEach((text, likelihood) -> add(out, w, text, likelihood));
        }
        out.sort(Comparator.comparingDouble((Way w) -> -w.likelihood()));
        return out.subList(0, Math.min(MOST, out.size()));
    }

    private static Map<String, Double> likelihoods(ReadRow.Letter letter, boolean others) {
        Map<String, Double> all = new LinkedHashMap<>();
        all.put(letter.text(), letter.likelihood());
        letter.options().forEach(o -> all.putIfAbsent(o.text(), o.likelihood()));
        if (others) {
            Confusions.others(letter.text()).forEach(o -> all.merge(o, OTHER * letter.likelihood(), Math::max));
        }
        return all;
    }

    private static void add(List<Way> out, Way before, String letter, double likelihood) {
        List<String> letters = new ArrayList<>(before.letters());
        letters.add(letter);
        out.add(new Way(letters, before.likelihood() * likelihood));
    }

    private static List<ReadRow.Letter> said(List<ReadRow.Letter> letters, Way way) {
        List<ReadRow.Letter> out = new ArrayList<>();
        for (int i = 0; i < letters.size(); i++) {
            String text = way.letters().get(i);
            out.add(
                    letters.get(i).text().equals(text)
                            ? letters.get(i)
                            : letters.get(i).saying(text));
        }
        return out;
    }
}
