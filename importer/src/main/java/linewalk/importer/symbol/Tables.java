package linewalk.importer.symbol;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.lettering.Label;
import linewalk.importer.page.Corners;
import linewalk.importer.page.Segment;

/**
 * Ruled tables, title blocks and revision blocks: three or more level rules of one extent with labels between them.
 * Their strokes are no line work and their words no designations.
 */
final class Tables {

    private static final double SAME_EXTENT_PT = 1.5;
    private static final int RULES = 3;
    private static final int LABELS = 3;
    private static final double ROW_HEIGHTS = 6;

    private Tables() {}

    static List<Box> find(List<Segment> segments, List<Label> labels) {
        Corners extents = new Corners(SAME_EXTENT_PT);
        Map<Point, List<Segment>> byExtent = new HashMap<>();
        for (Segment s : segments) {
            if (s.horizontal()) {
                double x0 = Math.min(s.a().xPt(), s.b().xPt());
                double x1 = Math.max(s.a().xPt(), s.b().xPt());
                byExtent.computeIfAbsent(extents.at(new Point(x0, x1)), k -> new ArrayList<>())
                        .add(s);
            }
        }
        List<Box> tables = new ArrayList<>();
        List<Segment> upright = segments.stream().filter(Segment::vertical).toList();
        byExtent.values().forEach(rules -> ladders(rules, upright, labels, tables));
        return merge(tables);
    }

    private static void ladders(List<Segment> rules, List<Segment> upright, List<Label> labels, List<Box> tables) {
        rules.sort((a, b) -> Double.compare(a.a().yPt(), b.a().yPt()));
        int from = 0;
        for (int i = 1; i <= rules.size(); i++) {
            if (i == rules.size() || !sameTable(rules.get(i - 1), rules.get(i), upright, labels)) {
                if (i - from >= RULES) {
                    Box box = rules.get(from).box().union(rules.get(i - 1).box());
                    if (labels.stream().filter(l -> box.contains(l.center())).count() >= LABELS) {
                        tables.add(box);
                    }
                }
                from = i;
            }
        }
    }

    /** A label stands between the rules, the row is not much higher than it, and upright rules close it on both sides. */
    private static boolean sameTable(Segment upper, Segment lower, List<Segment> upright, List<Label> labels) {
        Box row = upper.box().union(lower.box());
        return row.heightPt() < 0.5
                || labels.stream().anyMatch(l -> row.contains(l.center()) && row.heightPt() < ROW_HEIGHTS * l.sizePt())
                        && upright.stream().anyMatch(u -> bounds(u, row, row.x0Pt()))
                        && upright.stream().anyMatch(u -> bounds(u, row, row.x1Pt()));
    }

    private static boolean bounds(Segment upright, Box row, double xPt) {
        Box b = upright.box();
        return Math.abs(b.center().xPt() - xPt) < SAME_EXTENT_PT
                && b.y0Pt() < row.y0Pt() + 1
                && b.y1Pt() > row.y1Pt() - 1;
    }

    private static List<Box> merge(List<Box> boxes) {
        List<Box> merged = new ArrayList<>();
        for (Box b : boxes) {
            Box grown = b;
            for (int i = merged.size() - 1; i >= 0; i--) {
                if (merged.get(i).grow(1).intersects(grown)) {
                    grown = grown.union(merged.remove(i));
                }
            }
            merged.add(grown);
        }
        return merged;
    }
}
