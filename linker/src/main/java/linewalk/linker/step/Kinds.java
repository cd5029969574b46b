package linewalk.linker.step;

import java.util.EnumSet;
import java.util.Set;
import linewalk.drawing.Kind;

/** Parts by what they do to the oil. */
final class Kinds {

    /** Joins nothing inside. */
    static final Set<Kind> ENDS = EnumSet.of(
            Kind.TANK, Kind.ACCUMULATOR, Kind.GAUGE, Kind.SWITCH, Kind.BRAKE, Kind.PLUG, Kind.ELECTRIC_MOTOR);
    /** Oil passes either way; no valve. */
    static final Set<Kind> PIPES =
            EnumSet.of(Kind.FILTER, Kind.STRAINER, Kind.COOLER, Kind.HEATER, Kind.HOSE, Kind.SWIVEL, Kind.TEST_POINT);
    /** What they join depends on where they stand. */
    static final Set<Kind> SWITCHING =
            EnumSet.of(Kind.DIRECTIONAL_VALVE, Kind.PROPORTIONAL_VALVE, Kind.CARTRIDGE_VALVE);
    /** Opened by numbers, not by the state: taken as shut, whatever their pilot line says. */
    static final Set<Kind> BY_PRESSURE = EnumSet.of(Kind.RELIEF_VALVE, Kind.UNLOADING_VALVE, Kind.SEQUENCE_VALVE);
    /** Held shut by the oil they hold until their pilot line opens them. */
    static final Set<Kind> PILOT_OPENED =
            EnumSet.of(Kind.PILOT_CHECK_VALVE, Kind.COUNTERBALANCE_VALVE, Kind.PREFILL_VALVE, Kind.DECOMPRESSION_VALVE);

    private Kinds() {}

    /** Seals against a line that stands under pressure. */
    static boolean seals(Kind k) {
        return !ENDS.contains(k) && !PIPES.contains(k) && k != Kind.PUMP || k == Kind.ACCUMULATOR || k == Kind.BRAKE;
    }
}
