package linewalk.linker;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import linewalk.drawing.Finding;
import linewalk.drawing.Rule;

/** Mates that a trace will stop at and that no other finding speaks of. */
final class DoubtfulMates {

    private DoubtfulMates() {}

    /** Needs the findings of the other checks. */
    static void check(Mates mates, List<Finding> findings) {
        Set<String> told = new HashSet<>();
        findings.forEach(f -> told.addAll(f.references()));
        for (Pairing p : mates.pairings) {
            Ref a = p.a().ref();
            Ref b = p.b().ref();
            double sure = Math.min(mates.confidence(a), mates.confidence(b));
            if (sure < Moves.SURE && !told.contains(a.id()) && !told.contains(b.id())) {
                findings.add(new Finding(
                        Rule.DOUBTFUL_JOIN,
                        a.page().page,
                        a.place(),
                        List.of(a.id(), b.id()),
                        List.of(),
                        "That " + a.said() + " goes on at " + b.said() + " is not sure (" + TraceDoubts.percent(sure)
                                + ").",
                        "confirm it with a mate tag"));
            }
        }
    }
}
