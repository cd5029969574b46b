package linewalk.linker.step;

import java.util.List;
import java.util.Map;
import java.util.Set;
import linewalk.drawing.Component;
import linewalk.drawing.CycleChart;
import linewalk.drawing.Position;

/**
 * The machine in one step.
 *
 * @param positions by component id; a part whose position is not known is left out
 * @param classes by line id, one for each line of the set
 * @param running designations of the pumps that run
 * @param open shut-off valves that the chart says are open (true) or closed (false), by plain designation
 * @param unsettled parts that find no rest: each position brings about another
 */
public record StepState(
        CycleChart.Step step,
        Map<String, Position> positions,
        Map<String, PressureClass> classes,
        Set<String> running,
        Map<String, Boolean> open,
        List<Component> unsettled) {

    public StepState {
        positions = Map.copyOf(positions);
        classes = Map.copyOf(classes);
        running = Set.copyOf(running);
        open = Map.copyOf(open);
        unsettled = List.copyOf(unsettled);
    }

    /** Of a shut-off valve: as the chart says, else as drawn or listed. */
    public boolean isShut(Component shutOff) {
        return Facts.shut(shutOff, open);
    }

    /** Null where it is not known. */
    public Position position(Component c) {
        return positions.get(c.id());
    }
}
