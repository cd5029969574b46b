package linewalk.linker;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import linewalk.drawing.Component;
import linewalk.drawing.CycleChart;
import linewalk.drawing.Port;
import linewalk.drawing.UserError;

/** Finds what people name; what is not there is answered with what looks most like it. */
final class Designations {

    static final String TANK = "TANK";
    private static final int SUGGESTED = 3;

    private final Circuit circuit;

    Designations(Circuit circuit) {
        this.circuit = circuit;
    }

    /** A word such as {@code P1} or {@code P1:P}. */
    record Named(List<Component> drawings, String port) {
        String tag() {
            return drawings.get(0).tag();
        }
    }

    Named find(String word) {
        int colon = word.indexOf(':');
        String tag = colon < 0 ? word : word.substring(0, colon);
        List<Component> drawings = circuit.tagged(Names.plain(tag));
        if (drawings.isEmpty() && Names.plain(tag).equals(TANK)) {
            drawings = circuit.tanks();
        }
        if (drawings.isEmpty() || Names.plain(tag).isEmpty()) {
            throw new UserError("there is no component " + tag + " in the set" + suggestion(tag));
        }
        String port = colon < 0 ? null : word.substring(colon + 1).strip();
        return new Named(drawings, port == null ? null : port(drawings, port));
    }

    /** A tank's designation may belong to one of several tanks drawn; the word TANK stands for all. */
    List<Component> tanks() {
        List<Component> tanks = circuit.tanks();
        if (tanks.isEmpty()) {
            throw new UserError(
                    "there is no tank in the set; name the end with --to, or mark a tank with a component tag");
        }
        return tanks;
    }

    private static String port(List<Component> drawings, String name) {
        List<Port> ports = drawings.stream().flatMap(c -> c.ports().stream()).toList();
        if (ports.stream().noneMatch(p -> name.equalsIgnoreCase(p.name()))) {
            String known = ports.stream()
                    .map(Port::name)
                    .filter(n -> n != null)
                    .distinct()
                    .sorted()
                    .collect(Collectors.joining(", "));
            throw new UserError(drawings.get(0).tag() + " has no port " + name
                    + (known.isEmpty() ? "; none of its ports is named" : "; it has " + known));
        }
        return name;
    }

    private String suggestion(String tag) {
        String plain = Names.plain(tag);
        TreeSet<String> tags = circuit.set.components().stream()
                .map(Component::tag)
                .filter(t -> !Names.plain(t).isEmpty())
                .collect(Collectors.toCollection(TreeSet::new));
        List<String> near = tags.stream()
                .filter(t -> Names.edits(plain, Names.plain(t)) <= Math.max(1, plain.length() / 2))
                .sorted(Comparator.comparingInt(t -> Names.edits(plain, Names.plain(t))))
                .limit(SUGGESTED)
                .toList();
        if (tags.isEmpty()) {
            return ": no component was read; add them with component tags";
        }
        return near.isEmpty() ? "" : "; do you mean " + String.join(", ", near) + "?";
    }

    /** Null for a machine at rest. */
    static CycleChart.Step step(CycleChart chart, String word) {
        if (word == null) {
            return null;
        }
        Optional<CycleChart.Step> step = chart.find(word);
        if (step.isPresent()) {
            return step.get();
        }
        if (chart.steps().isEmpty()) {
            throw new UserError("there is no step " + word + ": the set has no cycle chart");
        }
        String near = chart.steps().stream()
                .min(Comparator.comparingInt(s -> Names.edits(Names.plain(word), Names.plain(s.title()))))
                .map(CycleChart.Step::title)
                .orElseThrow();
        throw new UserError("there is no step " + word + " in the cycle chart; do you mean " + near + "?");
    }
}
