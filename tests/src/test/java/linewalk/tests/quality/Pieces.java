package linewalk.tests.quality;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The parts of a page's picture that no line joins to each other. */
final class Pieces {

    private static final double TOUCH_PT = 0.7;

    record Piece(List<Rectangle2D> symbols, List<Thing.Line> lines) {}

    private Pieces() {}

    static List<Piece> of(PrintPage page) {
        List<Thing.Line> lines = page.lines();
        List<Thing.Symbol> symbols = page.symbols();
        int[] group = new int[lines.size() + symbols.size()];
        for (int i = 0; i < group.length; i++) {
            group[i] = i;
        }
        for (int i = 0; i < lines.size(); i++) {
            for (int k = 0; k < i; k++) {
                if (lines.get(i).name().equals(lines.get(k).name())) {
                    join(group, i, k);
                }
            }
            for (int k = 0; k < symbols.size(); k++) {
                if (meets(lines.get(i), symbols.get(k))) {
                    join(group, i, lines.size() + k);
                }
            }
        }
        Map<Integer, Piece> pieces = new LinkedHashMap<>();
        for (int i = 0; i < group.length; i++) {
            Piece p = pieces.computeIfAbsent(find(group, i), k -> new Piece(new ArrayList<>(), new ArrayList<>()));
            if (i < lines.size()) {
                p.lines.add(lines.get(i));
            } else {
                p.symbols.add(symbols.get(i - lines.size()).box());
            }
        }
        return List.copyOf(pieces.values());
    }

    private static boolean meets(Thing.Line line, Thing.Symbol symbol) {
        Rectangle2D b = symbol.box();
        Rectangle2D near = new Rectangle2D.Double(
                b.getX() - TOUCH_PT, b.getY() - TOUCH_PT, b.getWidth() + 2 * TOUCH_PT, b.getHeight() + 2 * TOUCH_PT);
        List<Point2D> course = line.course();
        return Stream.of(course.get(0), course.get(course.size() - 1)).anyMatch(near::contains);
    }

    private static void join(int[] group, int a, int b) {
        group[find(group, a)] = find(group, b);
    }

    private static int find(int[] group, int i) {
        int at = i;
        while (group[at] != at) {
            at = group[at];
        }
        return at;
    }
}
