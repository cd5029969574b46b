package linewalk.renderer;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import linewalk.drawing.LineKind;
import linewalk.linker.step.PressureClass;
import linewalk.renderer.ink.ChangeMark;
import linewalk.renderer.ink.LineStyle;
import linewalk.renderer.ink.Palette;

/** What lines mean: by pressure class where a step is shown, else by kind. Only those that the print has. */
final class LineLegend {

    private LineLegend() {}

    static List<Picture.Mark> of(Collection<LineLook> looks, Palette palette) {
        Set<PressureClass> classes = EnumSet.noneOf(PressureClass.class);
        Set<LineKind> kinds = EnumSet.noneOf(LineKind.class);
        for (LineLook look : looks) {
            if (look.pressure() == null) {
                kinds.add(look.kind());
            } else {
                classes.add(look.pressure());
            }
        }
        List<Picture.Mark> marks = new ArrayList<>();
        for (PressureClass p : classes) {
            marks.add(sample(Words.capital(p.word()) + ": " + meaning(p), palette.style(p)));
        }
        for (LineKind k : kinds) {
            String kind = Words.capital(k.name().toLowerCase(java.util.Locale.ROOT));
            marks.add(sample(kind + " line, as drawn at rest: may be under pressure", LineLook.style(k)));
        }
        return marks;
    }

    static Picture.Mark change() {
        return new Picture.Mark(
                "Line or valve that has changed since the step before",
                (c, x, y) -> ChangeMark.paint(c, x + 22, y + 10));
    }

    private static Picture.Mark sample(String meaning, LineStyle style) {
        return new Picture.Mark(meaning, style::paintSample);
    }

    static String meaning(PressureClass p) {
        return switch (p) {
            case SUPPLY -> "pressure of a pump or an accumulator";
            case INTENSIFIED -> "above pump pressure";
            case REDUCED -> "behind a reducing valve";
            case METERED -> "behind a throttle";
            case HELD -> "under load or gas, LOCKED IN or being let down; block and release before work";
            case RETURN -> "on its way to the tank";
            case INTAKE -> "from the tank to a pump";
            case DRAIN -> "leak oil to the tank";
            case PILOT -> "fed pilot oil";
            case IDLE -> "no pressure in this step";
            case UNKNOWN -> "not known: treat as under pressure";
        };
    }
}
