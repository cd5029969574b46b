package linewalk.renderer;

import java.util.Optional;
import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import linewalk.drawing.Line;
import linewalk.drawing.LineKind;
import linewalk.linker.Leg;
import linewalk.linker.step.PressureClass;

/** At which port a pump delivers, so that its triangle points there: as the path goes, else as the step tells. */
record PumpEnds(PrintJob job) {

    /** Empty where nothing tells, and for all that is no pump. */
    Optional<Boolean> delivers(Component c, String port, Line line) {
        if (c.kind() != Kind.PUMP || !c.positions().isEmpty() || line.kind() == LineKind.DRAIN) {
            return Optional.empty();
        }
        for (Leg leg : job.subject().legs()) {
            if (leg instanceof Leg.Through t && t.component().id().equals(c.id()) && t.out() != null) {
                return Optional.of(t.out().id().equals(port));
            }
        }
        PressureClass told = job.moment().classOf(line);
        if (told == PressureClass.INTAKE) {
            return Optional.of(false);
        }
        return told == PressureClass.SUPPLY ? Optional.of(true) : Optional.empty();
    }
}
