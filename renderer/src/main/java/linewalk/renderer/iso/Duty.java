package linewalk.renderer.iso;

import linewalk.drawing.LineKind;

/** What a port of a symbol is there for. */
public enum Duty {
    WORKING,
    /** A pilot port: its oil shifts or opens the part. */
    CONTROL,
    DRAIN;

    /** By its letter (ISO 9461), else by the line that meets it. */
    static Duty of(PortUse u) {
        if (Roles.isDrain(u.name())) {
            return DRAIN;
        }
        if (Roles.isPilot(u.name())) {
            return CONTROL;
        }
        return u.kind() == LineKind.DRAIN ? DRAIN : u.kind() == LineKind.PILOT ? CONTROL : WORKING;
    }
}
