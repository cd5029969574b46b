package linewalk.renderer.iso;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import linewalk.drawing.Position;
import linewalk.drawing.Position.How;

/**
 * What stands at an end of a row of squares.
 *
 * @param how null where it is not known
 * @param names as printed; words that only say how are left out
 * @param on those of the names that are energised
 * @param line a pilot or drain line that comes in here, or null
 */
record Operator(How how, List<String> names, Set<String> on, PortUse line) {

    private static final Set<String> WORDS = Set.of("rest", "pilot", "lever", "spring", "detent", "solenoid");

    static final double NAME = 1.6;

    static Operator of(Position p, Set<String> energised) {
        List<String> names = p.by().stream()
                .filter(n -> !WORDS.contains(n.toLowerCase(Locale.ROOT)))
                .toList();
        Set<String> on = Set.copyOf(names.stream()
                .filter(n -> energised.stream().anyMatch(n::equalsIgnoreCase))
                .toList());
        How how = p.how() == null && !on.isEmpty() ? How.SOLENOID : p.how();
        return new Operator(how, names, on, null);
    }

    static Operator of(How how) {
        return new Operator(how, List.of(), Set.of(), null);
    }

    /** The line's own letter is not written twice. */
    Operator with(PortUse port) {
        List<String> others = names.stream()
                .filter(n ->
                        port.name() == null || !n.equalsIgnoreCase(port.name().strip()))
                .toList();
        return new Operator(how, others, on, port);
    }

    boolean isLineOnly() {
        return how == null && line != null;
    }

    double height() {
        return NAME * names.size() + 2.2;
    }

    double width() {
        return names.stream().mapToDouble(n -> Pen.widthOf(n) + 1).max().orElse(0);
    }

    /** Where a line comes in, from the operator's top. */
    double lineY() {
        return NAME * names.size() + 1;
    }

    /** From the row's end to where a line meets the operator. */
    double depth() {
        return how == How.PILOT ? 2 : Roles.isDrain(line.name()) ? 0 : 1.1;
    }

    /** Drawn at the right end of a row. */
    void draw(Pen p, boolean proportional) {
        for (int i = 0; i < names.size(); i++) {
            name(p, names.get(i), NAME * i);
        }
        Pen q = p.moved(0, NAME * names.size());
        if (isLineOnly()) {
            line(q);
        } else if (how == null) {
            q.rect(0, 0.25, 2.5, 1.5);
        } else {
            glyph(q, proportional);
        }
    }

    private void name(Pen p, String name, double y) {
        double w = Pen.widthOf(name);
        if (on.contains(name)) {
            p.solid(0.25, y, w + 0.95, y, w + 0.95, y + 1.4, 0.25, y + 1.4);
            p.whiteText(name, 0.6 + w / 2, y + 0.7);
        } else {
            p.text(name, 0.6 + w / 2, y + 0.7);
        }
    }

    private void glyph(Pen p, boolean proportional) {
        switch (how) {
            case SOLENOID -> solenoid(p, proportional);
            case SPRING -> Signs.spring(p, 0, 2.5, 1);
            case LEVER -> {
                p.rect(0, 1.1, 1.5, 0.6);
                p.lines(1.5, 1.4, 2.6, 0.35);
                p.dot(2.6, 0.4);
            }
            case PILOT -> {
                p.rect(0, 0, 2, 2);
                p.solid(0.35, 1, 1.6, 0.3, 1.6, 1.7);
                if (line == null) {
                    p.dashes(2, 1, 3, 1);
                }
            }
            case DETENT -> {
                p.outline(
                        0, 0.6, 0.4, 0.6, 0.75, 1.1, 1.1, 0.6, 1.4, 0.6, 1.75, 1.1, 2.1, 0.6, 2.5, 0.6, 2.5, 1.7, 0,
                        1.7);
                p.lines(0.75, 0.1, 0.75, 1);
            }
        }
    }

    private void solenoid(Pen p, boolean proportional) {
        if (!on.isEmpty()) {
            p.solid(0, 0, 3, 0, 3, 2, 0, 2);
            p.whiteText("ON", 1.5, 1);
            return;
        }
        p.rect(0, 0, 3, 2);
        if (proportional) {
            p.lines(1, 0, 2, 2);
            p.arrow(0.15, 2.1, 3.2, -0.1);
        } else {
            p.lines(0.9, 2, 2.1, 0);
        }
    }

    /** A pilot line enters with a triangle, a drain line plainly. */
    private void line(Pen p) {
        if (!Roles.isDrain(line.name())) {
            p.solid(0, 1, 1.1, 0.4, 1.1, 1.6);
        }
    }
}
