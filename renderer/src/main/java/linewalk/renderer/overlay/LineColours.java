package linewalk.renderer.overlay;

import java.awt.Color;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linewalk.drawing.Box;
import linewalk.drawing.Line;
import linewalk.drawing.Point;

/** Gives each line of a sheet a colour of the cycle, such that lines near each other differ as far as colours go. */
final class LineColours {

    /** Lines farther apart than this on an A3 are not taken for one another. */
    private static final double NEAR_ON_A3_PT = 60;

    private final double nearPt;

    private LineColours(double nearPt) {
        this.nearPt = nearPt;
    }

    static Map<Line, Color> of(List<Line> lines, Scale scale) {
        return new LineColours(scale.pt(NEAR_ON_A3_PT)).choose(lines);
    }

    private Map<Line, Color> choose(List<Line> lines) {
        Map<Line, Color> chosen = new LinkedHashMap<>();
        List<Box> boxes = new ArrayList<>();
        int turn = 0;
        for (int i = 0; i < lines.size(); i++) {
            boxes.add(box(lines.get(i)));
            double[] clash = new double[Tint.LINES.size()];
            for (int k = 0; k < i; k++) {
                clash[Tint.LINES.indexOf(chosen.get(lines.get(k)))] += clash(lines, boxes, i, k);
            }
            int best = turn;
            for (int c = 0; c < clash.length; c++) {
                int candidate = (turn + c) % clash.length;
                best = clash[candidate] < clash[best] ? candidate : best;
            }
            chosen.put(lines.get(i), Tint.LINES.get(best));
            turn = (best + 1) % clash.length;
        }
        return chosen;
    }

    private double clash(List<Line> lines, List<Box> boxes, int i, int k) {
        if (boxes.get(i).distancePt(boxes.get(k)) > nearPt) {
            return 0;
        }
        return 1 - Math.min(1, gapPt(lines.get(i), lines.get(k)) / nearPt);
    }

    private static Box box(Line line) {
        List<Point> points = new ArrayList<>();
        line.runs().forEach(points::addAll);
        line.ends().forEach(e -> points.add(e.place()));
        return points.isEmpty() ? Box.around(new Point(0, 0)) : Box.around(points);
    }

    private static double gapPt(Line a, Line b) {
        double least = Double.MAX_VALUE;
        for (Line2D s : Runs.segments(a)) {
            for (Line2D t : Runs.segments(b)) {
                least = Math.min(least, gapPt(s, t));
            }
        }
        return least;
    }

    private static double gapPt(Line2D s, Line2D t) {
        if (s.intersectsLine(t)) {
            return 0;
        }
        return Math.min(
                Math.min(s.ptSegDist(t.getP1()), s.ptSegDist(t.getP2())),
                Math.min(t.ptSegDist(s.getP1()), t.ptSegDist(s.getP2())));
    }
}
