package linewalk.drawing;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The machine's cycle: a step a row, a solenoid a column.
 *
 * @param solenoids designations in the order of the chart's columns
 */
public record CycleChart(List<String> solenoids, List<Step> steps) {

    public static final CycleChart NONE = new CycleChart(List.of(), List.of());

    /**
     * One step.
     *
     * @param number what stands in the column {@code step}
     * @param name null where the chart has no such column
     * @param energised solenoids
     */
    public record Step(String number, String name, Set<String> energised) {
        public Step {
            energised = Set.copyOf(energised);
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
}
