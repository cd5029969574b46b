package linewalk.importer.stroke;

import java.util.ArrayList;
import java.util.List;

/** Where words end: the widest step among the gaps of all rows, between what letters and what words are apart. */
final class Blanks {

    /** In heights of a capital. */
    private static final double LEAST = 0.35;

    private static final double MOST = 0.85;
    private static final double USUAL = 0.55;

    private Blanks() {}

    static double from(List<Row> rows) {
        List<Double> gaps = new ArrayList<>();
        for (Row r : rows) {
            for (int i = 0; i + 1 < r.signs().size(); i++) {
                double gap = r.gap(i);
                if (gap > LEAST && gap < MOST) {
                    gaps.add(gap);
                }
            }
        }
        gaps.add(LEAST);
        gaps.add(MOST);
        gaps.sort(Double::compare);
        double best = USUAL;
        double step = 0;
        for (int i = 1; i < gaps.size(); i++) {
            double wide = gaps.get(i) - gaps.get(i - 1);
            if (wide > step) {
                step = wide;
                best = (gaps.get(i) + gaps.get(i - 1)) / 2;
            }
        }
        return step > 0.1 ? best : USUAL;
    }
}
