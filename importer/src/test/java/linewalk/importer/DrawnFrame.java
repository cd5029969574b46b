package linewalk.importer;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * A border with a strip of zone labels around it, one label in the middle of each field and a tick between fields.
 *
 * @param columns labels left to right
 * @param xPt where the fields begin and end: one more than labels
 * @param rows labels top to bottom
 */
record DrawnFrame(List<String> columns, double[] xPt, List<String> rows, double[] yPt) {

    static final double PT_PER_MM = 72 / 25.4;
    private static final double STRIP_PT = 5 * PT_PER_MM;
    private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";

    enum Side {
        TOP,
        BOTTOM,
        LEFT,
        RIGHT
    }

    /** Fields of one size over the area. */
    static DrawnFrame even(List<String> columns, List<String> rows, double x0, double y0, double x1, double y1) {
        return new DrawnFrame(columns, evenly(columns.size(), x0, x1), rows, evenly(rows.size(), y0, y1));
    }

    /** Without I and O. */
    static List<String> letters(int n) {
        return Arrays.asList(LETTERS.substring(0, n).split(""));
    }

    static List<String> numbers(int n) {
        return IntStream.rangeClosed(1, n).mapToObj(Integer::toString).toList();
    }

    static List<String> reversed(List<String> labels) {
        List<String> r = new java.util.ArrayList<>(labels);
        Collections.reverse(r);
        return r;
    }

    /** Fields of {@code fieldPt} counted from the middle of the sheet, what is left falls in the end fields. */
    static double[] fromTheMiddle(int n, double sheetPt, double fieldPt, double from, double to) {
        double[] at = new double[n + 1];
        for (int i = 1; i < n; i++) {
            at[i] = sheetPt / 2 + (i - n / 2) * fieldPt;
        }
        at[0] = from;
        at[n] = to;
        return at;
    }

    Drawn on(Drawn d) {
        return on(d, EnumSet.allOf(Side.class));
    }

    Drawn on(Drawn d, Set<Side> sides) {
        double x0 = xPt[0];
        double x1 = xPt[xPt.length - 1];
        double y0 = yPt[0];
        double y1 = yPt[yPt.length - 1];
        d.rect(x0, y0, x1, y1).rect(x0 - STRIP_PT, y0 - STRIP_PT, x1 + STRIP_PT, y1 + STRIP_PT);
        d.lettering(8);
        for (Side s : sides) {
            boolean level = s == Side.TOP || s == Side.BOTTOM;
            double edge = s == Side.TOP ? y0 - STRIP_PT : s == Side.BOTTOM ? y1 : s == Side.LEFT ? x0 - STRIP_PT : x1;
            strip(d, level ? columns : rows, level ? xPt : yPt, level, edge);
        }
        return d;
    }

    private static void strip(Drawn d, List<String> labels, double[] at, boolean level, double edge) {
        for (int i = 0; i < labels.size(); i++) {
            double middle = (at[i] + at[i + 1]) / 2;
            double half = 2.3 * labels.get(i).length();
            if (level) {
                d.text(middle - half, edge + 10, labels.get(i));
            } else {
                d.text(edge + 7 - half, middle + 2.8, labels.get(i));
            }
            if (i > 0 && level) {
                d.line(at[i], edge, at[i], edge + STRIP_PT);
            } else if (i > 0) {
                d.line(edge, at[i], edge + STRIP_PT, at[i]);
            }
        }
    }

    private static double[] evenly(int n, double from, double to) {
        return IntStream.rangeClosed(0, n)
                .mapToDouble(i -> from + i * (to - from) / n)
                .toArray();
    }
}
