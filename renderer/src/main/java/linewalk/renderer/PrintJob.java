package linewalk.renderer;

import java.time.LocalDate;
import linewalk.drawing.CycleChart;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.Part;
import linewalk.linker.Trace;

/**
 * All that one print is made of.
 *
 * @param date printed, and the date of the file made
 */
public record PrintJob(SetFacts facts, Subject subject, Moment moment, PrintForm form, LocalDate date) {

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

    PrintJob in(PrintForm other) {
        return new PrintJob(facts, subject, moment, other, date);
    }
}
