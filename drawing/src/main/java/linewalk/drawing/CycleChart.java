package linewalk.drawing;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The machine's cycle: a step a row. A pump that no column names runs; a solenoid that no column names is not
 * energised. "Power off" and "running, nothing energised" are two steps.
 *
 * @param solenoids designations of the columns that are on or off, in the chart's order: solenoids, levers, pumps or
 *     their motors; which is which is told by the drawings
 */
public record CycleChart(List<String> solenoids, List<Step> steps) {

    public static final CycleChart NONE = new CycleChart(List.of(), List.of());

    /** What an actuator does in a step. */
    public enum Motion {
        EXTEND,
        RETRACT,
        HOLD,
        END_OF_STROKE
    }

    /** Which way the load moves an actuator if nothing holds it. */
    public enum Load {
        EXTEND,
        RETRACT,
        NONE
    }

    /**
     * What a step says beside on and off, by designation; what is not said is left out.
     *
     * @param positions hand, lever and cam positions by valve: a word of the position's {@code by}, or {@code rest}
     * @param open shut-off valves: true open, false closed
     * @param pressuresBar expected pressures by test point
     */
    public record Said(
            Map<String, String> positions,
            Map<String, Boolean> open,
            Map<String, Motion> motions,
            Map<String, Load> loads,
            Map<String, Double> pressuresBar) {

        public static final Said NOTHING = new Said(Map.of(), Map.of(), Map.of(), Map.of(), Map.of());

        public Said {
            positions = inOrder(positions);
            open = inOrder(open);
            motions = inOrder(motions);
            loads = inOrder(loads);
            pressuresBar = inOrder(pressuresBar);
        }

        /** As the chart has its columns: what is told of them comes in one order in every run. */
        private static <T> Map<String, T> inOrder(Map<String, T> cells) {
            return Collections.unmodifiableMap(new LinkedHashMap<>(cells));
        }
    }

    /**
     * One step.
     *
     * @param number what stands in the column {@code step}
     * @param name null where the chart has no such column
     * @param energised those of the on-and-off columns that are on
     */
    public record Step(String number, String name, Set<String> energised, Said said) {
        public Step {
            energised = Collections.unmodifiableSet(new LinkedHashSet<>(energised));
        }

        public Step(String number, String name, Set<String> energised) {
            this(number, name, energised, Said.NOTHING);
        }

        public String title() {
            return name == null ? number : name;
        }
    }

    public CycleChart {
        solenoids = List.copyOf(solenoids);
        steps = List.copyOf(steps);
    }

    /** By number or name, whatever the case. */
    public Optional<Step> find(String word) {
        return steps.stream()
                .filter(s -> word.equalsIgnoreCase(s.number()) || word.equalsIgnoreCase(s.name()))
                .findFirst();
    }

    /** Designations of all columns, whatever they say. */
    public Set<String> designations() {
        Set<String> all = new LinkedHashSet<>(solenoids);
        for (Step s : steps) {
            all.addAll(s.said.positions.keySet());
            all.addAll(s.said.open.keySet());
            all.addAll(s.said.motions.keySet());
            all.addAll(s.said.loads.keySet());
            all.addAll(s.said.pressuresBar.keySet());
        }
        return all;
    }
}
