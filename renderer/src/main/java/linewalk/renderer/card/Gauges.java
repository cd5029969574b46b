package linewalk.renderer.card;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import linewalk.drawing.Line;
import linewalk.drawing.Part;
import linewalk.linker.step.PressureClass;

/** The test points and gauges on or beside what is shown, with what they should show and what they must stand. */
final class Gauges {

    /** Settings that tell how far pressure may rise. */
    private static final Set<Kind> LIMITING =
            Set.of(Kind.RELIEF_VALVE, Kind.COUNTERBALANCE_VALVE, Kind.UNLOADING_VALVE, Kind.PUMP);

    private final CardJob job;
    private final Surroundings around;

    /**
     * One place to measure at.
     *
     * @param tag as drawn or listed
     * @param where empty where it is only listed
     * @param of the parts that the parts list tests there, or empty
     * @param oil what it does there in this step, in a word; empty where nothing is told
     * @param expected in bar, or empty
     * @param range of the gauge, or that it is not known
     * @param why what the range follows from
     */
    record Gauge(String tag, String where, String of, String oil, OptionalDouble expected, String range, String why) {}

    private Gauges(CardJob job, Surroundings around) {
        this.job = job;
        this.around = around;
    }

    static List<Gauge> of(CardJob job, Surroundings around) {
        Gauges gauges = new Gauges(job, around);
        List<Gauge> all = new ArrayList<>();
        List<Component> drawn = points(around);
        drawn.forEach(c -> all.add(gauges.drawn(c)));
        Set<String> known = drawn.stream().map(c -> Pairs.plain(c.tag())).collect(Collectors.toSet());
        for (String tag : gauges.listed()) {
            if (known.add(Pairs.plain(tag))) {
                all.add(gauges.elsewhere(tag));
            }
        }
        return all;
    }

    /** Those drawn. */
    static List<Component> points(Surroundings around) {
        List<Component> points = new ArrayList<>(around.tapped(Kind.TEST_POINT));
        points.addAll(around.tapped(Kind.GAUGE));
        points.sort(Comparator.comparing((Component c) -> c.tag().replaceAll("\\d+", ""))
                .thenComparing(c -> c.tag().replaceAll("\\D+", ""), Comparator.comparingInt(String::length))
                .thenComparing(Component::tag));
        return points;
    }

    /** Test points that the parts list names for parts shown. */
    private Set<String> listed() {
        Set<String> tags = new LinkedHashSet<>();
        for (Component c : job.shown().parts()) {
            Part part = job.parts().get(c.tag());
            if (part != null && part.testPoint() != null && !part.testPoint().isBlank()) {
                tags.add(part.testPoint().strip());
            }
        }
        return tags;
    }

    private String testedThere(String tag) {
        return job.shown().parts().stream()
                .map(Component::tag)
                .filter(t -> !Pairs.plain(t).equals(Pairs.plain(tag)))
                .filter(t -> job.parts().get(t) != null
                        && job.parts().get(t).testPoint() != null
                        && Pairs.plain(job.parts().get(t).testPoint()).equals(Pairs.plain(tag)))
                .distinct()
                .collect(Collectors.joining(", "));
    }

    private OptionalDouble expected(String tag) {
        if (job.step() == null) {
            return OptionalDouble.empty();
        }
        return job.step().said().pressuresBar().entrySet().stream()
                .filter(e -> Pairs.plain(e.getKey()).equals(Pairs.plain(tag)))
                .mapToDouble(Map.Entry::getValue)
                .findFirst();
    }

    private Gauge drawn(Component point) {
        OptionalDouble expected = expected(point.tag());
        Limit limit = limit(point);
        String oil = oil(point);
        String coarse = oil.equals(PressureClass.RETURN.word()) ? "; return oil in this step, so it reads low" : "";
        return new Gauge(
                point.tag(),
                job.address(point),
                testedThere(point.tag()),
                oil,
                expected,
                range(expected, limit),
                limit.why() + coarse);
    }

    /** Not on a line of what is shown, or not drawn at all. */
    private Gauge elsewhere(String tag) {
        return job.set().components().stream()
                .filter(c -> Pairs.plain(c.tag()).equals(Pairs.plain(tag)))
                .findFirst()
                .map(this::drawn)
                .orElseGet(() -> undrawn(tag));
    }

    private Gauge undrawn(String tag) {
        OptionalDouble expected = expected(tag);
        Limit none = new Limit(OptionalDouble.empty(), false, "named in the parts list, not drawn");
        return new Gauge(tag, "", testedThere(tag), "", expected, range(expected, none), none.why());
    }

    private String oil(Component point) {
        for (Line l : around.linesAt(point)) {
            PressureClass c = job.classOf(l);
            if (c != null) {
                return c == PressureClass.UNKNOWN ? "not known" : c.word();
            }
        }
        return "";
    }

    /**
     * How high the pressure may rise.
     *
     * @param bar empty where no setting tells
     * @param sure nothing was found that may bring more
     */
    private record Limit(OptionalDouble bar, boolean sure, String why) {}

    private Limit limit(Component point) {
        Component highest = null;
        double most = 0;
        Set<String> untold = new LinkedHashSet<>();
        Set<Component> circuit = around.circuitOf(point);
        boolean relieved = false;
        for (Component c : circuit) {
            OptionalDouble bar =
                    LIMITING.contains(c.kind()) ? Pressures.bar(job.names().setting(c)) : OptionalDouble.empty();
            if (bar.isPresent() && bar.getAsDouble() > most) {
                most = bar.getAsDouble();
                highest = c;
            }
            relieved |= c.kind() == Kind.RELIEF_VALVE && bar.isPresent();
            if (c.kind() == Kind.RELIEF_VALVE && bar.isEmpty()) {
                untold.add("setting of " + c.tag() + " not known");
            }
        }
        if (!relieved) {
            untold.add("no relief setting known");
        }
        untold.addAll(raising(point, circuit));
        String from = highest == null
                ? ""
                : highest.tag() + ", " + Pressures.said(job.names().setting(highest), most);
        String doubt = String.join("; ", untold);
        return new Limit(
                highest == null ? OptionalDouble.empty() : OptionalDouble.of(most),
                untold.isEmpty(),
                from + (from.isEmpty() || doubt.isEmpty() ? "" : "; ") + doubt);
    }

    /** What may bring more pressure than any relief in the pump's line lets pass. */
    private Set<String> raising(Component point, Set<Component> circuit) {
        Set<String> raising = new LinkedHashSet<>();
        for (Component c : around.neighbours(point)) {
            if (c.kind().isActuator()) {
                raising.add("load or area ratio of " + c.tag() + " may raise it");
            }
        }
        circuit.stream().filter(c -> c.kind() == Kind.INTENSIFIER).forEach(c -> raising.add(c.tag() + " may raise it"));
        return raising;
    }

    private static String range(OptionalDouble expected, Limit limit) {
        if (limit.bar().isEmpty() && expected.isEmpty()) {
            return "not known: ask";
        }
        double highest = Math.max(limit.bar().orElse(0), expected.orElse(0));
        OptionalDouble upper = GaugeRange.of(highest);
        if (upper.isEmpty()) {
            return "beyond 0 to 1000 bar: ask";
        }
        String range = "0 to " + Pressures.words(upper.getAsDouble());
        return limit.sure() ? range : "at least " + range + ": ask";
    }
}
