package linewalk.importer.line;

import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.lettering.Label;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Near;

/**
 * Takes out bars that stand across a line's end before the text of a reference: they are the sign's, and the line ends
 * there.
 */
final class EndBars {

    /** Half of a bar, in text sizes: it spans a text of four lines at most. */
    private static final double HALF = 4.5;

    /** How far beyond the bar its text may stand, in text sizes. */
    private static final double BEYOND = 3;

    private static final double ALIKE = 0.5;

    private final Near<Label> texts;

    /** @param texts that may be references */
    EndBars(List<Label> texts) {
        this.texts = new Near<>(texts, Label::box);
    }

    void drop(List<Node> nodes) {
        for (Node n : nodes) {
            if (n.runs().size() == 3 && n.body() == null && n.flag() == null) {
                List.copyOf(n.runs()).stream()
                        .filter(stem -> isBarred(n, stem))
                        .findFirst()
                        .ifPresent(stem -> {
                            List<Run> bar =
                                    n.runs().stream().filter(r -> r != stem).toList();
                            bar.forEach(r -> r.other(n).runs().remove(r));
                            n.runs().removeAll(bar);
                        });
            }
        }
    }

    private boolean isBarred(Node n, Run stem) {
        Direction out = stem.outward(n);
        List<Run> bar = n.runs().stream().filter(r -> r != stem).toList();
        Run one = bar.get(0);
        Run two = bar.get(1);
        boolean across = isArm(one, n, out)
                && isArm(two, n, out)
                && one.outward(n).along(two.outward(n)) < -0.98
                && Math.min(one.lengthPt(), two.lengthPt()) > ALIKE * Math.max(one.lengthPt(), two.lengthPt());
        return across && textBeyond(n.place(), out, Math.max(one.lengthPt(), two.lengthPt()));
    }

    private static boolean isArm(Run r, Node n, Direction out) {
        return r.other(n).free()
                && r.points().size() == 2
                && Math.abs(r.outward(n).along(out)) < 0.1;
    }

    private static boolean isStraight(Run r) {
        return r.lengthPt() < 1.02 * r.from().place().distancePt(r.to().place());
    }

    private boolean textBeyond(Point end, Direction out, double armPt) {
        return texts.touching(Box.around(end).grow(2 * armPt)).stream().anyMatch(l -> {
            double size = l.sizePt();
            double gap = l.box().distancePt(end);
            double reach = gap + size;
            return armPt < HALF * size
                    && gap < BEYOND * size
                    && l.box().grow(0.6 * size).contains(end.plus(out.dx() * reach, out.dy() * reach));
        });
    }
}
