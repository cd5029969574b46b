package linewalk.renderer.ink;

import java.awt.Color;
import java.util.Locale;
import linewalk.drawing.UserError;
import linewalk.linker.step.PressureClass;

/**
 * Colours of the pressure classes. Weight and pattern are the same in every palette, so that a copy without colour
 * reads the same whichever was chosen.
 */
public enum Palette {
    /** Our own: any two classes differ for every kind of colour-blindness, and all are dark enough to copy. */
    OWN {
        @Override
        Color color(PressureClass c) {
            return new Color(
                    switch (c) {
                        case SUPPLY -> 0x0538EF;
                        case INTENSIFIED -> 0x790399;
                        case REDUCED -> 0xBD640F;
                        case METERED -> 0x524800;
                        case HELD -> 0xBD0032;
                        case RETURN -> 0x1381C8;
                        case INTAKE -> 0x127A52;
                        case DRAIN -> 0x3F2005;
                        case PILOT -> 0x06545D;
                        case IDLE -> 0x353535;
                        case UNKNOWN -> 0xA24D90;
                    });
        }
    },
    /**
     * The hues of the most widely printed key, which is said to follow ANSI Y32.10: intensified violet, operating red,
     * reduced orange, metered yellow, return blue, intake green; as dark as a copy needs. It names no others: these are
     * our own. Hues alone are not told apart by everybody.
     */
    PUBLISHED {
        @Override
        Color color(PressureClass c) {
            return switch (c) {
                case INTENSIFIED -> new Color(0x7A1FA8);
                case SUPPLY -> new Color(0xD00000);
                case REDUCED -> new Color(0xD05A00);
                case METERED -> new Color(0x8C7800);
                case RETURN -> new Color(0x0060D0);
                case INTAKE -> new Color(0x007F2E);
                default -> OWN.color(c);
            };
        }
    };

    abstract Color color(PressureClass c);

    /** The palette of this name in a set's settings; our own where none is chosen. */
    public static Palette named(String name) {
        if (name == null) {
            return OWN;
        }
        for (Palette p : values()) {
            if (p.name().toLowerCase(Locale.ROOT).equals(name)) {
                return p;
            }
        }
        throw new UserError("there is no palette '" + name + "'; in set.json, \"palette\" is \"own\" or \"published\"");
    }

    /** How a line of this class is drawn. */
    public LineStyle style(PressureClass c) {
        return new LineStyle(color(c), widthPt(c), pattern(c));
    }

    /**
     * Plain lines are told by weight, each about twice the next, as line widths of ISO 128 are (from memory); a little
     * more, so that no rounding to the dots of a copy makes two alike.
     */
    private static double widthPt(PressureClass c) {
        return switch (c) {
            case HELD, INTENSIFIED -> 4;
            case SUPPLY -> 3.6;
            case REDUCED -> 2.2;
            case RETURN -> 2;
            case INTAKE -> 1.4;
            case DRAIN, PILOT, UNKNOWN -> 1.2;
            case METERED -> 1;
            case IDLE -> 0.8;
        };
    }

    private static LinePattern pattern(PressureClass c) {
        return switch (c) {
            case SUPPLY, RETURN, IDLE -> LinePattern.SOLID;
            case INTENSIFIED -> LinePattern.RAILS;
            case HELD -> LinePattern.BARS;
            case REDUCED -> LinePattern.BEADS;
            case METERED -> LinePattern.SWELLS;
            case INTAKE -> LinePattern.RINGS;
            case DRAIN -> LinePattern.SHORT_DASHES;
            case PILOT -> LinePattern.LONG_DASHES;
            case UNKNOWN -> LinePattern.ZIGZAG;
        };
    }
}
