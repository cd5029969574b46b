package linewalk.renderer.iso;

import java.util.ArrayList;
import java.util.List;

/** Circles: pumps, motors and what drives them. */
final class Machines {

    private static final double RADIUS = 2.5;

    private Machines() {}

    static Plan pump(Drafting d) {
        Roles roles = d.roles();
        List<PortUse> suction = new ArrayList<>();
        List<PortUse> outlet = new ArrayList<>();
        for (PortUse u : roles.working()) {
            (isOutlet(u) ? outlet : suction).add(u);
        }
        if (outlet.size() == 2 && suction.isEmpty() && !isNamedOutlet(outlet.get(0))) {
            suction.add(outlet.remove(0));
        } else if (suction.size() == 2 && outlet.isEmpty() && !isNamedSuction(suction.get(1))) {
            outlet.add(suction.remove(1));
        }
        List<PortUse> drains = new ArrayList<>(roles.drains());
        drains.addAll(roles.pilots());
        Body body = new Body(6.75, 5, p -> drawPump(p, isVariable(d)));
        if (suction.size() > 1
                || outlet.size() > 1
                || drains.size() > 1
                || !roles.gauges().isEmpty()) {
            return Housing.around(body, d);
        }
        List<Dock> docks = new ArrayList<>();
        suction.forEach(u -> docks.add(Dock.bottom(u, 4)));
        outlet.forEach(u -> docks.add(Dock.top(u, 4)));
        drains.forEach(u -> docks.add(new Dock(u, Side.RIGHT, 3.75, Duty.DRAIN, 0.59)));
        return new Plan(body, docks);
    }

    private static boolean isOutlet(PortUse u) {
        return isNamedOutlet(u) || !isNamedSuction(u) && u.up();
    }

    private static boolean isNamedOutlet(PortUse u) {
        return u.name() != null && u.name().strip().matches("(?i)P\\d?|OUT|HP");
    }

    private static boolean isNamedSuction(PortUse u) {
        return u.name() != null && u.name().strip().matches("(?i)[STR]\\d?|IN");
    }

    private static boolean isVariable(Drafting d) {
        String told = d.part().setting()
                + (d.part().symbol() == null ? "" : d.part().symbol().evidence());
        return told.matches("(?is).*\\b(variable|adjustable)\\b.*");
    }

    private static void drawPump(Pen p, boolean variable) {
        circle(p, 4);
        p.solid(4, 0.05, 3.1, 1.5, 4.9, 1.5);
        p.lines(0, 2.25, 1.52, 2.25);
        p.lines(0, 2.75, 1.52, 2.75);
        if (variable) {
            p.arrow(1.75, 4.9, 6.25, 0.1);
        }
    }

    private static void circle(Pen p, double x) {
        p.circle(x, 2.5, RADIUS);
    }

    static Plan electricMotor(Drafting d) {
        Body body = new Body(5, 5, p -> {
            circle(p, 2.5);
            p.largeText("M", 2.5, 2.5);
        });
        return d.uses().isEmpty() ? new Plan(body, List.of()) : Housing.standing(body, d);
    }

    /** Oil may enter at either side. */
    static Plan motor(Drafting d) {
        List<PortUse> drains = d.roles().drains();
        List<PortUse> working = d.roles().working();
        Body body = new Body(8.5, 6.75, Machines::drawMotor);
        if (working.size() > 2
                || drains.size() > 1
                || working.size() + drains.size() != d.uses().size()) {
            return Housing.standing(body, d);
        }
        List<Dock> docks = new ArrayList<>();
        for (PortUse u : working) {
            docks.add(Dock.bottom(u, docks.isEmpty() ? 0.75 : 7.75));
        }
        drains.forEach(u -> docks.add(new Dock(u, Side.BOTTOM, 4.25, Duty.DRAIN, 0.75)));
        return new Plan(body, docks);
    }

    private static void drawMotor(Pen p) {
        double x = 4.25;
        double y = 3.5;
        p.circle(x, y, RADIUS);
        for (int s = -1; s <= 1; s += 2) {
            p.lines(x + s * 3.5, 6.75, x + s * 3.5, y, x + s * RADIUS, y);
            p.solid(x + s * 0.95, y, x + s * 2.36, y - 0.85, x + s * 2.36, y + 0.85);
        }
        p.lines(x - 0.25, 0, x - 0.25, 1.02);
        p.lines(x + 0.25, 0, x + 0.25, 1.02);
    }
}
