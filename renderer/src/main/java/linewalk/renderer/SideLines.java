package linewalk.renderer;

import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import linewalk.renderer.iso.Duty;
import linewalk.renderer.scheme.Layout;
import linewalk.renderer.scheme.Net;

/** What the lines of a page lead to: what ends at control or drain ports alone is not the way of the working oil. */
final class SideLines {

    /** A part of a course that leads to the same all along; where others of its net join it, it has a point. */
    record Run(List<Point2D> points, Duty duty) {}

    private final Map<Layout.Course, List<Run>> runs = new HashMap<>();

    SideLines(Layout layout) {
        Map<Net, List<Layout.Course>> nets =
                layout.courses().stream().collect(Collectors.groupingBy(Layout.Course::net));
        nets.forEach((net, courses) -> {
            Map<Net.Meeting, Duty> aside = aside(net);
            boolean isMixed = !aside.isEmpty() && aside.size() < net.meetings().size();
            if (isMixed || courses.size() > 1) {
                NetTree tree = new NetTree(courses);
                courses.forEach(c -> runs.put(c, runs(c, tree, isMixed ? aside : Map.of())));
            }
        });
    }

    List<Run> of(Layout.Course course) {
        return runs.getOrDefault(course, List.of(new Run(course.points(), Duty.WORKING)));
    }

    boolean isEmpty() {
        return runs.values().stream().flatMap(List::stream).allMatch(r -> r.duty == Duty.WORKING);
    }

    /** The duty of a net's end. */
    static Duty of(Net.Meeting m) {
        return m.node().figure() instanceof PartFigure p ? p.duty(m.port()) : Duty.WORKING;
    }

    private static Map<Net.Meeting, Duty> aside(Net net) {
        Map<Net.Meeting, Duty> aside = new HashMap<>();
        net.meetings().stream().filter(m -> of(m) != Duty.WORKING).forEach(m -> aside.put(m, of(m)));
        return aside;
    }

    private static List<Run> runs(Layout.Course course, NetTree tree, Map<Net.Meeting, Duty> aside) {
        List<Run> runs = new ArrayList<>();
        for (int i = 1; i < course.points().size(); i++) {
            List<Point2D> on =
                    tree.on(course.points().get(i - 1), course.points().get(i));
            for (int k = 1; k < on.size(); k++) {
                add(runs, on.get(k - 1), on.get(k), duty(tree.at(middle(on.get(k - 1), on.get(k))), tree, aside));
            }
        }
        return runs;
    }

    private static void add(List<Run> runs, Point2D from, Point2D to, Duty duty) {
        Run last = runs.isEmpty() ? null : runs.get(runs.size() - 1);
        if (last == null || last.duty != duty) {
            runs.add(new Run(new ArrayList<>(List.of(from, to)), duty));
        } else {
            last.points.add(to);
        }
    }

    private static Point2D middle(Point2D p, Point2D q) {
        return new Point2D.Double((p.getX() + q.getX()) / 2, (p.getY() + q.getY()) / 2);
    }

    private static Duty duty(NetTree.Piece piece, NetTree tree, Map<Net.Meeting, Duty> aside) {
        if (piece == null || aside.isEmpty()) {
            return Duty.WORKING;
        }
        Duty one = all(tree.beyond(piece, false), aside);
        return one != Duty.WORKING ? one : all(tree.beyond(piece, true), aside);
    }

    private static Duty all(Set<Net.Meeting> ends, Map<Net.Meeting, Duty> aside) {
        if (ends == null || ends.isEmpty() || !aside.keySet().containsAll(ends)) {
            return Duty.WORKING;
        }
        return ends.stream()
                .map(aside::get)
                .distinct()
                .reduce((a, b) -> Duty.CONTROL)
                .orElseThrow();
    }
}
