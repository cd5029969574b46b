package linewalk.linker.step;

import java.util.List;
import linewalk.drawing.Component;
import linewalk.drawing.Port;

/** Tells a pump's sides apart. */
@FunctionalInterface
public interface PumpPorts {

    /** @param guessed nothing told the sides apart */
    record Sides(List<Port> outlets, List<Port> suctions, boolean guessed) {}

    Sides of(Component pump);
}
