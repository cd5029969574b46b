package linewalk.linker;

import java.util.List;
import java.util.Map;
import linewalk.linker.Facts.Label;
import linewalk.linker.Facts.Way;

/**
 * How sure a mate is, as a promise: of mates at 0.9 and above at least 995 in 1,000 are right. So two facts that agree
 * and a clear lead over any rival are needed to get there.
 */
final class MateConfidence {

    /**
     * Nothing rivals a pair that leads by this much. A label that tells two neighbours apart leads by more, and a name that
     * is printed at one end alone takes nothing from a pair that both ends point at.
     */
    private static final double CLEAR_LEAD = 2.1;

    private MateConfidence() {}

    static double byZone(Pairing p, Map<Slot, List<Pairing>> rivals) {
        List<Pairing> atA = rivals.get(p.a());
        List<Pairing> atB = rivals.get(p.b());
        // one header that meets several ends of its own name has no rivals in them
        boolean header = namesakes(p, atA) == 0 || namesakes(p, atB) == 0;
        double lead = Math.min(lead(p, atA, header), lead(p, atB, header));
        double alone = alone(p.facts());
        if (lead <= 0.05) {
            return Math.min(alone, 0.4);
        }
        if (lead < CLEAR_LEAD) {
            return Math.min(alone, 0.5 + 0.35 * lead / CLEAR_LEAD);
        }
        double read = Math.min(p.a().ref().confidence(), p.b().ref().confidence());
        return mutual(p.facts()) ? alone : Math.min(alone, 0.4 + 0.6 * read);
    }

    private static boolean namesake(Pairing p, Pairing r) {
        return r != p && p.facts().label() == Label.EQUAL && r.facts().label() == Label.EQUAL && mutual(r.facts());
    }

    private static long namesakes(Pairing p, List<Pairing> rivals) {
        return rivals.stream().filter(r -> namesake(p, r)).count();
    }

    private static double lead(Pairing p, List<Pairing> rivals, boolean header) {
        double lead = Double.MAX_VALUE;
        for (Pairing r : rivals) {
            if (r != p && !(header && namesake(p, r))) {
                lead = Math.min(lead, p.facts().score() - r.facts().score());
            }
        }
        return lead;
    }

    private static boolean mutual(Facts f) {
        return f.out() == Way.EXACT && f.back() == Way.EXACT;
    }

    /** Without any rival. */
    private static double alone(Facts f) {
        boolean equal = f.label() == Label.EQUAL;
        if (mutual(f)) {
            return equal ? 0.995 : f.label() == Label.DIFFERENT ? 0.92 : f.label() == Label.SLIP ? 0.96 : 0.98;
        }
        if (one(f, Way.EXACT, Way.NEXT)) {
            return equal ? 0.96 : f.label() == Label.DIFFERENT ? 0.6 : agreed(f) ? 0.9 : 0.85;
        }
        if (one(f, Way.EXACT, Way.SHEET)) {
            return equal ? 0.96 : f.label() == Label.DIFFERENT ? 0.6 : 0.85;
        }
        if (f.out() == Way.NEXT && f.back() == Way.NEXT) {
            return equal ? 0.93 : 0.6;
        }
        if (f.out() == Way.SHEET && f.back() == Way.SHEET) {
            return 0.95;
        }
        return one(f, Way.EXACT, Way.NEAR) && equal ? 0.92 : equal ? 0.8 : 0.6;
    }

    private static boolean agreed(Facts f) {
        return f.flows() == Facts.Flows.AGREE;
    }

    private static boolean one(Facts f, Way a, Way b) {
        return f.out() == a && f.back() == b || f.out() == b && f.back() == a;
    }

    /** Names that stand once on each sheet are sure; a letter that stands twice may mean two lines. */
    static double byName(Slot a, Slot b, RefIndex index) {
        boolean once = alone(a, b, index) && alone(b, a, index);
        boolean letter = a.ref().labelKey().length() < 2;
        double base = once ? 0.98 : letter ? 0.7 : 0.95;
        return Math.min(base, 0.5 + 0.5 * Math.min(a.ref().confidence(), b.ref().confidence()));
    }

    private static boolean alone(Slot a, Slot b, RefIndex index) {
        return index.labelled(b.ref().sheetKey(), a.ref().labelKey()).stream()
                        .filter(r -> r.targets().stream()
                                .anyMatch(t -> t.zone() == null
                                        && Names.sheetKey(t.sheet()).equals(b.sheetKey())))
                        .count()
                <= 1;
    }

    static double shared(Facts f) {
        return mutual(f) ? 0.94 : 0.8;
    }
}
