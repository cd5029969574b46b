package linewalk.importer.stroke;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import linewalk.drawing.Point;
import linewalk.importer.lettering.Cell;

/**
 * Rows along slanted baselines. Letters of a text are drawn one after the other, so three blobs in the order of drawing
 * that lie in line and near each other give a direction; the baseline is where their lower edges agree best.
 */
final class Oblique {

    /** Rows nearer to level or upright are found as such. */
    private static final double LEAST_DEG = 4;

    private static final double IN_LINE_DEG = 25;

    /** Of neighbours' middles, in sizes of the larger. */
    private static final double NEAR = 2.2;

    private static final double SEARCH_DEG = 14;
    private static final double STEP_DEG = 0.5;

    private Oblique() {}

    static List<Baselines.Draft> find(List<Blob> blobs, Set<Piece> owned, Cell cell) {
        List<Blob> free =
                blobs.stream().filter(b -> !owned.contains(b.pieces().get(0))).toList();
        List<Baselines.Draft> out = new ArrayList<>();
        int i = 0;
        while (i + 2 < free.size()) {
            int end = runFrom(free, i);
            if (end - i >= 3) {
                row(free.subList(i, end), cell, out);
            }
            i = Math.max(end, i + 1);
        }
        return out;
    }

    /** The blobs from here on that go on in one direction. */
    private static int runFrom(List<Blob> free, int from) {
        int end = from + 1;
        while (end < free.size() && goesOn(free, from, end)) {
            end++;
        }
        return end;
    }

    private static boolean goesOn(List<Blob> free, int from, int next) {
        Blob a = free.get(next - 1);
        Blob b = free.get(next);
        double size = Math.max(a.sizePt(), b.sizePt());
        boolean near = middle(a).distancePt(middle(b)) < NEAR * size;
        boolean pen = Math.abs(a.penPt() - b.penPt()) < 0.25 * Math.max(a.penPt(), b.penPt()) + 1e-9;
        if (!near || !pen || next - from < 2) {
            return near && pen;
        }
        return turn(direction(free.get(from), a), direction(a, b)) < IN_LINE_DEG;
    }

    private static Point middle(Blob b) {
        return b.box().center();
    }

    private static double direction(Blob a, Blob b) {
        return Math.toDegrees(Math.atan2(
                middle(b).yPt() - middle(a).yPt(), middle(b).xPt() - middle(a).xPt()));
    }

    private static double turn(double a, double b) {
        double d = Math.abs(a - b) % 360;
        return Math.min(d, 360 - d);
    }

    private static void row(List<Blob> run, Cell cell, List<Baselines.Draft> out) {
        double about = direction(run.get(0), run.get(run.size() - 1));
        double best = about;
        double least = Double.MAX_VALUE;
        for (double d = about - SEARCH_DEG; d <= about + SEARCH_DEG; d += STEP_DEG) {
            double spread = spread(run, Turn.of(d));
            if (spread < least) {
                least = spread;
                best = d;
            }
        }
        double off = Math.abs(best / 90 - Math.rint(best / 90)) * 90;
        if (off >= LEAST_DEG) {
            Turn turn = Turn.of(((best % 360) + 360) % 360);
            Baselines.find(run, turn, cell).stream()
                    .filter(d -> d.parts().size() > 2)
                    .forEach(out::add);
        }
    }

    /** How far the lower and upper edges lie apart; low where the direction is that of the baseline. */
    private static double spread(List<Blob> run, Turn turn) {
        List<Double> low = new ArrayList<>();
        List<Double> high = new ArrayList<>();
        for (Blob b : run) {
            Placed p = Placed.of(b, turn);
            low.add(p.v1());
            high.add(p.v0());
        }
        return apart(low) + apart(high);
    }

    private static double apart(List<Double> values) {
        double middle = Baselines.median(values);
        return values.stream().mapToDouble(v -> Math.abs(v - middle)).sum();
    }
}
