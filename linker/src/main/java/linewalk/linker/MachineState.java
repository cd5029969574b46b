package linewalk.linker;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import linewalk.drawing.Component;
import linewalk.drawing.CycleChart;
import linewalk.drawing.Position;

/** Which position each valve is in: moved by what a step energises, else at rest. */
final class MachineState {

    private final Set<String> energised;
    private final String title;

    /** Null for the machine as drawn, at rest. */
    MachineState(CycleChart.Step step) {
        this.energised = step == null
                ? Set.of()
                : step.energised().stream().map(Names::plain).collect(Collectors.toSet());
        this.title = step == null ? null : step.title();
    }

    /** The position with most energised solenoids, else rest; null where it is not known. */
    Position of(Component c) {
        Position best = null;
        long most = 0;
        for (Position p : c.positions()) {
            long on = p.isRest()
                    ? 0
                    : p.by().stream()
                            .filter(s -> energised.contains(Names.plain(s)))
                            .count();
            if (on > most) {
                best = p;
                most = on;
            }
        }
        return best != null ? best : c.rest().orElse(null);
    }

    String words(Component c) {
        Position now = of(c);
        String state = now == null || now.isRest() ? "in the position at rest" : "with " + on(now) + " energised";
        return title == null ? state : state + " (step " + title + ")";
    }

    private String on(Position p) {
        List<String> on =
                p.by().stream().filter(s -> energised.contains(Names.plain(s))).toList();
        return String.join(" and ", on);
    }
}
