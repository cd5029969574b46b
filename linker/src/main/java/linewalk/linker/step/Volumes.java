package linewalk.linker.step;

import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linewalk.drawing.Component;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.End;
import linewalk.drawing.Line;
import linewalk.drawing.LineKind;
import linewalk.drawing.Port;
import linewalk.drawing.Reference;

/** Joins lines, ports and references into volumes and numbers them. */
final class Volumes {

    private final List<Line> lines;
    private final Map<String, Integer> items = new HashMap<>();
    private final Set<String> lined = new HashSet<>();
    private final Set<String> offDrain = new HashSet<>();
    private final int[] parent;
    private final int[] number;
    private final Map<String, Reference> references = new HashMap<>();
    private final boolean cut;
    private int count;
    private boolean doubtful;

    Volumes(DrawingSet set, boolean cut) {
        this.lines = set.lines();
        this.cut = cut;
        int next = lines.size();
        for (Component c : set.components()) {
            for (Port p : c.ports()) {
                items.put(p.id(), next++);
            }
        }
        for (Reference r : set.references()) {
            references.put(r.id(), r);
            items.put("ref " + r.id(), next++);
        }
        parent = new int[next];
        Arrays.setAll(parent, i -> i);
        joinLines();
        set.references().forEach(this::joinMates);
        joinTwins(set);
        number = new int[next];
        Arrays.fill(number, -1);
        for (int i = 0; i < next; i++) {
            int root = find(i);
            number[root] = number[root] < 0 ? count++ : number[root];
        }
    }

    private void joinLines() {
        for (int i = 0; i < lines.size(); i++) {
            boolean sure = lines.get(i).confidence() >= Net.SURE;
            doubtful |= !sure;
            for (End e : lines.get(i).ends()) {
                Integer item = item(e);
                if (e instanceof End.AtPort p) {
                    lined.add(p.port());
                    if (lines.get(i).kind() != LineKind.DRAIN) {
                        offDrain.add(p.port());
                    }
                } else if (e instanceof End.AtReference r) {
                    lined.add("ref " + r.reference());
                }
                if (item != null && (sure || !cut)) {
                    join(i, item);
                }
            }
        }
    }

    private void joinMates(Reference r) {
        for (String id : r.mates()) {
            Reference mate = references.get(id);
            if (mate != null) {
                boolean sure = Math.min(r.mateConfidence(), mate.mateConfidence()) >= Net.SURE;
                doubtful |= !sure;
                if (sure || !cut) {
                    join(items.get("ref " + r.id()), items.get("ref " + id));
                }
            }
        }
    }

    /** A port drawn on several sheets is one port. */
    private void joinTwins(DrawingSet set) {
        Map<String, Integer> known = new HashMap<>();
        for (Component c : set.components()) {
            for (Port p : c.ports()) {
                String name = twin(c, p);
                Integer twin = name == null ? null : known.putIfAbsent(name, items.get(p.id()));
                if (twin != null) {
                    join(twin, items.get(p.id()));
                }
            }
        }
    }

    /** The same for a port on all its sheets; null where it stands for itself. */
    static String twin(Component c, Port p) {
        String tag = Words.plain(c.tag());
        return tag.isEmpty() || p.name() == null || Kinds.ENDS.contains(c.kind()) ? null : tag + ":" + p.name();
    }

    private Integer item(End e) {
        if (e instanceof End.AtPort p) {
            return items.get(p.port());
        }
        return e instanceof End.AtReference r ? items.get("ref " + r.reference()) : null;
    }

    private int find(int i) {
        int root = i;
        while (parent[root] != root) {
            parent[root] = parent[parent[root]];
            root = parent[root];
        }
        return root;
    }

    private void join(int a, int b) {
        parent[find(b)] = find(a);
    }

    int count() {
        return count;
    }

    boolean doubtful() {
        return doubtful;
    }

    int ofLine(int line) {
        return number[find(line)];
    }

    int ofPort(Port p) {
        return number[find(items.get(p.id()))];
    }

    boolean lined(Port p) {
        return lined.contains(p.id());
    }

    boolean offDrain(Port p) {
        return offDrain.contains(p.id());
    }

    /** Where an end lies: with a doubtful line that was cut, at its port or reference alone. */
    int ofEnd(int line, End e) {
        Integer item = item(e);
        return item == null ? ofLine(line) : number[find(item)];
    }

    /** Goes on at a line on another sheet or place. */
    boolean mated(Reference r) {
        return r.mates().stream().anyMatch(m -> references.containsKey(m) && lined.contains("ref " + m));
    }
}
