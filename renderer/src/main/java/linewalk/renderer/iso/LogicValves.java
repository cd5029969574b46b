package linewalk.renderer.iso;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import linewalk.drawing.Passage;

/** Valves that the oil itself switches over, and pressure changers. */
final class LogicValves {

    private LogicValves() {}

    /** A ball between two seats: the higher pressure goes on to the port between. */
    static Plan shuttle(Drafting d) {
        Set<String> outs = d.passages().map(Passage::to).collect(Collectors.toSet());
        Set<String> ins = d.passages().map(Passage::from).collect(Collectors.toSet());
        List<PortUse> out = d.uses().stream()
                .filter(u -> outs.contains(u.id()) && !ins.contains(u.id()))
                .toList();
        List<PortUse> in = d.uses().stream()
                .filter(u -> ins.contains(u.id()) && !outs.contains(u.id()))
                .toList();
        boolean told = out.size() <= 1
                && in.size() <= 2
                && out.size() + in.size() == d.uses().size();
        if (!told || d.uses().isEmpty()) {
            return Housing.around(new Body(6.5, 4, p -> seats(p, true)), d);
        }
        boolean up = out.isEmpty() ? !in.get(0).up() : out.get(0).up();
        Body body = new Body(9.5, 5, p -> {
            Pen q = p.flipped(!up, 5);
            seats(q.moved(1.5, 0.5), false);
            q.lines(4.75, 0, 4.75, 0.5);
            q.lines(0.75, 5, 0.75, 2.5, 2.25, 2.5);
            q.lines(8.75, 5, 8.75, 2.5, 7.25, 2.5);
        });
        List<Dock> docks = new ArrayList<>();
        in.forEach(u -> docks.add(new Dock(u, up ? Side.BOTTOM : Side.TOP, docks.isEmpty() ? 0.75 : 8.75, false)));
        out.forEach(u -> docks.add(new Dock(u, up ? Side.TOP : Side.BOTTOM, 4.75, false)));
        return new Plan(body, docks);
    }

    /** In the frame of the chamber that both open to. */
    private static void seats(Pen p, boolean untold) {
        p.rect(0, 0, 6.5, 4);
        for (int s = -1; s <= 1; s += 2) {
            double tip = 3.25 + s * 2.5;
            p.lines(tip - s * 1.25, 0.75, tip, 2, tip - s * 1.25, 3.25);
        }
        p.circle(3.25, 2, 1);
        if (untold) {
            p.text("?", 3.25, 2);
        }
    }

    /** A poppet on its seat in a sleeve: one port under the seat, one at the side, the pilot above. */
    static Plan cartridge(Drafting d) {
        Axis axis = Axis.of(d.roles().working());
        boolean flip = named(axis.upper(), "A") || named(axis.lower(), "B");
        boolean told = flip || named(axis.lower(), "A") || named(axis.upper(), "B");
        double height = 6.5;
        Body body = new Body(7.5, height, p -> {
            Pen q = p.flipped(flip, height);
            q.lines(3.2, 5.5, 1.5, 5.5, 1.5, 0.25, 5.5, 0.25, 5.5, 5.5, 3.8, 5.5);
            Signs.uprightSpring(q, 0.25, 1.75, 3.5);
            q.outline(2.25, 1.75, 4.75, 1.75, 4.75, 3.75, 3.5, 5.35, 2.25, 3.75);
            if (!told) {
                q.text("?", 3.5, 2.9);
            }
            q.lines(3.5, 5.5, 3.5, height);
            q.lines(5.5, 4.6, 6.75, 4.6, 6.75, 0);
        });
        if (d.roles().working().size() > 2
                || d.roles().pilots().size() > 1
                || d.roles().working().size() + d.roles().pilots().size()
                        != d.uses().size()) {
            return Housing.around(body, d);
        }
        List<Dock> docks = new ArrayList<>();
        if (axis.lower() != null) {
            docks.add(Dock.bottom(axis.lower(), flip ? 6.75 : 3.5));
        }
        if (axis.upper() != null) {
            docks.add(Dock.top(axis.upper(), flip ? 3.5 : 6.75));
        }
        d.roles().pilots().forEach(u -> docks.add(new Dock(u, Side.LEFT, flip ? height - 1.4 : 1.4, true, 1.5)));
        return new Plan(body, docks);
    }

    private static boolean named(PortUse port, String letter) {
        return port != null && port.name() != null && port.name().strip().equalsIgnoreCase(letter);
    }

    /** A large piston drives a small one: low pressure at the left, high at the right. */
    static Plan intensifier(Drafting d) {
        List<PortUse> working = d.roles().working();
        List<PortUse> drains = d.roles().drains();
        Set<String> outs = d.passages().map(Passage::to).collect(Collectors.toSet());
        boolean told = working.stream().anyMatch(u -> outs.contains(u.id()));
        Body body = new Body(10, 5.5, p -> {
            p.rect(0.1, 0.75, 5, 4);
            p.rect(5.1, 1.75, 4.8, 2);
            p.rect(2, 0.75, 0.75, 4);
            p.rect(2.75, 2.05, 3.9, 1.4);
            if (!told) {
                p.text("?", 8.4, 2.75);
            }
        });
        if (working.size() > 2
                || drains.size() > 1
                || working.size() + drains.size() != d.uses().size()) {
            return Housing.around(body, d);
        }
        return stepped(body, working, drains, outs);
    }

    private static Plan stepped(Body body, List<PortUse> working, List<PortUse> drains, Set<String> outs) {
        boolean swap = working.size() == 2 && outs.contains(working.get(0).id());
        List<PortUse> order = swap ? List.of(working.get(1), working.get(0)) : working;
        List<Dock> docks = new ArrayList<>();
        for (int i = 0; i < order.size(); i++) {
            boolean high =
                    order.size() == 2 ? i == 1 : outs.contains(order.get(i).id());
            docks.add(new Dock(order.get(i), order.get(i).up() ? Side.TOP : Side.BOTTOM, high ? 7.5 : 1, false));
        }
        drains.forEach(u -> docks.add(new Dock(u, Side.BOTTOM, 4, true, 0.75)));
        Art joined = p -> {
            body.art().draw(p);
            docks.forEach(k -> reach(p, k, body.height()));
        };
        return new Plan(new Body(body.width(), body.height(), joined), docks);
    }

    /** From the body's edge to the chamber. */
    private static void reach(Pen p, Dock k, double height) {
        boolean small = k.at() > 5;
        if (k.side() == Side.TOP) {
            p.lines(k.at(), 0, k.at(), small ? 1.75 : 0.75);
        } else if (!k.dashed()) {
            p.lines(k.at(), height, k.at(), small ? 3.75 : 4.75);
        }
    }
}
