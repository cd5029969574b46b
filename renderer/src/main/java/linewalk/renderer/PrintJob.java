package linewalk.renderer;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Set;
import linewalk.drawing.CycleChart;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.Part;
import linewalk.linker.Trace;

/**
 * All that one print is made of.
 *
 * @param hidden layers that are left out
 * @param date printed, and the date of the file made
 */
public record PrintJob(
        SetFacts facts, Subject subject, Moment moment, Paper paper, Look look, Set<Layer> hidden, LocalDate date) {

    public PrintJob {
        hidden = hidden.isEmpty() ? EnumSet.noneOf(Layer.class) : EnumSet.copyOf(hidden);
    }

    DrawingSet set() {
        return facts.set();
    }

    /** Null where the print shows a circuit. */
    Trace trace() {
        return subject.trace();
    }

    /** Null for the machine at rest, as drawn. */
    CycleChart.Step step() {
        return moment.step();
    }

    Part part(String tag) {
        return facts.parts().get(tag);
    }
}
