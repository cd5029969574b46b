package linewalk.drawing;

import java.util.List;

/**
 * Line work that joins ends on one sheet.
 *
 * @param label the line number printed along it, or null
 * @param size such as {@code DN25}, or null
 * @param runs the drawn course: polylines of two or more points that share their end points where they meet, so that
 *     the way between two ends can be followed; empty where a hand tag joined the ends
 * @param confidence the least of its joins, 0 to 1
 */
public record Line(
        String id,
        PageKey page,
        LineKind kind,
        String label,
        String size,
        double confidence,
        List<End> ends,
        List<List<Point>> runs) {

    public Line {
        ends = List.copyOf(ends);
        runs = runs.stream().map(List::copyOf).toList();
    }
}
