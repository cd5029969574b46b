package linewalk.importer.lettering;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import linewalk.drawing.ReferenceReading.Says;
import linewalk.drawing.Target;
import linewalk.importer.lettering.ReferenceGrammar.Parsed;

/** What a label says as a reference, where its letters were read: all that it may say of the same make. */
public final class SaidReadings {

    /** A text that is no reference as it was read is one by a reading this likely, compared with the first. */
    private static final double LIKELY = 0.1;

    private SaidReadings() {}

    /**
     * Empty where no likely reading is a reference. Likelihoods are shares of all that the label may say.
     *
     * @param grammar what one reading says
     */
    public static Optional<Parsed> of(Label label, Function<String, Optional<Parsed>> grammar) {
        if (!label.drawn()) {
            return grammar.apply(label.text());
        }
        return of(label.readings(), grammar).or(() -> of(misread(label.text()), grammar));
    }

    /** None of the readings is a reference: then one of its letters was not read as what it is. */
    private static List<Label.Reading> misread(String text) {
        return Confusions.variants(text).stream()
                .map(v -> new Label.Reading(v, 1))
                .toList();
    }

    private static Optional<Parsed> of(List<Label.Reading> readings, Function<String, Optional<Parsed>> grammar) {
        Map<List<Target>, Double> says = new LinkedHashMap<>();
        Parsed first = null;
        double likeliest = readings.isEmpty() ? 0 : readings.get(0).likelihood();
        double others = 0;
        for (Label.Reading r : readings) {
            Parsed p = grammar.apply(r.text()).orElse(null);
            first = first == null && r.likelihood() >= LIKELY * likeliest ? p : first;
            if (p == null || first == null || !alike(p, first)) {
                others += r.likelihood();
            } else {
                // one text in two meanings is as likely to have been printed as one that has one
                p.readings().forEach(s -> says.merge(s.targets(), r.likelihood(), Double::sum));
            }
        }
        return first == null ? Optional.empty() : Optional.of(first.with(shares(says, others)));
    }

    private static boolean alike(Parsed a, Parsed b) {
        return a.zoned() == b.zoned()
                && a.words() == b.words()
                && a.readings().get(0).targets().size()
                        == b.readings().get(0).targets().size();
    }

    private static List<Says> shares(Map<List<Target>, Double> says, double others) {
        double all =
                others + says.values().stream().mapToDouble(Double::doubleValue).sum();
        List<Says> out = new ArrayList<>();
        says.forEach((targets, likelihood) -> out.add(new Says(targets, likelihood / all)));
        out.sort(Comparator.comparingDouble((Says s) -> -s.likelihood()));
        return out;
    }
}
