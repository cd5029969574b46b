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

    Plan plan(Drafting d, Body body) {
        Roles roles = d.roles();
        return plan(d, body, roles.working(), roles.pilots(), roles.drains());
    }

    /** Ports that the symbol has no place for put it into a housing. */
    Plan plan(Drafting d, Body body, List<PortUse> working, List<PortUse> pilots, List<PortUse> drains) {
        boolean fits = working.size() <= 2
                && pilots.size() <= (Double.isNaN(pilotY) ? 0 : 1)
                && drains.size() <= (Double.isNaN(drainY) ? 0 : 1)
                && working.size() + pilots.size() + drains.size() == d.uses().size();
        if (!fits) {
            return Housing.around(body, d);
        }
        List<Dock> docks = new ArrayList<>();
        Axis axis = Axis.of(working);
        if (axis.lower() != null) {
            docks.add(Dock.bottom(axis.lower(), x));
        }
        if (axis.upper() != null) {
            docks.add(Dock.top(axis.upper(), x));
        }
        pilots.forEach(u -> docks.add(new Dock(u, Side.LEFT, pilotY, true, pilotReach)));
        drains.forEach(u -> docks.add(new Dock(u, Side.RIGHT, drainY, Shelf.isDashed(u), drainReach)));
        return new Plan(body, docks);
    }
}
