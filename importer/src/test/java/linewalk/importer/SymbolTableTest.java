package linewalk.importer;

import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import linewalk.drawing.Passage;
import linewalk.drawing.Point;
import linewalk.drawing.SheetReading;
import linewalk.importer.SketchBook.Sketch;
import linewalk.importer.SymbolSketch.Hand;
import linewalk.importer.page.Direction;
import org.junit.jupiter.api.Test;

/**
 * Each symbol in four turns, mirrored, five sizes, three line widths, at least three drawn ways, each as three CAD
 * programs would write it. The table says how many were read rightly.
 */
class SymbolTableTest {

    private static final double[] UNITS_PT = {9, 12, 16, 21, 28};
    private static final double[] PENS_PT = {0.5, 0.9, 1.4};
    private static final double CELL = 16;
    private static final double LEAST = 0.9;

    /** Every drawing by every program in every line width takes three times as long. */
    private static final boolean EVERY = Boolean.getBoolean("linewalk.symbols.every");

    private static final class Row {
        int kinds;
        int all;
        int wrongPassages;
        int passages;
        int expected;
        final Map<String, Integer> failed = new LinkedHashMap<>();
    }

    private final Map<Kind, Row> table = new EnumMap<>(Kind.class);

    @Test
    void everySymbolInEveryWayOfDrawing() {
        List<Sketch> all = SketchBook.all();
        IntStream.range(0, all.size()).parallel().forEach(i -> {
            for (int pen = 0; pen < PENS_PT.length; pen++) {
                for (Hand hand : Hand.values()) {
                    if (EVERY || hand.ordinal() == (i + pen) % Hand.values().length) {
                        page(all.get(i), hand, PENS_PT[pen]);
                    }
                }
            }
        });
        print();
        table.forEach((kind, row) -> {
            assertThat(row.wrongPassages)
                    .as("passages of " + kind + " " + row.failed)
                    .isZero();
            assertThat((double) row.kinds / row.all)
                    .as("kinds of " + kind + " " + row.failed)
                    .isGreaterThanOrEqualTo(LEAST);
        });
    }

    /** All sizes, turns and the mirror image of one drawing, a row a size. */
    private void page(Sketch sketch, Hand hand, double penPt) {
        Drawn page = Drawn.page(8 * CELL * UNITS_PT[4] + 100, 5 * CELL * UNITS_PT[4] + 100);
        page.pen(penPt);
        Map<String, SymbolSketch> drawn = new LinkedHashMap<>();
        for (int size = 0; size < UNITS_PT.length; size++) {
            for (int turn = 0; turn < 8; turn++) {
                double x = 50 + (turn + 0.5) * CELL * UNITS_PT[4];
                double y = 50 + (size + 0.5) * CELL * UNITS_PT[4];
                SymbolSketch s = new SymbolSketch(page, hand, x, y, UNITS_PT[size], turn % 4, turn >= 4, penPt);
                String tag = (size + 1) + "." + (turn + 10);
                s.tag(-1.9, -2.7, tag);
                drawn.put(tag, sketch.drawing().apply(s));
            }
        }
        SheetReading reading = page.read();
        synchronized (table) {
            drawn.forEach((tag, s) -> score(sketch, hand, penPt, tag, s, reading));
        }
    }

    private void score(Sketch sketch, Hand hand, double penPt, String tag, SymbolSketch s, SheetReading reading) {
        Row row = table.computeIfAbsent(sketch.kind(), k -> new Row());
        Component c = reading.components().stream()
                .filter(x -> x.tag().equals(tag))
                .findFirst()
                .orElse(null);
        Kind kind = c == null ? null : c.kind();
        String way = sketch.way() + ", " + hand;
        row.all++;
        if (kind == sketch.kind()) {
            row.kinds++;
        } else {
            row.failed.merge(way + ": " + (c == null ? "no part" : kind.word()), 1, Integer::sum);
        }
        row.expected += sketch.passages() == null ? 0 : 1;
        if (c != null && c.rest().isPresent()) {
            String said = passages(c, s);
            boolean right = said.equals(sketch.passages());
            row.passages += right ? 1 : 0;
            row.wrongPassages += right ? 0 : 1;
            if (!right) {
                row.failed.merge(way + " passes " + said, 1, Integer::sum);
            }
        }
    }

    /** As {@link Sketch} writes them, ports by their drawn names. */
    private static String passages(Component c, SymbolSketch s) {
        List<String> said = new ArrayList<>();
        for (Passage p : c.rest().orElseThrow().passages()) {
            String from = name(c, p.from(), s);
            String to = name(c, p.to(), s);
            boolean swap = !p.oneWay() && from.compareTo(to) > 0;
            String way = swap ? to + "-" + from : from + (p.oneWay() ? ">" : "-") + to;
            said.add(way + (p.throttled() ? "~" : "") + (p.opens() == null ? "" : "!"));
        }
        return said.stream()
                .sorted((a, b) -> order(a) - order(b) == 0 ? a.compareTo(b) : order(a) - order(b))
                .collect(joining(" "));
    }

    private static int order(String passage) {
        return passage.endsWith("~") || passage.endsWith("!") ? 1 : 0;
    }

    private static String name(Component c, String id, SymbolSketch s) {
        Point at = c.findPort(id).orElseThrow().place();
        return s.ports().entrySet().stream()
                .max(Comparator.comparingDouble(
                        p -> Direction.of(s.middle(), p.getValue()).along(Direction.of(s.middle(), at))))
                .orElseThrow()
                .getKey();
    }

    private void print() {
        System.out.printf("%-24s %9s %9s %9s%n", "kind", "right", "passages", "wrong way");
        table.forEach((kind, r) -> {
            System.out.printf(
                    "%-24s %4d/%-4d %4d/%-4d %9d%n",
                    kind.word(), r.kinds, r.all, r.passages, r.expected, r.wrongPassages);
            r.failed.forEach((why, n) -> System.out.printf("    %4d %s%n", n, why));
        });
    }
}
