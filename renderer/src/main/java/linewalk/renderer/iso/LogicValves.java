package linewalk.renderer.iso;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import linewalk.drawing.Passage;

/** Valves that the oil itself switches over. */
final class LogicValves {

    private LogicValves() {}

    /** A ball between two seats: the higher pressure goes on to the port between. */
    static Plan shuttle(Drafting d) {
        Set<String> to = d.passages().map(Passage::to).collect(Collectors.toSet());
        Set<String> from = d.passages().map(Passage::from).collect(Collectors.toSet());
        List<PortUse> out = only(d, to, from);
        List<PortUse> in = only(d, from, to);
        boolean told = out.size() <= 1
                && in.size() <= 2
                && out.size() + in.size() == d.uses().size();
        if (!told || d.uses().isEmpty()) {
            return Housing.around(new Body(6.5, 4, p -> seats(p, true), true), d);
        }
        boolean up = out.isEmpty() ? !in.get(0).up() : out.get(0).up();
        List<Dock> docks = new ArrayList<>();
        in.forEach(u ->
                docks.add(new Dock(u, up ? Side.BOTTOM : Side.TOP, docks.isEmpty() ? 0.75 : 8.75, Duty.WORKING, 0)));
        out.forEach(u -> docks.add(new Dock(u, up ? Side.TOP : Side.BOTTOM, 4.75, Duty.WORKING, 0)));
        return new Plan(new Body(9.5, 5, p -> branches(p.flipped(!up, 5))), docks);
    }

    private static List<PortUse> only(Drafting d, Set<String> these, Set<String> notThese) {
        return d.uses().stream()
                .filter(u -> these.contains(u.id()) && !notThese.contains(u.id()))
                .toList();
    }

    private static void branches(Pen p) {
        seats(p.moved(1.5, 0.5), false);
        p.lines(4.75, 0, 4.75, 0.5);
        p.lines(0.75, 5, 0.75, 2.5, 2.25, 2.5);
        p.lines(8.75, 5, 8.75, 2.5, 7.25, 2.5);
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
        InLine.Ports ports = InLine.Ports.of(d);
        Axis axis = Axis.of(ports.working());
        boolean flip = named(axis.upper(), "A") || named(axis.lower(), "B");
        boolean told = flip || named(axis.lower(), "A") || named(axis.upper(), "B");
        double height = 6.5;
        Body body = new Body(7.5, height, p -> poppet(p.flipped(flip, height), height, told), !told);
        boolean fits = ports.working().size() <= 2
                && ports.pilots().size() <= 1
                && ports.working().size() + ports.pilots().size() == d.uses().size();
        if (!fits) {
            return Housing.around(body, d);
        }
        List<Dock> docks = new ArrayList<>();
        if (axis.lower() != null) {
            docks.add(Dock.bottom(axis.lower(), flip ? 6.75 : 3.5));
        }
        if (axis.upper() != null) {
            docks.add(Dock.top(axis.upper(), flip ? 3.5 : 6.75));
        }
        ports.pilots().forEach(u -> docks.add(new Dock(u, Side.LEFT, flip ? height - 1.4 : 1.4, Duty.CONTROL, 1.5)));
        return new Plan(body, docks);
    }

    private static void poppet(Pen p, double height, boolean told) {
        p.lines(3.2, 5.5, 1.5, 5.5, 1.5, 0.25, 5.5, 0.25, 5.5, 5.5, 3.8, 5.5);
        Signs.uprightSpring(p, 0.25, 1.75, 3.5);
        p.outline(2.25, 1.75, 4.75, 1.75, 4.75, 3.75, 3.5, 5.35, 2.25, 3.75);
        if (!told) {
            p.text("?", 3.5, 2.9);
        }
        p.lines(3.5, 5.5, 3.5, height);
        p.lines(5.5, 4.6, 6.75, 4.6, 6.75, 0);
    }

    private static boolean named(PortUse port, String letter) {
        return port != null && port.name() != null && port.name().strip().equalsIgnoreCase(letter);
    }
}
