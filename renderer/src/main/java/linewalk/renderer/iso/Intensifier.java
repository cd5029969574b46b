package linewalk.renderer.iso;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import linewalk.drawing.Passage;

/** A large piston drives a small one: low pressure at the left, high at the right. */
final class Intensifier {

    private Intensifier() {}

    static Plan plan(Drafting d) {
        InLine.Ports ports = InLine.Ports.of(d);
        Set<String> high = d.passages().map(Passage::to).collect(Collectors.toSet());
        boolean told = ports.working().stream().anyMatch(u -> high.contains(u.id()));
        Body body = new Body(10, 5.5, p -> draw(p, told), !told);
        boolean fits = ports.working().size() <= 2
                && ports.drains().size() <= 1
                && ports.working().size() + ports.drains().size() == d.uses().size();
        return fits ? new Plan(body, docks(ports, high)) : Housing.around(body, d);
    }

    private static void draw(Pen p, boolean told) {
        p.rect(0.1, 0.75, 5, 4);
        p.rect(5.1, 1.75, 4.8, 2);
        p.rect(2, 0.75, 0.75, 4);
        p.rect(2.75, 2.05, 3.9, 1.4);
        if (!told) {
            p.text("?", 8.4, 2.75);
        }
    }

    private static List<Dock> docks(InLine.Ports ports, Set<String> high) {
        List<PortUse> order = new ArrayList<>(ports.working());
        if (order.size() == 2 && high.contains(order.get(0).id())) {
            order.add(order.remove(0));
        }
        List<Dock> docks = new ArrayList<>();
        for (PortUse u : order) {
            boolean small = order.size() == 2 ? !docks.isEmpty() : high.contains(u.id());
            Dock dock = new Dock(u, u.up() ? Side.TOP : Side.BOTTOM, small ? 7.5 : 1, Duty.WORKING, 0);
            docks.add(dock.reaching(small ? 1.75 : 0.75));
        }
        ports.drains().forEach(u -> docks.add(new Dock(u, Side.BOTTOM, 4, Duty.DRAIN, 0.75)));
        return docks;
    }
}
