package linewalk.importer.kind;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The small shapes of which symbols are made, found once.
 *
 * @param shuttle both seats of one ball, or nothing
 * @param diodes triangles against a bar
 * @param controls squares with one arrow, those of a row not among them; first what springs or pilots move
 * @param row so many like squares stand side by side
 */
record Motifs(
        Picture picture,
        List<Check> checks,
        List<Throttle> throttles,
        List<Control> controls,
        List<Check> shuttle,
        List<Check> diodes,
        int row) {

    static Motifs of(Picture p) {
        int row = row(p);
        CheckFinder finder = new CheckFinder(p);
        List<Check> checks = finder.find();
        List<Control> controls = new ArrayList<>();
        if (row < 2) {
            p.of(Form.SQUARE, Form.BOX).stream()
                    .filter(s -> s.sizePt() < 1.8 * s.smallPt() && !s.broken())
                    .forEach(s -> Control.of(s, p, checks).ifPresent(controls::add));
            controls.removeIf(c -> controls.stream().anyMatch(o -> c.square().holds(o.square())));
            controls.sort(Comparator.comparing(Control::held).reversed());
        }
        return new Motifs(p, checks, Throttle.find(p), List.copyOf(controls), finder.shuttle(), finder.diodes(), row);
    }

    private static int row(Picture p) {
        int most = 0;
        List<Shape> squares = p.of(Form.SQUARE, Form.BOX);
        for (Shape a : squares) {
            int n = 1;
            for (Shape b : squares) {
                if (a != b && beside(a, b)) {
                    n++;
                }
            }
            most = Math.max(most, n);
        }
        return most;
    }

    /** Of one size, a side in common. */
    private static boolean beside(Shape a, Shape b) {
        double size = a.sizePt();
        double dx = Math.abs(a.center().xPt() - b.center().xPt());
        double dy = Math.abs(a.center().yPt() - b.center().yPt());
        boolean alike = Math.abs(a.box().widthPt() - b.box().widthPt()) < 0.1 * size
                && Math.abs(a.box().heightPt() - b.box().heightPt()) < 0.1 * size;
        boolean across = Math.abs(dx - a.box().widthPt()) < 0.1 * size && dy < 0.1 * size;
        boolean down = Math.abs(dy - a.box().heightPt()) < 0.1 * size && dx < 0.1 * size;
        return alike && a.smallPt() > 0.6 * size && (across || down);
    }
}
