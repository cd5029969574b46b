package linewalk.linker;

import linewalk.drawing.Target;
import linewalk.drawing.Zone;

/** One target of one reference: what a mate answers. */
record Slot(Ref ref, int index) implements Comparable<Slot> {

    Target target() {
        return ref.targets().get(index);
    }

    String sheetKey() {
        return ref.keys().targets().get(index);
    }

    Zone zone() {
        return target().zone();
    }

    /** Goes by its label alone. */
    boolean byName() {
        return zone() == null && !ref.labelKey().isEmpty();
    }

    @Override
    public int compareTo(Slot o) {
        int byId = ref.id().compareTo(o.ref.id());
        return byId != 0 ? byId : Integer.compare(index, o.index);
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof Slot s && index == s.index && ref.equals(s.ref);
    }

    @Override
    public int hashCode() {
        return 31 * ref.hashCode() + index;
    }
}
