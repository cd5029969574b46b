package linewalk.linker;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import linewalk.drawing.End;
import linewalk.drawing.PageKey;
import linewalk.drawing.Port;
import linewalk.linker.Circuit.PortAt;
import linewalk.linker.Circuit.Spot;

/** Writes a walk out as legs. */
final class Legs {

    private final Circuit circuit;

    Legs(Circuit circuit) {
        this.circuit = circuit;
    }

    /** From the start to the end of the walk's last line. */
    List<Leg> of(Walk walk, Spot end) {
        List<Walk> chain = new ArrayList<>();
        for (Walk w = walk; w != null; w = w.before) {
            chain.add(w);
        }
        Collections.reverse(chain);
        List<Leg> legs = new ArrayList<>();
        PortAt start = circuit.port(chain.get(0).at.end()).orElseThrow();
        legs.add(new Leg.Through(start.component(), null, start.port(), null, null));
        for (int i = 0; i < chain.size(); i++) {
            Walk w = chain.get(i);
            Spot leave = i + 1 < chain.size() ? chain.get(i + 1).move.leave() : end;
            if (leave != null && leave != w.at) {
                legs.add(new Leg.Along(circuit.lines.get(w.at.line()), w.at.end(), leave.end()));
            }
            if (i + 1 < chain.size()) {
                legs.add(leg(chain.get(i + 1).move));
            }
        }
        if (end != null && circuit.port(end.end()).isPresent()) {
            PortAt at = circuit.port(end.end()).get();
            Port in = at.port();
            legs.add(new Leg.Through(at.component(), in, null, null, null));
        }
        return legs;
    }

    private static Leg leg(Move m) {
        if (m.pass() == null) {
            return new Leg.Across(m.from(), m.to());
        }
        Pass p = m.pass();
        return new Leg.Through(p.component(), p.in(), p.out(), p.passage(), p.shift());
    }

    List<String> sheets(List<Leg> legs) {
        List<String> names = new ArrayList<>();
        for (Leg leg : legs) {
            if (leg instanceof Leg.Through t) {
                add(names, t.component().page());
            } else if (leg instanceof Leg.Along a) {
                add(names, a.line().page());
            } else if (leg instanceof Leg.Across x) {
                add(names, x.to().page());
            }
        }
        return names;
    }

    private void add(List<String> names, PageKey page) {
        String name = circuit.set.getSheet(page).name();
        if (names.isEmpty() || !names.get(names.size() - 1).equals(name)) {
            names.add(name);
        }
    }

    String address(End e, PageKey page) {
        return circuit.set.address(page, e.place());
    }
}
