package linewalk.linker;

import java.util.List;
import java.util.Optional;
import linewalk.drawing.End;
import linewalk.drawing.Finding;
import linewalk.drawing.Flow;
import linewalk.drawing.Line;
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
                findings.add(differ(a, a.label(), b, b.label()));
            } else if (!byHand && !a.labelKey().isEmpty() && a.labelKey().equals(b.labelKey())) {
                lineNumbers(a, b).ifPresent(findings::add);
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

    private static Finding differ(Ref a, String one, Ref b, String other) {
        String message = "One line is called " + one + " at " + a.said() + " and " + other + " at " + b.said() + ".";
        return finding(Rule.LABEL_DIFFERS, a, b, message, "give both ends one number");
    }

    /** Ends that share a letter may still stand on lines with two numbers. */
    private static Optional<Finding> lineNumbers(Ref a, Ref b) {
        String one = lineNumber(a);
        String other = lineNumber(b);
        boolean differ = one != null && other != null && !Names.labelKey(one).equals(Names.labelKey(other));
        return differ ? Optional.of(differ(a, one, b, other)) : Optional.empty();
    }

    /** Of an unbranched line, where it is no more than the reference's own name. */
    private static String lineNumber(Ref r) {
        return r.page().lines.stream()
                .filter(l -> l.ends().size() == 2)
                .filter(l -> l.ends().stream()
                        .anyMatch(e -> e instanceof End.AtReference at
                                && at.reference().equals(r.id())))
                .map(Line::label)
                .filter(l -> l != null && !Names.labelKey(l).equals(r.labelKey()))
                .findFirst()
                .orElse(null);
    }

    private static Finding finding(Rule rule, Ref a, Ref b, String message, String remedy) {
        return new Finding(rule, a.page().page, a.place(), List.of(a.id(), b.id()), List.of(), message, remedy);
    }
}
