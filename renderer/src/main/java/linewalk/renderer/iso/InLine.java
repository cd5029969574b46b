package linewalk.renderer.iso;

import java.util.ArrayList;
import java.util.List;

/**
 * Puts the ports of a part that oil runs through on its axis, pilot ports at the left and drain ports at the right.
 *
 * @param x of the axis
 * @param pilotY of the pilot line, not a number where the symbol has none
 * @param pilotReach how far it goes into the body
 * @param drainY of the drain line, not a number where the symbol has none
 * @param drainReach how far it goes into the body
 */
record InLine(double x, double pilotY, double pilotReach, double drainY, double drainReach) {

    static InLine plain(double x) {
        return new InLine(x, Double.NaN, 0, Double.NaN, 0);
    }

    InLine pilot(double y, double reach) {
        return new InLine(x, y, reach, drainY, drainReach);
    }

    InLine drain(double y, double reach) {
        return new InLine(x, pilotY, pilotReach, y, reach);
    }

    /** Ports of a part in their roles. */
    record Ports(List<PortUse> working, List<PortUse> pilots, List<PortUse> drains) {

        static Ports of(Drafting d) {
            Roles roles = d.roles();
            return new Ports(roles.working(), roles.pilots(), roles.drains());
        }
    }

    boolean fits(Drafting d) {
        return fits(d, Ports.of(d));
    }

    boolean fits(Drafting d, Ports ports) {
        return ports.working.size() <= 2
                && ports.pilots.size() <= (Double.isNaN(pilotY) ? 0 : 1)
                && ports.drains.size() <= (Double.isNaN(drainY) ? 0 : 1)
                && ports.working.size() + ports.pilots.size() + ports.drains.size()
                        == d.uses().size();
    }

    Plan plan(Drafting d, Body body) {
        return plan(d, body, Ports.of(d));
    }

    /** Ports that the symbol has no place for put it into a housing. */
    Plan plan(Drafting d, Body body, Ports ports) {
        if (!fits(d, ports)) {
            List<PortUse> through = d.roles().through();
            return through.size() == 2 ? Housing.along(body, x, Axis.of(through), d) : Housing.around(body, d);
        }
        List<Dock> docks = new ArrayList<>();
        Axis axis = Axis.of(ports.working);
        if (axis.lower() != null) {
            docks.add(Dock.bottom(axis.lower(), x));
        }
        if (axis.upper() != null) {
            docks.add(Dock.top(axis.upper(), x));
        }
        ports.pilots.forEach(u -> docks.add(new Dock(u, Side.LEFT, pilotY, Duty.CONTROL, pilotReach)));
        ports.drains.forEach(u -> docks.add(new Dock(u, Side.RIGHT, drainY).reaching(drainReach)));
        return new Plan(body, docks);
    }
}
