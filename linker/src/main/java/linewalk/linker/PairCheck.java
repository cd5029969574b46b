package linewalk.linker;

import java.util.List;
import java.util.Optional;
import linewalk.drawing.Finding;
import linewalk.drawing.Flow;
import linewalk.drawing.Rule;
import linewalk.drawing.Zone;

/** Whether two mates agree on their line's number and on the way the oil goes. */
final class PairCheck {

    private static final int SEVERAL = 3;

    private static final int CLEARLY = 5;

    private final RefIndex index;
    private final Mates mates;
    private final MateLines lines;

    PairCheck(RefIndex index, Mates mates, MateLines lines) {
        this.index = index;
        this.mates = mates;
        this.lines = lines;
    }

    void check(List<Finding> findings) {
        boolean numbered = numbered();
        boolean arrowed = arrowed();
        for (Pairing p : mates.pairings) {
            Ref a = p.a().ref();
            Ref b = p.b().ref();
            boolean byHand = p.confidence() >= 1;
            boolean labels =
                    p.facts().label() == Facts.Label.DIFFERENT || p.facts().label() == Facts.Label.SLIP;
            if (labels && !byHand) {
                findings.add(differ(a, a.label(), b, b.label()));
            } else if (numbered
                    && !byHand
                    && !a.labelKey().isEmpty()
                    && a.labelKey().equals(b.labelKey())) {
                lineNumbers(a, b).ifPresent(findings::add);
            }
            if (arrowed && p.facts().flows() == Facts.Flows.CLASH && !fed(p)) {
                String way = a.flow() == Flow.OUT ? "out of" : "into";
                findings.add(finding(
                        Rule.FLOW_CLASH,
                        a,
                        b,
                        "The oil is drawn flowing " + way + " both sheets: at " + a.said() + " and at " + b.said()
                                + ".",
                        "turn the arrow at one end, at " + a.said() + " or its mate " + b.said()));
            }
        }
    }

    /**
     * In a group of several ends one way may be drawn at two, as long as the oil goes the other way at a third: one of
     * their mates, or one of the same name that leads to either place, though nothing there points back.
     */
    private boolean fed(Pairing p) {
        Ref a = p.a().ref();
        Ref b = p.b().ref();
        boolean byName = !a.labelKey().isEmpty()
                && index.refs.stream()
                        .filter(r -> r != a && r != b && r.labelKey().equals(a.labelKey()))
                        .filter(r -> r.flow() != Flow.UNKNOWN && r.flow() != a.flow())
                        .anyMatch(r -> leadsTo(r, a) || leadsTo(r, b));
        return byName
                || mates.pairings.stream()
                        .filter(o -> o.touches(a) || o.touches(b))
                        .anyMatch(o ->
                                o.a().ref().flow() != a.flow() || o.b().ref().flow() != a.flow());
    }

    private static boolean leadsTo(Ref r, Ref to) {
        for (int i = 0; i < r.targets().size(); i++) {
            Zone zone = r.targets().get(i).zone();
            boolean isNear =
                    zone == null || to.touched().isEmpty() || to.touched().contains(zone);
            if (isNear && r.keys().targets().get(i).equals(to.sheetKey())) {
                return true;
            }
        }
        return false;
    }

    /** Where most pairs clash, tips and arrows are this drafter's form of a flag and say nothing of the flow. */
    private boolean arrowed() {
        long clash = count(Facts.Flows.CLASH);
        return clash < SEVERAL || clash * CLEARLY <= count(Facts.Flows.AGREE);
    }

    private long count(Facts.Flows flows) {
        return mates.pairings.stream().filter(p -> p.facts().flows() == flows).count();
    }

    /** What stands along this set's lines numbers them: both ends of a line mostly say the same. */
    private boolean numbered() {
        int same = 0;
        int other = 0;
        for (Pairing p : mates.pairings) {
            String one = lines.number(p.a().ref());
            String two = lines.number(p.b().ref());
            if (one != null && two != null) {
                boolean equal = Names.labelKey(one).equals(Names.labelKey(two));
                same += equal ? 1 : 0;
                other += equal ? 0 : 1;
            }
        }
        return same >= other;
    }

    private static Finding differ(Ref a, String one, Ref b, String other) {
        String message = "One line is called " + one + " at " + a.said() + " and " + other + " at " + b.said() + ".";
        return finding(
                Rule.LABEL_DIFFERS,
                a,
                b,
                message,
                "give both ends one number, at " + a.said() + " and its mate " + b.said());
    }

    /** Ends that share a letter may still stand on lines with two numbers. */
    private Optional<Finding> lineNumbers(Ref a, Ref b) {
        String one = lines.number(a);
        String other = lines.number(b);
        boolean differ = one != null && other != null && !Names.labelKey(one).equals(Names.labelKey(other));
        return differ ? Optional.of(differ(a, one, b, other)) : Optional.empty();
    }

    private static Finding finding(Rule rule, Ref a, Ref b, String message, String remedy) {
        return new Finding(rule, a.page().page, a.place(), List.of(a.id(), b.id()), List.of(), message, remedy);
    }
}
