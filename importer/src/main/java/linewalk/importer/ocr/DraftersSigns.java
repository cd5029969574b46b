package linewalk.importer.ocr;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import linewalk.importer.ocr.ReadLetter.Option;

/**
 * What the letter reader makes of letters, seen as a drafter's: it learned from running text, where some signs are
 * frequent that drawings hardly know, and where a nought has no stroke through it.
 */
final class DraftersSigns {

    private static final String RARE = "?!@#\u00a2\u00a5\u20ac\u00a3$\u00a9\u00ae\u00a7\u00ab\u00bb|\\^~";

    /** What such signs are in words of drawings. */
    private static final Map<String, String> SAME = Map.of("@", "0", "\u00a5", "Y", "$", "S");

    /** How much rarer on drawings, about. */
    private static final double SHARE = 0.1;

    private DraftersSigns() {}

    static List<ReadLetter> of(List<ReadLetter> line) {
        List<ReadLetter> out = new ArrayList<>();
        for (int i = 0; i < line.size(); i++) {
            ReadLetter l = line.get(i);
            boolean joinsLast = i > 0 && !l.afterBlank() && letter(line.get(i - 1));
            boolean joinsNext = i + 1 < line.size() && !line.get(i + 1).afterBlank() && letter(line.get(i + 1));
            out.add(new ReadLetter(
                    l.x0Px(),
                    l.y0Px(),
                    l.x1Px(),
                    l.y1Px(),
                    l.afterBlank(),
                    options(l.options(), joinsLast || joinsNext)));
        }
        return out;
    }

    private static boolean letter(ReadLetter l) {
        return Character.isLetterOrDigit(l.text().codePointAt(0));
    }

    private static List<Option> options(List<Option> read, boolean inWord) {
        Map<String, Double> weight = new TreeMap<>();
        double before = 0;
        double after = 0;
        for (Option o : read) {
            String text = inWord ? SAME.getOrDefault(o.text(), o.text()) : o.text();
            double w = RARE.contains(text) ? SHARE * o.likelihood() : o.likelihood();
            weight.merge(text, w, Double::sum);
            before += o.likelihood();
            after += w;
        }
        double scale = after == 0 ? 1 : before / after;
        return weight.entrySet().stream()
                .map(e -> new Option(e.getKey(), e.getValue() * scale))
                .sorted((a, b) -> Double.compare(b.likelihood(), a.likelihood()))
                .toList();
    }
}
