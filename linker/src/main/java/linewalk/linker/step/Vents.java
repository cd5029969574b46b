package linewalk.linker.step;

import java.util.List;
import linewalk.drawing.Passage;
import linewalk.drawing.Port;
import linewalk.drawing.Position;

/** Several passages at one port join there: ports joined with one that leads to tank stand open to tank. */
final class Vents {

    private Vents() {}

    /** By port, a volume that leads to tank among those its port is joined with, or -1. */
    static int[] of(Part p, Position now, boolean[] outlet) {
        int[] group = new int[p.volumes().length];
        for (int i = 0; i < group.length; i++) {
            group[i] = i;
        }
        for (Passage x : now.passages()) {
            if (!x.throttled() && !x.oneWay()) {
                join(group, index(p, x.from()), index(p, x.to()));
            }
        }
        int[] vent = new int[group.length];
        for (int i = 0; i < group.length; i++) {
            vent[i] = -1;
            for (int j = 0; j < group.length && vent[i] < 0; j++) {
                vent[i] = group[j] == group[i] && outlet[p.volumes()[j]] ? p.volumes()[j] : -1;
            }
        }
        return vent;
    }

    private static void join(int[] group, int a, int b) {
        if (a < 0 || b < 0) {
            return;
        }
        int from = group[b];
        int to = group[a];
        for (int i = 0; i < group.length; i++) {
            group[i] = group[i] == from ? to : group[i];
        }
    }

    private static int index(Part p, String id) {
        List<Port> ports = p.component().ports();
        for (int i = 0; i < ports.size(); i++) {
            if (ports.get(i).id().equals(id)) {
                return i;
            }
        }
        return -1;
    }
}
