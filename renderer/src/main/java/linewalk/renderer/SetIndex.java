package linewalk.renderer;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import linewalk.drawing.Component;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.End;
import linewalk.drawing.Line;
import linewalk.drawing.Reference;

/** Finds parts, references and lines of a set by their ids. */
final class SetIndex {

    private final Map<String, Component> parts = new HashMap<>();
    private final Map<String, Reference> references = new HashMap<>();
    private final Map<String, List<Line>> atPort = new HashMap<>();
    private final Map<String, List<Line>> atReference = new HashMap<>();

    SetIndex(DrawingSet set) {
        set.components().forEach(c -> parts.put(c.id(), c));
        set.references().forEach(r -> references.put(r.id(), r));
        for (Line line : set.lines()) {
            for (End e : line.ends()) {
                if (e instanceof End.AtPort p) {
                    atPort.computeIfAbsent(p.port(), k -> new ArrayList<>()).add(line);
                } else if (e instanceof End.AtReference r) {
                    atReference
                            .computeIfAbsent(r.reference(), k -> new ArrayList<>())
                            .add(line);
                }
            }
        }
    }

    /** Null where the id is no part's. */
    Component part(String id) {
        return parts.get(id);
    }

    /** Null where the id is no reference's. */
    Reference reference(String id) {
        return references.get(id);
    }

    List<Line> atPort(String port) {
        return atPort.getOrDefault(port, List.of());
    }

    List<Line> atReference(String reference) {
        return atReference.getOrDefault(reference, List.of());
    }

    /** The number of a line; null where it stands at a reference and may be of the branch that leads there alone. */
    String number(Line line) {
        List<String> told = line.ends().stream()
                .filter(End.AtReference.class::isInstance)
                .map(e -> references.get(((End.AtReference) e).reference()))
                .filter(r -> r != null && r.label() != null)
                .map(Reference::label)
                .distinct()
                .toList();
        boolean divides = line.ends().size() > 2;
        return divides && told.contains(line.label()) ? null : line.label();
    }

    /** A reference with all that it is mated to, directly or over others, in the order of their ids. */
    List<Reference> crossing(Reference of) {
        TreeSet<String> ids = new TreeSet<>(List.of(of.id()));
        List<String> open = new ArrayList<>(ids);
        for (int i = 0; i < open.size(); i++) {
            Reference r = references.get(open.get(i));
            for (String mate : r == null ? List.<String>of() : r.mates()) {
                if (references.containsKey(mate) && ids.add(mate)) {
                    open.add(mate);
                }
            }
        }
        return ids.stream().map(references::get).toList();
    }
}
