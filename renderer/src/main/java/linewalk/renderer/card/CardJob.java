package linewalk.renderer.card;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import linewalk.drawing.Component;
import linewalk.drawing.CycleChart;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.Line;
import linewalk.drawing.Part;
import linewalk.drawing.Sheet;
import linewalk.linker.Excerpt;
import linewalk.linker.Leg;
import linewalk.linker.step.PressureClass;
import linewalk.linker.step.StepState;

/**
 * All that one job card is made of.
 *
 * @param shown what the print shows
 * @param legs none for a circuit
 * @param step null for the machine at rest, as drawn
 * @param state null where it was not worked out
 * @param parts rows of the parts list by designation
 */
public record CardJob(
        Head head,
        DrawingSet set,
        Excerpt shown,
        List<Leg> legs,
        CycleChart.Step step,
        StepState state,
        Map<String, Part> parts,
        Naming names) {

    /**
     * What stands at the head.
     *
     * @param subject what the print shows, in words
     * @param condition step or position, in words
     * @param sheets that the print was made of
     * @param doubts how many the print tells
     */
    public record Head(
            String set, String subject, String condition, LocalDate printed, List<Sheet> sheets, int doubts) {}

    boolean isPath() {
        return !legs.isEmpty();
    }

    /** "path" or "circuit". */
    String word() {
        return isPath() ? "path" : "circuit";
    }

    String address(Component c) {
        return set.address(c.page(), c.place());
    }

    /** Null where nothing tells. */
    PressureClass classOf(Line line) {
        return state == null ? null : state.classes().get(line.id());
    }

    /** "electric motor 0M1, 37 kW". */
    String calledWithSetting(Component c) {
        String setting = names.setting(c);
        return names.called(c) + (setting.isEmpty() ? "" : ", " + setting);
    }
}
