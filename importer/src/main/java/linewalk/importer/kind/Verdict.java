package linewalk.importer.kind;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Kind;
import linewalk.drawing.KindReading;
import linewalk.drawing.KindReading.Choice;

/** What one rule says: the likeliest kind first, what else it may be, and why in words. */
record Verdict(List<Choice> choices, String evidence) {

    static Verdict of(Kind kind, double likelihood, String evidence) {
        return new Verdict(List.of(new Choice(kind, likelihood)), evidence);
    }

    Verdict or(Kind other, double likelihood) {
        List<Choice> all = new ArrayList<>(choices);
        all.add(new Choice(other, likelihood));
        return new Verdict(List.copyOf(all), evidence);
    }

    /** The same with less trust. */
    Verdict weaker(double share, String why) {
        return new Verdict(
                choices.stream()
                        .map(c -> new Choice(c.kind(), c.likelihood() * share))
                        .toList(),
                evidence + why);
    }

    Kind kind() {
        return choices.get(0).kind();
    }

    double likelihood() {
        return choices.get(0).likelihood();
    }

    KindReading reading() {
        return new KindReading(choices, evidence);
    }
}
