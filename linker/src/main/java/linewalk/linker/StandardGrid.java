package linewalk.linker;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import linewalk.drawing.UserError;
import linewalk.drawing.ZoneGrid;
import linewalk.drawing.ZoneGrid.Band;

/**
 * A standard's zone grid for sheets that print none, only where the settings ask for it. ISO 5457: fields of 50 mm from
 * the centring marks, the remainder in the end fields, rows A downwards without I and O. ASME Y14.1: equal fields,
 * numbers from right to left and letters from bottom to top. {@code 4x4}: equal fields, columns x rows.
 */
final class StandardGrid {

    private static final double PT_PER_MM = 72 / 25.4;
    private static final double FIELD_PT = 50 * PT_PER_MM;
    private static final double MARGIN_PT = 10 * PT_PER_MM;
    private static final double ISO_BINDING_PT = 20 * PT_PER_MM;
    private static final Pattern COUNTS = Pattern.compile("(\\d{1,2})x(\\d{1,2})");
    private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";

    private final double widthPt;
    private final double heightPt;

    private StandardGrid(double widthPt, double heightPt) {
        this.widthPt = widthPt;
        this.heightPt = heightPt;
    }

    static ZoneGrid of(String standard, double widthPt, double heightPt) {
        StandardGrid sheet = new StandardGrid(widthPt, heightPt);
        String plain = standard.strip().toLowerCase(Locale.ROOT);
        Matcher counts = COUNTS.matcher(plain);
        if (plain.equals("iso5457")) {
            return sheet.iso();
        } else if (plain.equals("asme-y14.1")) {
            return sheet.asme();
        } else if (counts.matches()
                && !counts.group(1).equals("0")
                && !counts.group(2).equals("0")) {
            int columns = Integer.parseInt(counts.group(1));
            int rows = Math.min(Integer.parseInt(counts.group(2)), LETTERS.length());
            return sheet.equal(numbers(columns), letters(rows));
        }
        throw new UserError("standardGrid '" + standard + "' is not known; write iso5457, asme-y14.1 or columns x rows"
                + " such as 4x4");
    }

    private ZoneGrid iso() {
        List<Double> x = isoEdges(ISO_BINDING_PT, widthPt - MARGIN_PT, widthPt / 2);
        List<Double> y = isoEdges(MARGIN_PT, heightPt - MARGIN_PT, heightPt / 2);
        return new ZoneGrid(bands(numbers(x.size() - 1), x), bands(letters(y.size() - 1), y), false);
    }

    /** Whole fields both ways from the centre; what is left over goes to the end fields. */
    private static List<Double> isoEdges(double fromPt, double toPt, double centerPt) {
        int fields = Math.max(1, (int) Math.round((toPt - centerPt) / FIELD_PT));
        List<Double> edges = new ArrayList<>(List.of(fromPt));
        for (int i = 1 - fields; i < fields; i++) {
            edges.add(centerPt + i * FIELD_PT);
        }
        edges.add(toPt);
        return edges;
    }

    /** Sizes A to E by the sheet's longer side; counts after a transcription of ASME Y14.1. */
    private ZoneGrid asme() {
        double longInches = Math.max(widthPt, heightPt) / 72;
        int[] counts = longInches < 14
                ? new int[] {1, 1}
                : longInches < 19.5
                        ? new int[] {4, 2}
                        : longInches < 28 ? new int[] {4, 4} : longInches < 39 ? new int[] {8, 4} : new int[] {8, 8};
        List<String> columns = numbers(counts[0]);
        List<String> rows = letters(counts[1]);
        Collections.reverse(columns);
        Collections.reverse(rows);
        return equal(columns, rows);
    }

    private ZoneGrid equal(List<String> columns, List<String> rows) {
        return new ZoneGrid(
                split(columns, MARGIN_PT, widthPt - MARGIN_PT), split(rows, MARGIN_PT, heightPt - MARGIN_PT), false);
    }

    /** Equally wide bands. */
    static List<Band> split(List<String> labels, double fromPt, double toPt) {
        List<Double> edges = new ArrayList<>();
        for (int i = 0; i <= labels.size(); i++) {
            edges.add(fromPt + (toPt - fromPt) * i / labels.size());
        }
        return bands(labels, edges);
    }

    private static List<Band> bands(List<String> labels, List<Double> edges) {
        List<Band> bands = new ArrayList<>();
        for (int i = 0; i < labels.size(); i++) {
            bands.add(new Band(labels.get(i), edges.get(i), edges.get(i + 1)));
        }
        return bands;
    }

    private static List<String> numbers(int n) {
        List<String> numbers = new ArrayList<>();
        for (int i = 1; i <= n; i++) {
            numbers.add(Integer.toString(i));
        }
        return numbers;
    }

    private static List<String> letters(int n) {
        List<String> letters = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            letters.add(LETTERS.substring(i % LETTERS.length(), i % LETTERS.length() + 1));
        }
        return letters;
    }
}
