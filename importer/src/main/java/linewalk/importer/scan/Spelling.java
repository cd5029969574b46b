package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Letters that look alike, told apart by the word they stand in. Drawings use no O and no I in zones and designations
 * (ISO 5457 leaves both out, ISO 1219-2 starts a designation with the circuit's number).
 */
final class Spelling {

    private static final Pattern DIGIT = Pattern.compile(".*\\d.*");
    private static final Pattern CAPITAL_AND_BAR = Pattern.compile("[A-Z][l|!]");
    private static final Pattern CIRCUIT_NOUGHT = Pattern.compile("[Oo][A-Z]{1,2}\\d{1,2}");

    private static final Pattern CIRCUIT_BAR = Pattern.compile("(\\d{1,2}[A-HJ-NP-Z])I(\\d?)");

    /** The letter code of solenoids starts no word that goes on so. */
    private static final Pattern SOLENOID_NOUGHT = Pattern.compile("Y[Oo][A-Z]?");

    /** A gap beside a stroke that is a blank, in letter heights. */
    private static final double SET_OFF = 0.25;

    private static final Pattern CIRCUIT = Pattern.compile("\\d[A-Z]{1,2}");
    private static final Pattern NUMBER = Pattern.compile("\\d{1,2}[A-Z]?");

    private Spelling() {}

    static ReadRow corrected(ReadRow row) {
        List<ReadRow.Letter> out = new ArrayList<>();
        List<ReadRow.Letter> word = new ArrayList<>();
        for (ReadRow.Letter l : row.letters()) {
            if (l.afterBlank()) {
                flush(word, out);
            }
            word.add(l);
        }
        flush(word, out);
        return row.with(spaced(closed(out), row.cap()));
    }

    /** A designation that was read with a blank before its number. */
    private static List<ReadRow.Letter> closed(List<ReadRow.Letter> letters) {
        List<ReadRow.Letter> out = new ArrayList<>(letters);
        for (int i = 1; i < out.size(); i++) {
            ReadRow.Letter l = out.get(i);
            boolean wide = l.x0() - out.get(i - 1).x1() > l.x1() - l.x0();
            if (l.afterBlank()
                    && !wide
                    && CIRCUIT.matcher(wordBefore(out, i)).matches()
                    && NUMBER.matcher(wordFrom(out, i)).matches()) {
                out.set(i, new ReadRow.Letter(l.text(), l.likelihood(), l.x0(), l.x1(), false, l.options()));
            }
        }
        return out;
    }

    /** A stroke set off from both its neighbours stands between two words. */
    private static List<ReadRow.Letter> spaced(List<ReadRow.Letter> letters, double cap) {
        List<ReadRow.Letter> out = new ArrayList<>(letters);
        for (int i = 1; i + 1 < out.size(); i++) {
            ReadRow.Letter l = out.get(i);
            double before = l.x0() - out.get(i - 1).x1();
            double after = out.get(i + 1).x0() - l.x1();
            if (l.text().equals("/") && Math.min(before, after) > SET_OFF * cap) {
                out.set(i, blanked(l));
                out.set(i + 1, blanked(out.get(i + 1)));
            }
        }
        return out;
    }

    private static ReadRow.Letter blanked(ReadRow.Letter l) {
        return new ReadRow.Letter(l.text(), l.likelihood(), l.x0(), l.x1(), true, l.options());
    }

    private static String wordBefore(List<ReadRow.Letter> letters, int end) {
        int from = end - 1;
        while (from > 0 && !letters.get(from).afterBlank()) {
            from--;
        }
        return text(letters.subList(from, end));
    }

    private static String wordFrom(List<ReadRow.Letter> letters, int from) {
        int to = from + 1;
        while (to < letters.size() && !letters.get(to).afterBlank()) {
            to++;
        }
        return text(letters.subList(from, to));
    }

    private static String text(List<ReadRow.Letter> letters) {
        StringBuilder text = new StringBuilder();
        letters.forEach(l -> text.append(l.text()));
        return text.toString();
    }

    private static void flush(List<ReadRow.Letter> word, List<ReadRow.Letter> out) {
        StringBuilder said = new StringBuilder();
        word.forEach(l -> said.append(l.text()));
        String text = said.length() == word.size() ? word(said.toString()) : said.toString();
        for (int i = 0; i < word.size(); i++) {
            ReadRow.Letter l = word.get(i);
            out.add(said.length() == word.size() ? l.spelled(text.substring(i, i + 1)) : l);
        }
        word.clear();
    }

    static String word(String read) {
        String text = read;
        if (CIRCUIT_NOUGHT.matcher(text).matches()) {
            text = "0" + text.substring(1);
        }
        if (SOLENOID_NOUGHT.matcher(text).matches()) {
            text = "Y0" + text.substring(2);
        }
        text = CIRCUIT_BAR.matcher(text).matches() ? text.replace('I', '1') : text;
        if (DIGIT.matcher(text).matches() || CAPITAL_AND_BAR.matcher(text).matches()) {
            text = text.replaceAll("(?<![a-z])[l|!](?![a-z])", "1");
            text = text.replaceAll("(?<=\\d)[Oo](?=\\d|$|[./-])", "0");
        }
        return text;
    }
}
