package linewalk.renderer.iso;

import java.util.ArrayList;
import java.util.List;

/** What the oil moves; ports below. */
final class Actuators {

    private static final double HEIGHT = 5;
    private static final double FIRST = 1.25;

    private Actuators() {}

    static Plan cylinder(Drafting d) {
        List<PortUse> cap = new ArrayList<>();
        List<PortUse> rod = new ArrayList<>();
        boolean told = !d.uses().isEmpty();
        for (PortUse u : d.uses()) {
            CylinderEnds end = CylinderEnds.of(d.part(), u.id());
            told &= end != CylinderEnds.UNTOLD;
            (end == CylinderEnds.ROD ? rod : cap).add(u);
        }
        return told ? withRod(cap, rod) : withoutRod(d.uses());
    }

    private static Plan withRod(List<PortUse> cap, List<PortUse> rod) {
        double pitch = Math.max(Shelf.pitch(cap, 2), Shelf.pitch(rod, 2));
        double piston = Math.max(3, FIRST + pitch * Math.max(0, cap.size() - 1) + 1.25);
        double barrel = Math.max(9.5, piston + 2 + pitch * Math.max(0, rod.size() - 1) + FIRST + 0.5);
        double width = barrel + 4.5;
        List<Dock> docks = new ArrayList<>();
        for (int i = 0; i < cap.size(); i++) {
            docks.add(new Dock(cap.get(i), Side.BOTTOM, FIRST + pitch * i));
        }
        for (int i = 0; i < rod.size(); i++) {
            double at = barrel - FIRST - pitch * (rod.size() - 1 - i);
            docks.add(new Dock(rod.get(i), Side.BOTTOM, at));
        }
        Body body = new Body(width, HEIGHT, p -> {
            barrel(p, barrel, docks);
            p.rect(piston, 0.25, 0.75, 4);
            p.lines(piston + 0.75, 1.9, width - 0.1, 1.9, width - 0.1, 2.6, piston + 0.75, 2.6);
        });
        return new Plan(body, docks);
    }

    /** Which end has the rod is not known. */
    private static Plan withoutRod(List<PortUse> uses) {
        List<Dock> docks = new ArrayList<>();
        double barrel = 9.5;
        if (uses.size() <= 2) {
            uses.forEach(u -> docks.add(new Dock(u, Side.BOTTOM, docks.isEmpty() ? FIRST : 8.25)));
        } else {
            barrel = Math.max(barrel, Shelf.extent(uses, 2) + 1);
            docks.addAll(Shelf.row(uses, Side.BOTTOM, barrel, 2));
        }
        double length = barrel;
        Body body = new Body(length, HEIGHT, p -> {
            barrel(p, length, docks);
            p.rect(length / 2 - 0.4, 0.25, 0.8, 4);
            p.text("?", length / 2 + 2.2, 2.25);
        });
        return new Plan(body.asking(true), docks);
    }

    private static void barrel(Pen p, double length, List<Dock> docks) {
        p.rect(0.1, 0.25, length - 0.2, 4);
        docks.forEach(k -> p.lines(k.at(), 4.25, k.at(), HEIGHT));
    }

    /** Half a circle: it turns through a limited angle. */
    static Plan rotary(Drafting d) {
        Body body = new Body(6.5, 4.75, p -> {
            p.arc(3.25, 3.75, 2.75, 0, 180);
            p.lines(0.4, 3.75, 6.1, 3.75);
            p.lines(3, 0, 3, 1.02);
            p.lines(3.5, 0, 3.5, 1.02);
            for (double x : new double[] {2, 4.5}) {
                p.solid(x, 2.5, x - 0.75, 3.75, x + 0.75, 3.75);
            }
            d.uses().stream().limit(2).forEach(u -> {
                double x = u == d.uses().get(0) ? 2 : 4.5;
                p.lines(x, 3.75, x, 4.75);
            });
        });
        return pair(d, body, 2, 4.5);
    }

    private static Plan pair(Drafting d, Body body, double left, double right) {
        if (d.uses().size() > 2) {
            return Housing.standing(body, d);
        }
        List<Dock> docks = new ArrayList<>();
        d.uses().forEach(u -> docks.add(new Dock(u, Side.BOTTOM, docks.isEmpty() ? left : right)));
        return new Plan(body, docks);
    }

    /** A shoe against a disc. Whether oil sets or frees it is not told, so no piston and no spring. */
    static Plan brake(Drafting d) {
        Body body = new Body(8, 4.5, p -> {
            p.rect(0.25, 0.5, 3.5, 3);
            p.rect(3.75, 1.7, 1.5, 0.6);
            p.solid(5.25, 0.75, 6, 0.75, 6, 3.25, 5.25, 3.25);
            p.rect(6.25, 0.1, 0.75, 3.8);
            p.lines(7, 2, 8, 2);
            p.lines(2, 3.5, 2, 4.5);
        });
        return Ends.below(d, body, 2);
    }
}
