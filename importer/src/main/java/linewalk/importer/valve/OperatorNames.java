package linewalk.importer.valve;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import linewalk.importer.lettering.Label;

/** The designation that stands beside an operator: {@code Y1A}, {@code SOL 1}, {@code 1YA}, {@code a}. */
final class OperatorNames {

    /** The usual forms, then letters and a number in either order, then a single letter: the first that is found wins. */
    private static final List<Pattern> FORMS = List.of(
            Pattern.compile(
                    "(?i)-?(?:\\d{1,2}-(?=\\d))?\\d{0,3}(?:SOL(?:ENOID)?|MB|Y[AV]?|YVH?|EV|SV|S|DT)\\.?[- ]?\\d{1,4}(?:[.-]\\d{1,2})?[- ]?[A-Z]?"
                            + "|SOL(?:ENOID)?\\.?[- ]?[A-Z0-9]{1,4}|\\d{0,3}Y[AB]|\\d{1,3}(?:DT|EV|SV)[A-Z]?"),
            Pattern.compile("(?i)-?\\d{0,3}[A-Z]{1,4}\\.?[- ]?\\d{1,4}(?:[.-]\\d{1,2})?[- ]?[A-Z]?|\\d{1,3}[A-Z]{1,3}"),
            Pattern.compile("[abcdABCD]"));

    /** A voltage, a size or a setting is no name. */
    private static final Pattern VALUE = Pattern.compile(
            "(?i)[~=]?\\d+ ?(?:V(?:DC|AC)?|W|A|MA|HZ|BAR|PSI|MPA|KPA|L|GPM|LPM|MM|CC)|(?:NG|DN|NW|NB|G|R|M|SIZE|CETOP) ?\\d.*");

    /** Another reading of letters that were drawn counts where it makes a usual name and is this likely, against the first. */
    private static final double LIKELY = 0.3;

    /** How far off it may stand, in text sizes; names in the usual forms stand further off too. */
    private static final double REACH = 2.2;

    private static final double USUAL_REACH = 3.5;

    private final List<Label> labels;
    private final Lie lie;
    private final Set<Label> used = new HashSet<>();

    /** @param labels those that say nothing else */
    OperatorNames(List<Label> labels, Lie lie) {
        this.labels = labels;
        this.lie = lie;
    }

    Optional<String> of(Operator o, Operator other) {
        Optional<String> usual = of(o, other, USUAL_REACH, l -> name(l.text(), FORMS.get(0)))
                .or(() -> of(o, other, REACH, OperatorNames::read));
        for (Pattern form : FORMS.subList(1, FORMS.size())) {
            usual = usual.or(() -> of(o, other, REACH, l -> name(l.text(), form)));
        }
        return usual;
    }

    private Optional<String> of(Operator o, Operator other, double reach, Function<Label, Optional<String>> name) {
        Optional<Label> found = labels.stream()
                .filter(l -> !used.contains(l) && name.apply(l).isPresent())
                .filter(l -> gap(o, l) < reach * l.sizePt() && gap(o, l) <= gap(other, l))
                .min(Comparator.comparingDouble(l -> gap(o, l)));
        found.ifPresent(used::add);
        return found.flatMap(name);
    }

    /** The likeliest reading that is a usual name. */
    private static Optional<String> read(Label l) {
        double first = l.readings().isEmpty() ? 0 : l.readings().get(0).likelihood();
        return l.readings().stream()
                .filter(r -> r.likelihood() > LIKELY * first)
                .flatMap(r -> name(r.text(), FORMS.get(0)).stream())
                .findFirst();
    }

    private double gap(Operator o, Label l) {
        return o.box().distancePt(lie.local(l.box()));
    }

    /** What of a text is a name: all of it, or its first word before a remark such as a voltage. */
    private static Optional<String> name(String text, Pattern form) {
        if (VALUE.matcher(text).matches()) {
            return Optional.empty();
        }
        String first = text.split(" ", 2)[0];
        return form.matcher(text).matches()
                ? Optional.of(text)
                : form.matcher(first).matches() ? Optional.of(first) : Optional.empty();
    }
}
