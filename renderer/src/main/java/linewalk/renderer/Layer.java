package linewalk.renderer;

import linewalk.drawing.Line;
import linewalk.drawing.LineKind;
import linewalk.linker.step.PressureClass;

/** Kinds of line that a print can be read without; a viewer shows or hides them. */
public enum Layer {
    SUCTION("suction lines"),
    DRAIN("drain lines"),
    PILOT("pilot lines");

    private final String words;

    Layer(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }

    /** Null for a line that always shows. */
    static Layer of(Line line, PressureClass pressure) {
        if (line.kind() == LineKind.PILOT) {
            return PILOT;
        }
        if (line.kind() == LineKind.DRAIN) {
            return DRAIN;
        }
        return pressure == PressureClass.INTAKE ? SUCTION : null;
    }
}
