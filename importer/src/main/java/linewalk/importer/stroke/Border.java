package linewalk.importer.stroke;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * Zone labels as examples with known answers: where signs stand at equal distances along an edge of the sheet and those
 * that are known count up or down, the others must be what comes between.
 */
final class Border {

    private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";
    private static final double STRIP = 0.06;

    /** Known labels that must agree before the rest is believed. */
    private static final int AGREE = 3;

    private final PageInk page;
    private final ShapeBook book;
    private final Map<ShapeClass, String> told = new HashMap<>();

    private Border(PageInk page, ShapeBook book) {
        this.page = page;
        this.book = book;
    }

    /** What shapes must be, as the page's border tells. */
    static Map<ShapeClass, String> of(PageInk page, ShapeBook book) {
        Border b = new Border(page, book);
        b.edge(r -> r.center().yPt(), page.heightPt(), r -> r.center().xPt());
        b.edge(r -> r.center().xPt(), page.widthPt(), r -> r.center().yPt());
        return b.told;
    }

    private void edge(ToDoubleFunction<Row> across, double full, ToDoubleFunction<Row> along) {
        for (boolean far : new boolean[] {false, true}) {
            List<Row> strip = new ArrayList<>(page.singles());
            strip.addAll(page.rows().stream().filter(r -> r.signs().size() == 2).toList());
            strip.removeIf(r -> {
                double from = far ? full - across.applyAsDouble(r) : across.applyAsDouble(r);
                return from > STRIP * full;
            });
            strip.sort(Comparator.comparingDouble(across));
            lines(strip, across, along);
        }
    }

    /** Labels of one line across the strip. */
    private void lines(List<Row> strip, ToDoubleFunction<Row> across, ToDoubleFunction<Row> along) {
        List<Row> line = new ArrayList<>();
        for (Row r : strip) {
            if (!line.isEmpty()
                    && across.applyAsDouble(r) - across.applyAsDouble(line.get(line.size() - 1)) > 0.5 * r.heightPt()) {
                count(line, along);
                line.clear();
            }
            line.add(r);
        }
        count(line, along);
    }

    private void count(List<Row> line, ToDoubleFunction<Row> along) {
        if (line.size() <= AGREE) {
            return;
        }
        List<Row> sorted = new ArrayList<>(line);
        sorted.sort(Comparator.comparingDouble(along));
        double pitch = pitch(sorted, along);
        int[] place = new int[sorted.size()];
        for (int i = 0; i < place.length; i++) {
            place[i] =
                    (int) Math.round((along.applyAsDouble(sorted.get(i)) - along.applyAsDouble(sorted.get(0))) / pitch);
        }
        for (boolean letters : new boolean[] {true, false}) {
            for (int step : new int[] {1, -1}) {
                count(sorted, place, letters, step);
            }
        }
    }

    private static double pitch(List<Row> sorted, ToDoubleFunction<Row> along) {
        List<Double> gaps = new ArrayList<>();
        for (int i = 1; i < sorted.size(); i++) {
            gaps.add(along.applyAsDouble(sorted.get(i)) - along.applyAsDouble(sorted.get(i - 1)));
        }
        return Math.max(1, Baselines.median(gaps));
    }

    private void count(List<Row> labels, int[] place, boolean letters, int step) {
        Map<Integer, Integer> starts = new HashMap<>();
        for (int i = 0; i < place.length; i++) {
            Integer value = value(labels.get(i), letters);
            if (value != null) {
                starts.merge(value - step * place[i], 1, Integer::sum);
            }
        }
        starts.forEach((start, agreeing) -> {
            if (agreeing >= AGREE && agreeing > labels.size() / 3) {
                for (int i = 0; i < place.length; i++) {
                    tell(labels.get(i), text(start + step * place[i], letters));
                }
            }
        });
    }

    private void tell(Row label, String text) {
        if (text == null || text.length() != label.signs().size()) {
            return;
        }
        for (int i = 0; i < text.length(); i++) {
            ShapeClass c = text.length() == 1
                    ? book.of(label.signs().get(i), label)
                    : book.find(Shape.of(label.signs().get(i), label));
            if (c != null) {
                told.putIfAbsent(c, text.substring(i, i + 1));
            }
        }
    }

    private Integer value(Row label, boolean letters) {
        StringBuilder text = new StringBuilder();
        for (Placed s : label.signs()) {
            ShapeClass c = book.find(Shape.of(s, label));
            if (c == null || c.candidates().isEmpty()) {
                return null;
            }
            text.append(c.candidates().get(0));
        }
        if (letters) {
            int at = text.length() == 1 ? LETTERS.indexOf(text.charAt(0)) : -1;
            return at < 0 ? null : at;
        }
        return text.chars().allMatch(Character::isDigit) ? Integer.valueOf(text.toString()) : null;
    }

    private static String text(int value, boolean letters) {
        if (value < 0 || letters && value >= LETTERS.length()) {
            return null;
        }
        return letters ? LETTERS.substring(value, value + 1) : Integer.toString(value);
    }
}
