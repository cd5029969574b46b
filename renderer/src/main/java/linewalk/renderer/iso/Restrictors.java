package linewalk.renderer.iso;

import java.util.ArrayList;
import java.util.List;

/** What narrows or shuts a line. */
final class Restrictors {

    private Restrictors() {}

    /** Two edges, since an orifice does not depend on how thick the oil is. */
    static Plan orifice(Drafting d) {
        Body body = new Body(4, 3.5, p -> {
            p.lines(2, 0, 2, 3.5);
            p.lines(0.6, 0.75, 1.55, 1.75, 0.6, 2.75);
            p.lines(3.4, 0.75, 2.45, 1.75, 3.4, 2.75);
        });
        return InLine.plain(2).plan(d, body);
    }

    /** Adjustable; with a check beside the throttle where one way is free. */
    static Plan flowControl(Drafting d) {
        boolean told = d.passages().findAny().isPresent();
        boolean checked = d.passages().anyMatch(x -> x.oneWay() && !x.throttled());
        return checked ? withCheck(d) : alone(d, told);
    }

    private static Plan alone(Drafting d, boolean told) {
        double x = told ? 2.5 : 2.75;
        Body body = new Body(told ? 5 : 5.5, 4.5, p -> {
            p.lines(x, 0, x, 4.5);
            adjustable(p, x, 2.25);
            if (!told) {
                p.text("?", x + 2, 3.4);
            }
        });
        return InLine.plain(x).plan(d, body.asking(!told));
    }

    private static void adjustable(Pen p, double x, double y) {
        Signs.throttle(p, x, y);
        p.arrow(x - 1.8, y + 1.8, x + 2, y - 2);
    }

    private static Plan withCheck(Drafting d) {
        Way free = Axis.of(d.roles().through()).way(d.atRest(), x -> x.oneWay() && !x.throttled());
        double height = 6.5;
        Body body = new Body(9.75, height, p -> {
            p.lines(3.5, 0, 3.5, height);
            adjustable(p, 3.5, height / 2);
            Signs.bypass(p.flipped(free.down(), height), free, 3.5, 8, height);
        });
        return InLine.plain(3.5).plan(d, body.asking(!free.told()));
    }

    /** Filled where it is shut. */
    static Plan shutOff(Drafting d) {
        boolean shut = d.shown().map(p -> p.passages().isEmpty()).orElseGet(d.part()::normallyClosed);
        Body body = new Body(5.25, 4, p -> {
            double[] tie = {1.2, 0.5, 3.8, 0.5, 1.2, 3.5, 3.8, 3.5};
            p.lines(2.5, 0, 2.5, 0.5);
            p.lines(2.5, 3.5, 2.5, 4);
            if (shut) {
                p.solid(tie);
            }
            p.outline(tie);
            p.lines(2.5, 2, 4.75, 2);
            p.lines(4.75, 1.25, 4.75, 2.75);
        });
        return InLine.plain(2.5).plan(d, body);
    }

    /** One line that splits into equal ones; which way it runs is drawn where it is told. */
    static Plan divider(Drafting d) {
        List<PortUse> ports = d.roles().working();
        PortUse single = single(d, ports);
        if (single == null || ports.size() != d.uses().size() || ports.size() < 2) {
            return Housing.around(new Body(8, 5, p -> split(p, 2, 4, Way.UNTOLD)), d);
        }
        List<PortUse> others = ports.stream().filter(u -> u != single).toList();
        boolean below = single.up() ? others.stream().anyMatch(PortUse::up) : true;
        Way way = d.passages().anyMatch(x -> x.to().equals(single.id()))
                ? Way.DOWN
                : d.passages().anyMatch(x -> x.from().equals(single.id())) ? Way.UP : Way.UNTOLD;
        double cell = Shelf.pitch(others, 4);
        double width = cell * others.size();
        Body body = new Body(width, 5, p -> split(p.flipped(!below, 5), others.size(), cell, way));
        List<Dock> docks = new ArrayList<>();
        docks.add(below ? Dock.bottom(single, width / 2) : Dock.top(single, width / 2));
        for (PortUse u : others) {
            double at = cell * (docks.size() - 0.5);
            docks.add(below ? Dock.top(u, at) : Dock.bottom(u, at));
        }
        return new Plan(body, docks);
    }

    /** The port that all passages share, else the one named P, else the only one on its side. */
    private static PortUse single(Drafting d, List<PortUse> ports) {
        List<PortUse> shared = ports.stream()
                .filter(u -> d.passages().count() > 1
                        && d.passages().allMatch(x -> x.from().equals(u.id()) || x.to().equals(u.id())))
                .toList();
        List<PortUse> named =
                ports.stream().filter(u -> "P".equalsIgnoreCase(u.name())).toList();
        List<PortUse> below = ports.stream().filter(u -> !u.up()).toList();
        List<PortUse> above = ports.stream().filter(PortUse::up).toList();
        for (List<PortUse> found : List.of(shared, named, below, above)) {
            if (found.size() == 1) {
                return found.get(0);
            }
        }
        return null;
    }

    private static void split(Pen p, int ways, double cell, Way way) {
        double width = cell * ways;
        p.rect(0, 0.4, width, 4.2);
        p.lines(width / 2, 5, width / 2, 3.9);
        p.lines(cell / 2, 3.9, width - cell / 2, 3.9);
        for (int i = 0; i < ways; i++) {
            double x = cell * (i + 0.5);
            p.lines(x, 3.9, x, 0);
            Signs.smallThrottle(p, x, 2.6);
            if (way == Way.UP) {
                p.head(x, 0.5, 0, -1);
            } else if (way == Way.DOWN) {
                p.head(x, 3.8, 0, 1);
            }
        }
    }
}
