package linewalk.linker.step;

import java.util.Locale;

/** What the oil in a line does in one step, told by the state of the machine alone. Unknown is never printed as idle. */
public enum PressureClass {
    SUPPLY,
    INTENSIFIED,
    REDUCED,
    METERED,
    HELD,
    RETURN,
    INTAKE,
    DRAIN,
    PILOT,
    IDLE,
    UNKNOWN;

    /** The word used in files. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Pressure stands in the line, or may. */
    boolean pressed() {
        return this == SUPPLY || this == INTENSIFIED || this == REDUCED || this == METERED || this == HELD;
    }
}
