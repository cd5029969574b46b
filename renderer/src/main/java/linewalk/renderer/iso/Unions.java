package linewalk.renderer.iso;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Passage;

/** Lines that bend or turn. */
final class Unions {

    private static final double HEIGHT = 4.5;
    private static final double CELL = 4.75;

    private Unions() {}

    static Plan hose(Drafting d) {
        return InLine.plain(3).plan(d, new Body(4, 5, p -> {
            p.lines(3, 0, 3, 0.5);
            p.lines(3, 4.5, 3, 5);
            p.dot(3, 0.5);
            p.dot(3, 4.5);
            p.arc(3, 2.5, 2, 90, 180);
        }));
    }

    /** A row of turning joints, one for each pair of ports that is joined. */
    static Plan swivel(Drafting d) {
        List<Axis> axes = axes(d);
        if (axes.isEmpty()) {
            return Housing.around(new Body(CELL, HEIGHT, p -> joint(p, 2.25)), d);
        }
        List<Dock> docks = new ArrayList<>();
        for (int i = 0; i < axes.size(); i++) {
            double x = 2.25 + CELL * i;
            Axis a = axes.get(i);
            if (a.lower() != null) {
                docks.add(Dock.bottom(a.lower(), x));
            }
            if (a.upper() != null) {
                docks.add(Dock.top(a.upper(), x));
            }
        }
        return new Plan(
                new Body(CELL * axes.size(), HEIGHT, p -> {
                    for (int i = 0; i < axes.size(); i++) {
                        joint(p, 2.25 + CELL * i);
                    }
                }),
                docks);
    }

    /** Empty where ports are left over. */
    private static List<Axis> axes(Drafting d) {
        if (d.uses().size() <= 2) {
            return List.of(Axis.of(d.uses()));
        }
        List<PortUse> left = new ArrayList<>(d.uses());
        List<Axis> axes = new ArrayList<>();
        for (Passage x : d.passages().toList()) {
            List<PortUse> pair = left.stream()
                    .filter(u -> u.id().equals(x.from()) || u.id().equals(x.to()))
                    .toList();
            if (pair.size() == 2) {
                axes.add(Axis.of(pair));
                left.removeAll(pair);
            }
        }
        return left.isEmpty() ? axes : List.of();
    }

    /** One ring turns in the other. */
    private static void joint(Pen p, double x) {
        p.circle(x, 2.25, 1.5);
        p.circle(x, 2.25, 0.6);
        p.lines(x, 0, x, 0.75);
        p.lines(x, HEIGHT, x, 2.85);
        p.arc(x, 2.25, 2, -45, 60);
        p.head(x + 1.58, 1.02, -0.42, -0.91);
    }
}
