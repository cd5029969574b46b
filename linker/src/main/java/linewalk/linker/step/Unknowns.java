package linewalk.linker.step;

import linewalk.drawing.Kind;
import linewalk.drawing.Passage;

/** Whether anything of a set is taken on a guess: untold passages, loose ends, pump sides. */
final class Unknowns {

    private Unknowns() {}

    static boolean any(Net net, Pumps pumps) {
        for (int i = 0; i < net.size; i++) {
            if (net.loose[i]) {
                return true;
            }
        }
        return pumps.drawn.stream()
                        .anyMatch(s ->
                                s.guessed() && s.part().component().positions().isEmpty())
                || net.parts.stream().anyMatch(p -> untold(p, pumps));
    }

    private static boolean untold(Part p, Pumps pumps) {
        if (!p.component().positions().isEmpty()) {
            return Pilots.unread(p);
        } else if (Kinds.ENDS.contains(p.kind()) || p.kind().isActuator() || p.through().length < 2) {
            return false;
        }
        return switch (p.kind()) {
            case PUMP, RELIEF_VALVE, UNLOADING_VALVE -> false;
            case CHECK_VALVE -> pumps.checkInlet[p.index()] < 0;
            case SHUT_OFF_VALVE, ORIFICE -> p.through().length > 2;
            case REDUCING_VALVE -> p.named("P") < 0 || p.named("A") < 0;
            case INTENSIFIER -> p.named("P") < 0 || p.named("H") < 0;
            default -> !Kinds.PIPES.contains(p.kind()) || p.through().length > 2;
        };
    }

    /** Has a passage that a pilot line opens without another position. */
    static boolean opensByPilot(Part p) {
        if (Kinds.PILOT_OPENED.contains(p.kind()) && p.component().positions().isEmpty()) {
            return p.kind() != Kind.PREFILL_VALVE;
        }
        return p.component().positions().stream()
                .flatMap(x -> x.passages().stream())
                .anyMatch(x -> x.opens() == Passage.Opens.PILOT);
    }
}
