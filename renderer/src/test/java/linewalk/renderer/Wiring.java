package linewalk.renderer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linewalk.drawing.End;
import linewalk.drawing.Line;
import linewalk.drawing.Point;
import linewalk.drawing.Reference;
import linewalk.linker.Leg;

/** Legs written down loosely, joined up: lines end at the ports and references of the legs beside them. */
final class Wiring {

    final List<Leg> legs = new ArrayList<>();
    final Map<String, Reference> references = new LinkedHashMap<>();
    private final Map<String, Line> joined = new LinkedHashMap<>();

    Wiring(List<Leg> loose) {
        Map<String, Set<End>> ends = new LinkedHashMap<>();
        List<End[]> byLeg = new ArrayList<>();
        for (int i = 0; i < loose.size(); i++) {
            End[] pair = null;
            if (loose.get(i) instanceof Leg.Along a) {
                pair = new End[] {
                    i == 0 ? a.from() : after(loose.get(i - 1), a.from()),
                    i == loose.size() - 1 ? a.to() : before(loose.get(i + 1), a.to())
                };
                ends.computeIfAbsent(a.line().id(), k -> new LinkedHashSet<>()).addAll(List.of(pair));
                joined.put(a.line().id(), a.line());
            }
            byLeg.add(pair);
        }
        joined.replaceAll((id, l) -> new Line(
                id, l.page(), l.kind(), l.label(), l.size(), l.confidence(), List.copyOf(ends.get(id)), l.runs()));
        mates(loose);
        for (int i = 0; i < loose.size(); i++) {
            legs.add(leg(loose.get(i), byLeg.get(i)));
        }
    }

    List<Line> lines() {
        return List.copyOf(joined.values());
    }

    private Leg leg(Leg loose, End[] pair) {
        if (loose instanceof Leg.Along a) {
            return new Leg.Along(joined.get(a.line().id()), pair[0], pair[1]);
        }
        return loose instanceof Leg.Across x
                ? new Leg.Across(references.get(x.from().id()), references.get(x.to().id()))
                : loose;
    }

    private void mates(List<Leg> loose) {
        for (Leg leg : loose) {
            if (leg instanceof Leg.Across x) {
                references.put(x.from().id(), mated(x.from(), x.to().id()));
                references.put(x.to().id(), mated(x.to(), x.from().id()));
            }
        }
    }

    private static Reference mated(Reference r, String mate) {
        return new Reference(
                r.id(),
                r.page(),
                r.place(),
                r.box(),
                r.zone(),
                r.text(),
                r.targets(),
                r.label(),
                r.flow(),
                r.origin(),
                r.confidence(),
                List.of(mate),
                r.mateConfidence());
    }

    private static End after(Leg leg, End loose) {
        return leg instanceof Leg.Through t
                ? port(t, t.out() == null ? null : t.out().id(), loose)
                : reference(((Leg.Across) leg).to(), loose.place());
    }

    private static End before(Leg leg, End loose) {
        return leg instanceof Leg.Through t
                ? port(t, t.in() == null ? null : t.in().id(), loose)
                : reference(((Leg.Across) leg).from(), loose.place());
    }

    private static End port(Leg.Through t, String port, End loose) {
        return port == null ? loose : new End.AtPort(t.component().id(), port, loose.place());
    }

    private static End reference(Reference r, Point place) {
        return new End.AtReference(r.id(), place);
    }
}
