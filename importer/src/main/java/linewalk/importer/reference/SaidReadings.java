package linewalk.importer.reference;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linewalk.drawing.ReferenceReading.Says;
import linewalk.drawing.Target;
import linewalk.importer.lettering.Label;
import linewalk.importer.lettering.ReferenceGrammar;
import linewalk.importer.lettering.ReferenceGrammar.Parsed;

/** What a reference may say where its letters were read: every reading of its text that is a reference of the same form. */
final class SaidReadings {

    private SaidReadings() {}

    static List<Says> of(Label text, Parsed parsed, ReferenceGrammar grammar) {
        if (!text.drawn()) {
            return parsed.readings();
        }
        Map<List<Target>, Double> says = new LinkedHashMap<>();
        double first = text.readings().get(0).likelihood();
        parsed.readings().forEach(s -> says.merge(s.targets(), s.likelihood() * first, Double::sum));
        for (Label.Reading r : text.readings().subList(1, text.readings().size())) {
            Optional<Parsed> other = grammar.parse(r.text());
            if (other.isEmpty() && grammar.parse(text.text()).isEmpty()) {
                other = grammar.glued(r.text());
            }
            other.filter(p -> p.form().equals(parsed.form())).ifPresent(p -> p.readings()
                    .forEach(s -> says.merge(s.targets(), s.likelihood() * r.likelihood(), Double::sum)));
        }
        List<Says> out = new ArrayList<>();
        says.forEach((targets, likelihood) -> out.add(new Says(targets, Math.min(1, likelihood))));
        out.sort(Comparator.comparingDouble((Says s) -> -s.likelihood()));
        return out;
    }
}
