package linewalk.linker;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import linewalk.drawing.Zone;

/**
 * Who the mate of a reference that points wrong, or is not answered, probably is: first the one that was found all the
 * same, then among those without a mate what points here, what stands where this one points, what bears its name.
 */
final class Suspects {

    /** Two that are told apart by less are both named. */
    private static final double CLOSE = 1;

    private record Suspect(Ref ref, Facts facts) {
        boolean pointsHere() {
            return facts.back() == Facts.Way.EXACT;
        }

        boolean standsThere() {
            return facts.out() == Facts.Way.EXACT;
        }

        boolean named() {
            return facts.label() == Facts.Label.EQUAL;
        }

        /** Neither names a zone, but each the other's sheet. */
        boolean eachOthersSheet() {
            return facts.out() == Facts.Way.SHEET && facts.back() == Facts.Way.SHEET;
        }

        /** What speaks for it, each as much as in the matching; a target that is wrong altogether weighs nothing. */
        double weight() {
            return (pointsHere() ? 5 : facts.back() == Facts.Way.NEXT ? 2.5 : 0)
                    + (standsThere() ? 3 : facts.out() == Facts.Way.NEXT ? 1.5 : 0)
                    + (eachOthersSheet() ? 4 : 0)
                    + (named() ? 3 : facts.label() == Facts.Label.DIFFERENT ? -2 : 0)
                    + (facts.flows() == Facts.Flows.AGREE ? 0.7 : facts.flows() == Facts.Flows.CLASH ? -0.7 : 0)
                    - (facts.kindsDiffer() ? 0.8 : 0);
        }

        String why() {
            String zone = pointsHere()
                    ? ", which points back here"
                    : standsThere()
                            ? ", which stands there"
                            : facts.back() == Facts.Way.NEXT ? ", which points close by" : "";
            return zone + (named() ? " with the same label " + ref.label() : "");
        }
    }

    private final RefIndex index;
    private final Mates mates;

    Suspects(RefIndex index, Mates mates) {
        this.index = index;
        this.mates = mates;
    }

    /** In words that follow "likely remedy:"; empty where nothing speaks for any one. */
    Optional<String> remedy(Slot s) {
        List<Suspect> found = found(s);
        String sure = "probably ";
        if (found.isEmpty()) {
            found = unmated(s);
            sure = "perhaps ";
        }
        if (found.isEmpty()) {
            return Optional.empty();
        }
        Suspect best = found.get(0);
        String or = found.size() > 1 && best.weight() - found.get(1).weight() < CLOSE
                ? ", or else " + found.get(1).ref.said()
                : "";
        return Optional.of("the mate is " + sure + best.ref.said() + best.why() + or + correction(s, best, or));
    }

    /** What this reference should say, where the other end leaves no doubt. */
    private static String correction(Slot s, Suspect best, String or) {
        boolean told = or.isEmpty() && best.pointsHere() && !best.standsThere() && best.ref.zone() != null;
        return told && s.zone() != null ? "; this one should say " + best.ref.page().name + "/" + best.ref.zone() : "";
    }

    private List<Suspect> found(Slot s) {
        return mates.of(s).stream()
                .map(p -> new Suspect(p.other(s).ref(), facts(s, p.other(s))))
                .toList();
    }

    private Facts facts(Slot s, Slot other) {
        return Facts.of(s, other, index);
    }

    private List<Suspect> unmated(Slot s) {
        Set<Ref> near = new LinkedHashSet<>();
        if (s.zone() != null) {
            near.addAll(index.inZone(s.sheetKey(), s.zone()));
        }
        for (Zone z : s.ref().touched()) {
            near.addAll(index.pointingAt(s.ref().sheetKey(), z));
            s.ref()
                    .page()
                    .around(z)
                    .forEach(n -> near.addAll(index.pointingAt(s.ref().sheetKey(), n)));
        }
        if (s.ref().labelKey().length() > 1) {
            near.addAll(index.named(s.ref().labelKey()));
        }
        index.pointingAt(s.ref().sheetKey(), null).stream()
                .filter(r -> s.zone() == null && r.sheetKey().equals(s.sheetKey()))
                .forEach(near::add);
        near.remove(s.ref());
        return near.stream()
                .filter(r -> !mates.mated(r))
                .map(r -> suspect(s, r))
                .filter(x -> x.weight() >= 1.5)
                .sorted(java.util.Comparator.comparingDouble(Suspect::weight)
                        .reversed()
                        .thenComparing(x -> x.ref.id()))
                .toList();
    }

    private Suspect suspect(Slot s, Ref r) {
        return IntStream.range(0, r.targets().size())
                .mapToObj(i -> new Suspect(r, facts(s, new Slot(r, i))))
                .max(java.util.Comparator.comparingDouble(Suspect::weight))
                .orElseThrow();
    }
}
