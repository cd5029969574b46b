package linewalk.linker.step;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import linewalk.drawing.Passage;
import linewalk.drawing.Port;
import linewalk.drawing.Position;

/** The volumes at the pumps' outlets and suctions, and which way checks beside them open. */
final class Pumps {

    /** @param guessed nothing told the sides apart */
    record Sides(Part part, int[] outlets, int[] suctions, boolean guessed) {}

    final List<Sides> drawn = new ArrayList<>();
    /** All outlets, running or not. */
    final boolean[] outlet;
    /** By part: where a check valve of untold passages lets oil in, or -1. */
    final int[] checkInlet;

    Pumps(Net net, PumpPorts ports) {
        outlet = net.none();
        for (Part p : net.parts) {
            if (p.kind() == Kind.PUMP) {
                PumpPorts.Sides s = ports.of(p.component());
                Sides sides = new Sides(p, volumes(p, s.outlets()), volumes(p, s.suctions()), s.guessed());
                drawn.add(sides);
                for (int o : sides.outlets) {
                    outlet[o] = true;
                }
            }
        }
        checkInlet = CheckSides.inlets(net, outlet);
    }

    private static int[] volumes(Part p, List<Port> ports) {
        return ports.stream()
                .filter(o -> p.lined()[p.component().ports().indexOf(o)])
                .mapToInt(o -> p.at(o.id()))
                .toArray();
    }

    /** A pump that delivers either way does so as its position tells. */
    static Sides in(Sides s, Position now) {
        Component c = s.part.component();
        if (c.positions().isEmpty()) {
            return s;
        }
        Map<Integer, Boolean> out = new HashMap<>();
        for (Passage x : now == null ? List.<Passage>of() : now.passages()) {
            out.put(s.part.at(x.to()), true);
            out.put(s.part.at(x.from()), false);
        }
        int[] outlets = out.keySet().stream().filter(out::get).mapToInt(v -> v).toArray();
        int[] suctions =
                out.keySet().stream().filter(v -> !out.get(v)).mapToInt(v -> v).toArray();
        Arrays.sort(outlets);
        Arrays.sort(suctions);
        return new Sides(s.part, outlets, suctions, now == null);
    }
}
