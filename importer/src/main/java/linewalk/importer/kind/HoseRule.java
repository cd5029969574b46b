package linewalk.importer.kind;

import java.util.List;
import java.util.Optional;
import linewalk.drawing.Box;
import linewalk.drawing.Kind;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Segment;

/**
 * A bare curve between two lines, small rings at its ends or none, or a straight piece between two bars: nothing else in
 * the figure.
 */
final class HoseRule {

    private static final double SAME = 0.2;

    /** The rings of a hose's fittings are smaller than so much of it. */
    private static final double FITTING = 0.35;

    private final Picture p;

    HoseRule(Picture picture) {
        this.p = picture;
    }

    Optional<Verdict> read() {
        boolean signs = p.triangles().stream().anyMatch(t -> p.core().contains(t.box()));
        long fittings = p.shapes().stream().filter(this::isFitting).count();
        if (p.shapes().size() - fittings > 1
                || fittings != 0 && fittings != 2
                || signs
                || p.contacts().size() > 2) {
            return Optional.empty();
        }
        if (p.curves().stream().anyMatch(c -> fills(c.box()))) {
            return Optional.of(Verdict.of(Kind.HOSE, 0.9, "a bare curve between two lines"));
        }
        return barred()
                ? Optional.of(Verdict.of(Kind.HOSE, 0.6, "a line between two bars across it"))
                : Optional.empty();
    }

    private boolean isFitting(Shape s) {
        return s.form() == Form.CIRCLE && s.sizePt() < FITTING * p.sizePt();
    }

    private boolean fills(Box b) {
        double off = SAME * p.sizePt();
        return b.grow(off).contains(p.core()) && p.core().grow(off).contains(b);
    }

    private boolean barred() {
        List<Segment> inside = p.solid().stream()
                .filter(s -> p.core().grow(p.tolPt()).contains(s.box()))
                .toList();
        return inside.stream()
                .filter(s -> s.lengthPt() > 0.7 * p.sizePt())
                .anyMatch(s -> inside.stream().filter(b -> across(b, s)).count() >= 2);
    }

    private static boolean across(Segment bar, Segment line) {
        return Math.abs(Direction.of(bar.a(), bar.b()).along(Direction.of(line.a(), line.b()))) < 0.1
                && bar.lengthPt() < 0.5 * line.lengthPt();
    }
}
