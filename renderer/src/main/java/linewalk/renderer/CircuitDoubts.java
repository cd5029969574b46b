package linewalk.renderer;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import linewalk.drawing.Component;
import linewalk.drawing.End;
import linewalk.drawing.Finding;
import linewalk.drawing.Line;
import linewalk.drawing.PageKey;
import linewalk.drawing.Point;
import linewalk.drawing.Reference;
import linewalk.drawing.Severity;

/** What is not sure about a circuit: findings on its parts, lines and references, and what was read with doubt. */
final class CircuitDoubts {

    /** @param about ids of the line, part or references it concerns */
    record Said(String text, PageKey page, Point place, Set<String> about) {}

    private final PrintJob job;
    private final Map<String, Reference> references = new HashMap<>();
    /** Named at the ends of branches, without a mate. */
    private final Set<Reference> strays = new LinkedHashSet<>();

    private final Set<String> shown = new HashSet<>();
    private final Map<String, Set<String>> byTag = new HashMap<>();
    private final List<Said> said = new ArrayList<>();

    private CircuitDoubts(PrintJob job) {
        this.job = job;
        Map<String, Reference> all = new HashMap<>();
        job.set().references().forEach(r -> all.put(r.id(), r));
        for (Line l : job.subject().excerpt().lines()) {
            for (End e : l.ends()) {
                if (e instanceof End.AtReference r && all.containsKey(r.reference())) {
                    references.put(r.reference(), all.get(r.reference()));
                }
            }
        }
        shown.addAll(references.keySet());
        for (SchemeDraft.Strand s : new SchemeDraft(job, new SetIndex(job.set()), new HeldEnergy(job)).strands) {
            s.away().stream()
                    .map(Beyond.Away::reference)
                    .filter(Objects::nonNull)
                    .map(all::get)
                    .forEach(strays::add);
        }
        strays.forEach(r -> shown.add(r.id()));
        for (Component c : job.subject().excerpt().parts()) {
            byTag.computeIfAbsent(c.tag(), k -> new HashSet<>()).add(c.id());
        }
    }

    static List<Said> of(PrintJob job) {
        CircuitDoubts doubts = new CircuitDoubts(job);
        job.set().findings().stream().filter(f -> f.severity() != Severity.NOTE).forEach(doubts::take);
        doubts.unsaid();
        return doubts.said;
    }

    private void take(Finding f) {
        Set<String> about = new HashSet<>(f.references());
        about.retainAll(shown);
        f.components().forEach(tag -> about.addAll(byTag.getOrDefault(tag, Set.of())));
        if (!about.isEmpty()) {
            said.add(new Said(Doubts.text(f), f.page(), f.place(), about));
        }
    }

    private void unsaid() {
        Words words = new Words(job);
        Set<String> told = new HashSet<>();
        said.forEach(s -> told.addAll(s.about()));
        for (Reference r : strays) {
            if (told.add(r.id())) {
                String text = "It is not known where " + r.text() + " on " + words.address(r) + " goes on";
                said.add(new Said(text, r.page(), r.place(), Set.of(r.id())));
            }
        }
        for (Line l : job.subject().excerpt().lines()) {
            if (l.confidence() < Doubts.SURE) {
                Point at = l.ends().isEmpty() ? null : l.ends().get(0).place();
                said.add(new Said("The joins of " + words.called(l) + " are not sure", l.page(), at, Set.of(l.id())));
            }
        }
        for (Component c : job.subject().excerpt().parts()) {
            if (c.confidence() < Doubts.SURE && told.add(c.id())) {
                String text = "The reading of " + words.placed(c) + " is not sure";
                said.add(new Said(text, c.page(), c.place(), Set.of(c.id())));
            }
        }
        for (Reference r : references.values().stream()
                .sorted(java.util.Comparator.comparing(Reference::id))
                .toList()) {
            if (r.mateConfidence() < Doubts.SURE && !r.mates().isEmpty() && told.add(r.id())) {
                told.addAll(r.mates());
                String text = "It is not sure where " + r.text() + " on " + words.address(r) + " goes on";
                said.add(new Said(text, r.page(), r.place(), Set.of(r.id())));
            }
        }
    }
}
