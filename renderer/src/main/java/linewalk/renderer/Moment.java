package linewalk.renderer;

import linewalk.drawing.Component;
import linewalk.drawing.CycleChart;
import linewalk.drawing.Line;
import linewalk.drawing.Position;
import linewalk.linker.Excerpt;
import linewalk.linker.step.LineFlows;
import linewalk.linker.step.PressureClass;
import linewalk.linker.step.StepState;

/**
 * The moment of the machine's work that a print shows.
 *
 * @param step null for the machine at rest, as drawn
 * @param state null where it was not worked out
 * @param before the state in the step before, or null
 * @param flows which way oil goes in the lines, or null
 */
public record Moment(CycleChart.Step step, StepState state, StepState before, LineFlows flows) {

    public static final Moment AT_REST = named(null);

    /** Of which nothing but its name is told. */
    public static Moment named(CycleChart.Step step) {
        return new Moment(step, null, null, null);
    }

    public Moment with(LineFlows told) {
        return new Moment(step, state, before, told);
    }

    /** Null where nothing tells. */
    PressureClass classOf(Line line) {
        return state == null ? null : state.classes().get(line.id());
    }

    /** Where both are known and differ. */
    boolean hasChanged(Line line) {
        if (state == null || before == null) {
            return false;
        }
        PressureClass was = before.classes().get(line.id());
        return was != null && was != state.classes().get(line.id());
    }

    boolean hasChanged(Excerpt shown) {
        return shown.lines().stream().anyMatch(this::hasChanged)
                || shown.parts().stream().anyMatch(this::hasChanged);
    }

    boolean hasChanged(Component c) {
        if (state == null || before == null) {
            return false;
        }
        Position was = before.position(c);
        Position now = state.position(c);
        return was != null && now != null && !was.equals(now);
    }
}
