package linewalk.linker;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linewalk.drawing.Component;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.End;
import linewalk.drawing.Kind;
import linewalk.drawing.Line;
import linewalk.drawing.LineKind;
import linewalk.drawing.Port;
import linewalk.drawing.Reference;

/** The set as a graph to walk: which lines meet at a port or a reference, and what each end is. */
final class Circuit {

    /** One end of one line. */
    record Spot(int line, End end) {}

    /** A port with its component. */
    record PortAt(Component component, Port port) {}

    final DrawingSet set;
    final List<Line> lines;
    private final List<List<Spot>> spots = new ArrayList<>();
    private final Map<String, List<Spot>> atPort = new HashMap<>();
    private final Map<String, List<Spot>> atReference = new HashMap<>();
    private final Map<String, PortAt> ports = new HashMap<>();
    private final Map<String, Reference> references = new HashMap<>();
    private final Map<String, List<Component>> byTag = new HashMap<>();

    Circuit(DrawingSet set) {
        this.set = set;
        this.lines = set.lines();
        for (Component c : set.components()) {
            c.ports().forEach(p -> ports.put(p.id(), new PortAt(c, p)));
            byTag.computeIfAbsent(Names.plain(c.tag()), k -> new ArrayList<>()).add(c);
        }
        set.references().forEach(r -> references.put(r.id(), r));
        for (int i = 0; i < lines.size(); i++) {
            List<Spot> own = new ArrayList<>();
            for (End e : lines.get(i).ends()) {
                own.add(spot(i, e));
            }
            spots.add(own);
        }
    }

    private Spot spot(int line, End e) {
        Spot spot = new Spot(line, e);
        if (e instanceof End.AtPort p) {
            atPort.computeIfAbsent(p.port(), k -> new ArrayList<>()).add(spot);
        } else if (e instanceof End.AtReference r) {
            atReference.computeIfAbsent(r.reference(), k -> new ArrayList<>()).add(spot);
        }
        return spot;
    }

    List<Spot> ends(int line) {
        return spots.get(line);
    }

    List<Spot> atPort(Port port) {
        return atPort.getOrDefault(port.id(), List.of());
    }

    List<Spot> atReference(Reference reference) {
        return atReference.getOrDefault(reference.id(), List.of());
    }

    Optional<PortAt> port(End e) {
        return e instanceof End.AtPort p ? Optional.ofNullable(ports.get(p.port())) : Optional.empty();
    }

    Optional<Reference> reference(End e) {
        return e instanceof End.AtReference r ? Optional.ofNullable(references.get(r.reference())) : Optional.empty();
    }

    List<Reference> mates(Reference r) {
        return r.mates().stream().map(references::get).filter(m -> m != null).toList();
    }

    /** All drawings of one designation. */
    List<Component> tagged(String plainTag) {
        return byTag.getOrDefault(plainTag, List.of());
    }

    Map<String, List<Component>> byTag() {
        return byTag;
    }

    List<Component> tanks() {
        return set.components().stream().filter(c -> c.kind() == Kind.TANK).toList();
    }

    List<Component> pumps() {
        return set.components().stream().filter(c -> c.kind() == Kind.PUMP).toList();
    }

    /** On a drain or pilot line only. */
    boolean aside(Port port) {
        List<Spot> at = atPort(port);
        return !at.isEmpty() && at.stream().allMatch(s -> lines.get(s.line()).kind() != LineKind.WORKING);
    }

    String address(Component c, Port p) {
        String port = p.name() == null ? "" : " port " + p.name();
        return c.tag() + port + " on " + set.address(c.page(), p.place());
    }

    String address(Reference r) {
        return "'" + r.text() + "' on " + set.address(r.page(), r.place());
    }
}
