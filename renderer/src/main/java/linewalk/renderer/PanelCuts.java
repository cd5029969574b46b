package linewalk.renderer;

import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import linewalk.drawing.Point;

/** Where divided cuttings interrupt the path: a letter at each end of an interruption. */
final class PanelCuts {

    /**
     * One end of an interruption.
     *
     * @param otherPage page of the other end, counted from 0
     */
    record Mark(String letter, Point2D place, int otherPage) {}

    private record End(Panel panel, Clip.Cut cut) {}

    private final Map<Panel, List<Mark>> marks = new LinkedHashMap<>();

    /** Letters run in the order of the walk. */
    PanelCuts(List<Panel> panels, MatchMarks letters) {
        // courses are counted anew on each sheet of a circuit
        panels.stream()
                .collect(Collectors.toMap(Panel::stay, Panel::view, (a, b) -> a, TreeMap::new))
                .forEach((stay, view) -> view.stay
                        .courses()
                        .forEach((leg, course) -> name(ends(panels, view, course), stay + ":" + leg, letters)));
    }

    List<Mark> on(Panel panel) {
        return marks.getOrDefault(panel, List.of());
    }

    private static List<End> ends(List<Panel> panels, BrokenView view, List<Point> course) {
        List<Point2D> whole = new ArrayList<>();
        view.map(course).forEach(s -> whole.addAll(s.points()));
        List<End> ends = new ArrayList<>();
        for (Panel p : panels) {
            if (p.view() == view) {
                new Clip(whole, p.part()).cuts.forEach(c -> ends.add(new End(p, c)));
            }
        }
        ends.sort(Comparator.<End>comparingDouble(e -> Math.round(e.cut().atPt() * 10))
                .thenComparing(e -> !e.cut().leaving()));
        return ends;
    }

    /** A course starts and stops inside some part, so its ends come in pairs: left here, entered there. */
    private void name(List<End> ends, String course, MatchMarks letters) {
        for (int i = 0; i < ends.size(); i++) {
            End end = ends.get(i);
            int mate = i % 2 == 0 ? Math.min(i + 1, ends.size() - 1) : i - 1;
            String letter = letters.letter("cut " + course + ":" + i / 2);
            marks.computeIfAbsent(end.panel(), k -> new ArrayList<>())
                    .add(new Mark(
                            letter, end.cut().place(), ends.get(mate).panel().page()));
        }
    }
}
