package linewalk.samples.machine;

import linewalk.samples.symbol.Pen;

/** What a line carries. */
public enum LineKind {
    MAIN(Pen.WORKING),
    PILOT(Pen.PILOT),
    DRAIN(Pen.DRAIN);

    public final Pen pen;

    LineKind(Pen pen) {
        this.pen = pen;
    }

    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
