package linewalk.renderer;

import java.util.EnumSet;
import java.util.Set;
import linewalk.drawing.Line;
import linewalk.drawing.LineKind;
import linewalk.linker.step.PressureClass;
import linewalk.renderer.ink.LinePattern;
import linewalk.renderer.ink.LineStyle;
import linewalk.renderer.ink.Palette;
import linewalk.renderer.iso.Duty;
import linewalk.renderer.sheet.Ink;

/**
 * How a line is shown: by what the oil does in it where that is known, else by its kind as drawn.
 *
 * @param pressure null where the print shows no step
 */
record LineLook(PressureClass pressure, LineKind kind, boolean joinedByHand, boolean changed, Layer layer) {

    private static final Set<PressureClass> FLOWS = EnumSet.of(
            PressureClass.SUPPLY,
            PressureClass.REDUCED,
            PressureClass.METERED,
            PressureClass.RETURN,
            PressureClass.INTAKE);

    private static final LineStyle WORKING = new LineStyle(Ink.PATH, 2.2, LinePattern.SOLID);
    private static final LineStyle PILOT = new LineStyle(Ink.BLACK, 1.2, LinePattern.LONG_DASHES);
    private static final LineStyle DRAIN = new LineStyle(Ink.BLACK, 1.2, LinePattern.SHORT_DASHES);

    static LineLook of(Line line, Moment moment) {
        PressureClass pressure = moment.classOf(line);
        return new LineLook(
                pressure, line.kind(), line.runs().isEmpty(), moment.hasChanged(line), Layer.of(line, pressure));
    }

    /** Of the part of a line that leads to control or drain ports alone: fine dashes, unless its pressure is a danger. */
    LineStyle style(Palette palette, Duty duty) {
        LineStyle whole = style(palette);
        boolean plain = pressure == null ? kind == LineKind.WORKING : FLOWS.contains(pressure);
        return switch (plain ? duty : Duty.WORKING) {
            case WORKING -> whole;
            case CONTROL -> new LineStyle(whole.color(), PILOT.widthPt(), PILOT.pattern());
            case DRAIN -> new LineStyle(whole.color(), DRAIN.widthPt(), DRAIN.pattern());
        };
    }

    LineStyle style(Palette palette) {
        return pressure == null ? style(kind) : palette.style(pressure);
    }

    static LineStyle style(LineKind kind) {
        return switch (kind) {
            case WORKING -> WORKING;
            case PILOT -> PILOT;
            case DRAIN -> DRAIN;
        };
    }
}
