package linewalk.samples.machine;

import static linewalk.samples.machine.Misprint.Kind.FLOW_CLASH;
import static linewalk.samples.machine.Misprint.Kind.LABEL_DIFFERS;
import static linewalk.samples.machine.Misprint.Kind.NEXT_ZONE;
import static linewalk.samples.machine.Misprint.Kind.NOTHING_THERE;
import static linewalk.samples.machine.Misprint.Kind.NOT_RETURNED;
import static linewalk.samples.machine.Misprint.Kind.NO_SUCH_SHEET;

import java.util.List;
import java.util.Set;

/** The cycle chart and the errors made on purpose. */
final class Cycle {
    static final String STANDBY = "Standby, pins set";
    static final String WITHDRAW = "Withdraw lock pins";
    static final String RAISE = "Raise span";
    static final String LOWER = "Lower span";
    static final String FLAP_UP = "Raise end flap";
    static final String FLAP_DOWN = "Lower end flap";
    static final String HEAVE = "Heave winch";
    static final String VEER = "Veer winch";

    private Cycle() {}

    /** The class letters of the nets follow this order. */
    static List<State> states() {
        return List.of(
                new State(STANDBY, Set.of()),
                new State(WITHDRAW, Set.of("Y2")),
                new State(RAISE, Set.of("Y0", "Y1A", "Y2")),
                new State(LOWER, Set.of("Y0", "Y1B", "Y2")),
                new State(FLAP_UP, Set.of("Y3A")),
                new State(FLAP_DOWN, Set.of("Y3B")),
                new State(HEAVE, Set.of("Y4A", "Y5")),
                new State(VEER, Set.of("Y4B", "Y5")));
    }

    static List<Misprint> misprints() {
        return List.of(
                Misprint.at(NOTHING_THERE, "186", 3, "No reference stands in the zone printed, nor in one beside it."),
                Misprint.at(NO_SUCH_SHEET, "165", 7, "The sheet printed is not in the set."),
                new Misprint(NOT_RETURNED, "172", 3, "133", 6, "The reference in the zone printed belongs to L-133."),
                Misprint.at(NEXT_ZONE, "145", 10, "The mate stands in the zone beside the one printed."),
                Misprint.at(LABEL_DIFFERS, "161", 13, "The same line is L-161 on one sheet and L-116 on the other."),
                Misprint.at(
                        FLOW_CLASH, "136", 1, "Both ends say that the oil leaves the sheet; it flows to the tank."));
    }
}
