package linewalk.linker;

import java.util.List;
import linewalk.drawing.Finding;
import linewalk.drawing.Flow;
import linewalk.drawing.Rule;

/** Whether two mates agree on their line's number and on the way the oil goes. */
final class PairCheck {

    private final Mates mates;

    PairCheck(Mates mates) {
        this.mates = mates;
    }

    void check(List<Finding> findings) {
        for (Pairing p : mates.pairings) {
            Ref a = p.a().ref();
            Ref b = p.b().ref();
            boolean byHand = p.confidence() >= 1;
            boolean labels =
                    p.facts().label() == Facts.Label.DIFFERENT || p.facts().label() == Facts.Label.SLIP;
            if (labels && !byHand) {
                findings.add(finding(
                        Rule.LABEL_DIFFERS,
                        a,
                        b,
                        "One line is called " + a.label() + " at " + a.said() + " and " + b.label() + " at " + b.said()
                                + ".",
                        "give both ends one number"));
            }
            if (p.facts().flows() == Facts.Flows.CLASH) {
                String way = a.flow() == Flow.OUT ? "out of" : "into";
                findings.add(finding(
                        Rule.FLOW_CLASH,
                        a,
                        b,
                        "The oil is drawn flowing " + way + " both sheets: at " + a.said() + " and at " + b.said()
                                + ".",
                        "turn the arrow at one end"));
            }
        }
    }

    private static Finding finding(Rule rule, Ref a, Ref b, String message, String remedy) {
        return new Finding(rule, a.page().page, a.place(), List.of(a.id(), b.id()), List.of(), message, remedy);
    }
}
