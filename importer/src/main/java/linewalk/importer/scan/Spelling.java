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
        return row.with(out);
    }

    private static void flush(List<ReadRow.Letter> word, List<ReadRow.Letter> out) {
        StringBuilder said = new StringBuilder();
        word.forEach(l -> said.append(l.text()));
        String text = said.length() == word.size() ? word(said.toString()) : said.toString();
        for (int i = 0; i < word.size(); i++) {
            ReadRow.Letter l = word.get(i);
            out.add(
                    said.length() == word.size()
                            ? new ReadRow.Letter(
                                    text.substring(i, i + 1), l.likelihood(), l.x0(), l.x1(), l.afterBlank())
                            : l);
        }
        word.clear();
    }

    static String word(String read) {
        String text = read;
        if (CIRCUIT_NOUGHT.matcher(text).matches()) {
            text = "0" + text.substring(1);
        }
        if (DIGIT.matcher(text).matches() || CAPITAL_AND_BAR.matcher(text).matches()) {
            text = text.replaceAll("(?<![a-z])[l|!](?![a-z])", "1");
            text = text.replaceAll("(?<=\\d)[Oo](?=\\d|$|[./-])", "0");
        }
        return text;
    }
}
