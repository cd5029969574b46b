package linewalk.importer;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linewalk.importer.line.Net;
import linewalk.importer.line.Node;
import linewalk.importer.symbol.Body;
import linewalk.importer.symbol.Designations.Named;

/**
 * Figures without a designation that hang on a named one by a short stub are part of it: the coupling under a gauge, the
 * ball of a test point. What hangs on a reservoir is a part of its own.
 */
final class Couplings {

    /** How long the stub may be, in sizes of the larger figure. */
    private static final double STUB = 1.0;

    private Couplings() {}

    /** Nets without the stubs; contacts of the nameless figures now stand for the named one. */
    static List<Net> merge(List<Net> nets, Map<Body, Named> named, Map<Body, Body> partOf) {
        Set<Net> stubs = Collections.newSetFromMap(new IdentityHashMap<>());
        for (Net n : nets) {
            List<Node> c = n.contacts();
            if (n.nodes().size() == 2
                    && c.size() == 2
                    && c.get(0).body() != c.get(1).body()
                    && isShort(n, c)) {
                boolean first = named.containsKey(c.get(0).body());
                boolean second = named.containsKey(c.get(1).body());
                Body nameless = first ? c.get(1).body() : c.get(0).body();
                boolean tank = nameless.reservoir()
                        || (first ? c.get(0) : c.get(1)).body().reservoir();
                if (first != second && !tank) {
                    partOf.put(nameless, first ? c.get(0).body() : c.get(1).body());
                    stubs.add(n);
                }
            }
        }
        List<Net> kept = new ArrayList<>(nets);
        kept.removeAll(stubs);
        return kept;
    }

    private static boolean isShort(Net n, List<Node> contacts) {
        double size = contacts.stream()
                .mapToDouble(
                        c -> Math.max(c.body().core().widthPt(), c.body().core().heightPt()))
                .max()
                .orElse(0);
        return n.runs().stream().mapToDouble(r -> r.lengthPt()).sum() < STUB * size;
    }
}
