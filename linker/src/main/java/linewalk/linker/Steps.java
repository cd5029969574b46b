package linewalk.linker;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import linewalk.drawing.Component;
import linewalk.drawing.CycleChart;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.Finding;
import linewalk.drawing.Rule;
import linewalk.linker.step.LineFlows;
import linewalk.linker.step.PumpPorts;
import linewalk.linker.step.StepSolver;
import linewalk.linker.step.StepState;

/** The machine in each step of its cycle chart: which position its valves are in and what the oil does in each line. */
public final class Steps {

    private final DrawingSet set;
    private final CycleChart chart;
    private final StepSolver solver;

    public Steps(DrawingSet set, CycleChart chart) {
        this(new Circuit(set), chart);
    }

    Steps(Circuit circuit, CycleChart chart) {
        this.set = circuit.set;
        this.chart = chart;
        PumpSides pumps = new PumpSides(circuit);
        this.solver = new StepSolver(set, chart, p -> sides(pumps.of(p)));
    }

    private static PumpPorts.Sides sides(PumpSides.Sides s) {
        return new PumpPorts.Sides(s.pressure(), s.suction(), s.guessed());
    }

    /** All steps in the chart's order; empty where the set has no chart. */
    public List<StepState> all() {
        return solver.all();
    }

    /** @throws linewalk.drawing.UserError for a step that the chart does not have */
    public StepState get(String step) {
        return solver.state(Designations.step(chart, step));
    }

    /**
     * Which way oil surely goes in each line in a step.
     *
     * @throws linewalk.drawing.UserError for a step that the chart does not have
     */
    public LineFlows flows(String step) {
        return solver.flows(Designations.step(chart, step));
    }

    /**
     * Ids of the lines that a pump feeds in a step, over nothing that is guessed; empty where it stands still.
     *
     * @throws linewalk.drawing.UserError for a step that the chart does not have
     */
    public Set<String> fedBy(String step, String pump) {
        return solver.fedBy(Designations.step(chart, step), pump);
    }

    /** The set with what its steps add to its findings: parts that come to no rest in a step. */
    public DrawingSet withFindings() {
        List<Finding> findings = new ArrayList<>(set.findings());
        all().stream().filter(s -> !s.unsettled().isEmpty()).forEach(s -> findings.add(unsettled(s)));
        findings.sort(FindingOrder.BY_PLACE);
        return new DrawingSet(
                set.sheets(), set.references(), set.components(), set.enclosures(), set.lines(), findings);
    }

    static Finding unsettled(StepState state) {
        List<Component> parts = state.unsettled().stream()
                .sorted(Comparator.comparing(Component::tag))
                .toList();
        List<String> tags = parts.stream().map(Component::tag).distinct().toList();
        String names = tags.stream().collect(Collectors.joining(", "));
        return new Finding(
                Rule.UNSETTLED,
                parts.get(0).page(),
                parts.get(0).place(),
                List.of(),
                tags,
                "In step " + state.step().title() + " the pilot lines of " + names
                        + " move them round and round: each position brings about another.",
                "look whether their pilot lines and positions were read right, and tell them with tags");
    }
}
