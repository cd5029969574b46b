package linewalk.linker;

import java.util.Set;
import linewalk.drawing.Flow;
import linewalk.drawing.Zone;

/**
 * What speaks for and against two slots being the two ends of one line.
 *
 * @param out what the first says of where the second stands
 * @param back what the second says of where the first stands
 */
record Facts(Way out, Way back, Label label, Flows flows, boolean kindsDiffer) {

    /** How a target fits the place of a reference; the weights are costs saved against leaving both unmated. */
    enum Way {
        EXACT(5),
        NEXT(2.5),
        NEAR(0),
        FAR(-1.5),
        /** The sheet is right; there is no zone to compare. */
        SHEET(2),
        /** The sheet is right and has no such zone. */
        NO_ZONE(1),
        /** Names a sheet that is not in the set. */
        NO_SHEET(-1),
        /** The zone is right, on another sheet where nothing stands in it: a sheet number gone stale. */
        STALE(1),
        ELSEWHERE(-6);

        private final double weight;

        Way(double weight) {
            this.weight = weight;
        }
    }

    /** How two labels compare. */
    enum Label {
        EQUAL(3),
        SLIP(-0.5),
        DIFFERENT(-2),
        ONE(-0.3),
        NONE(0);

        private final double weight;

        Label(double weight) {
            this.weight = weight;
        }
    }

    /** How the two flows compare. */
    enum Flows {
        AGREE(0.7),
        CLASH(-0.7),
        UNKNOWN(0);

        private final double weight;

        Flows(double weight) {
            this.weight = weight;
        }
    }

    private static final double KINDS_DIFFER = -0.8;
    private static final double ONE_WRONG = -3;
    /** What must be gained for two references to be mated at all. */
    static final double ENOUGH = 3;

    static Facts of(Slot a, Slot b, RefIndex index) {
        return new Facts(
                way(a, b.ref(), index),
                way(b, a.ref(), index),
                label(a.ref(), b.ref()),
                flows(a.ref().flow(), b.ref().flow()),
                a.ref().kind() != null
                        && b.ref().kind() != null
                        && a.ref().kind() != b.ref().kind());
    }

    double score() {
        return weight(out, back) + weight(back, out) + label.weight + flows.weight + (kindsDiffer ? KINDS_DIFFER : 0);
    }

    /** An end that points wrong is forgiven where the other points exactly here and both bear one line number. */
    private double weight(Way way, Way other) {
        return way == Way.ELSEWHERE && other == Way.EXACT && label == Label.EQUAL ? ONE_WRONG : way.weight;
    }

    /** Without any zone to go by, only an equal label speaks; two that point elsewhere are no pair. */
    boolean enough() {
        boolean zones = out == Way.EXACT || out == Way.NEXT || back == Way.EXACT || back == Way.NEXT;
        boolean elsewhere = out == Way.ELSEWHERE || back == Way.ELSEWHERE;
        boolean exact = out == Way.EXACT || back == Way.EXACT;
        return score() > ENOUGH && (zones || label == Label.EQUAL) && (!elsewhere || exact && label == Label.EQUAL);
    }

    static Way way(Slot from, Ref to, RefIndex index) {
        if (!from.sheetKey().equals(to.sheetKey())) {
            return otherSheet(from, to, index);
        }
        Zone zone = from.zone();
        if (zone == null || to.zone() == null) {
            return Way.SHEET;
        }
        return to.page().has(zone) ? way(zone, to) : Way.NO_ZONE;
    }

    private static Way otherSheet(Slot from, Ref to, RefIndex index) {
        if (index.pages(from.sheetKey()).isEmpty()) {
            return Way.NO_SHEET;
        }
        boolean stale = from.zone() != null
                && to.touched().contains(from.zone())
                && index.inZone(from.sheetKey(), from.zone()).isEmpty();
        return stale ? Way.STALE : Way.ELSEWHERE;
    }

    private static Way way(Zone named, Ref to) {
        int steps = steps(named, to);
        return steps == 0 ? Way.EXACT : steps == 1 ? Way.NEXT : steps == 2 ? Way.NEAR : Way.FAR;
    }

    /** Fields from the zone named to the nearest zone that the reference touches. */
    static int steps(Zone named, Ref to) {
        Set<Zone> touched = to.touched();
        int least = Integer.MAX_VALUE;
        for (Zone z : touched) {
            least = Math.min(least, to.page().steps(named, z));
        }
        return least;
    }

    private static Label label(Ref a, Ref b) {
        String x = a.labelKey();
        String y = b.labelKey();
        if (x.isEmpty() || y.isEmpty()) {
            return x.isEmpty() && y.isEmpty() ? Label.NONE : Label.ONE;
        }
        return x.equals(y) ? Label.EQUAL : Names.slip(x, y) ? Label.SLIP : Label.DIFFERENT;
    }

    private static Flows flows(Flow a, Flow b) {
        if (a == Flow.UNKNOWN || b == Flow.UNKNOWN) {
            return Flows.UNKNOWN;
        }
        return a == b ? Flows.CLASH : Flows.AGREE;
    }
}
