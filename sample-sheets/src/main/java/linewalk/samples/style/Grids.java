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

    /** An old office: numbers from nought along the top, letters down the left side, nothing on the other two. */
    static Grid office(double widthMm, double heightMm) {
        List<String> columns = new ArrayList<>(numbers(7));
        columns.add(0, "0");
        return new Grid(
                equal(25, widthMm - 10, 8),
                equal(16, heightMm - 10, 6),
                columns,
                letters(6),
                25,
                16,
                widthMm - 10,
                heightMm - 10,
                6,
                false,
                false);
    }

    /** Letters from left to right, numbers from bottom to top, on all sides. */
    static Grid upward(double widthMm, double heightMm) {
        List<String> rows = new ArrayList<>(numbers(6));
        Collections.reverse(rows);
        return new Grid(
                equal(15, widthMm - 15, 8),
                equal(12, heightMm - 12, 6),
                letters(8),
                rows,
                15,
                12,
                widthMm - 15,
                heightMm - 12,
                4.5,
                true,
                false);
    }

    /** Numbers from right to left, letters from top to bottom; a wide margin for binding. */
    static Grid leftward(double widthMm, double heightMm) {
        List<String> columns = new ArrayList<>(numbers(12));
        Collections.reverse(columns);
        return new Grid(
                equal(32, widthMm - 12, 12),
                equal(14, heightMm - 14, 8),
                columns,
                letters(8),
                32,
                14,
                widthMm - 12,
                heightMm - 14,
                5,
                true,
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
