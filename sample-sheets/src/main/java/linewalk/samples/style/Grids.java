package linewalk.samples.style;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Border grids after the rules in use. */
final class Grids {
    private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";

    private Grids() {}

    /** ISO 5457: fields of 50 mm from the centring marks, the rest in the end fields; binding margin 20 mm. */
    static Grid iso(double widthMm, double heightMm) {
        List<Double> columns = fromCentre(widthMm, 20, widthMm - 10);
        List<Double> rows = fromCentre(heightMm, 10, heightMm - 10);
        return new Grid(
                columns,
                rows,
                numbers(columns.size() - 1),
                letters(rows.size() - 1),
                20,
                10,
                widthMm - 10,
                heightMm - 10,
                5,
                true,
                true);
    }

    private static List<Double> fromCentre(double lengthMm, double startMm, double endMm) {
        List<Double> borders = new ArrayList<>();
        int half = (int) ((lengthMm / 2 - 10) / 50);
        if (lengthMm / 2 - 10 - half * 50 < 20) {
            half--;
        }
        borders.add(startMm);
        for (int i = -half; i <= half; i++) {
            borders.add(lengthMm / 2 + 50.0 * i);
        }
        borders.add(endMm);
        return borders;
    }

    /** ASME Y14.1: equal fields, numbers from right to left, letters from bottom to top. */
    static Grid asme(double widthMm, double heightMm, int columnCount, int rowCount) {
        List<String> columns = new ArrayList<>(numbers(columnCount));
        List<String> rows = new ArrayList<>(letters(rowCount));
        Collections.reverse(columns);
        Collections.reverse(rows);
        double margin = 12.7;
        return new Grid(
                equal(margin, widthMm - margin, columnCount),
                equal(margin, heightMm - margin, rowCount),
                columns,
                rows,
                margin,
                margin,
                widthMm - margin,
                heightMm - margin,
                5.5,
                true,
                false);
    }

    /** A house rule: letters along the top, numbers down the left side, nothing on the other two. */
    static Grid house(double widthMm, double heightMm, int columnCount, int rowCount) {
        return new Grid(
                equal(18, widthMm - 9, columnCount),
                equal(14, heightMm - 9, rowCount),
                letters(columnCount),
                numbers(rowCount),
                18,
                14,
                widthMm - 9,
                heightMm - 9,
                5,
                false,
                false);
    }

    private static List<Double> equal(double from, double to, int fields) {
        List<Double> out = new ArrayList<>();
        for (int i = 0; i <= fields; i++) {
            out.add(from + (to - from) * i / fields);
        }
        return out;
    }

    private static List<String> numbers(int count) {
        List<String> out = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            out.add(Integer.toString(i));
        }
        return out;
    }

    private static List<String> letters(int count) {
        return List.of(LETTERS.substring(0, count).split(""));
    }
}
