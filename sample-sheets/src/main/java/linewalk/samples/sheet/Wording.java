package linewalk.samples.sheet;

import java.util.List;
import linewalk.samples.machine.Flow;
import linewalk.samples.machine.Heading;
import linewalk.samples.machine.Reference;
import linewalk.samples.sheet.DrawnReference.Target;
import linewalk.samples.style.DraftingStyle;
import linewalk.samples.style.Grid;
import linewalk.samples.style.ReferenceForm;
import linewalk.samples.style.Zone;

/** What a reference says. */
final class Wording {
    private Wording() {}

    static String of(DraftingStyle style, Reference reference, List<Target> targets) {
        if (reference.isLetter()) {
            return reference.links().get(0) + " SH " + targets.get(0).sheet();
        }
        String text = targets.stream()
                .map(target -> one(style, reference, target))
                .reduce((a, b) -> a + style.references().separator() + b)
                .orElseThrow();
        return style.references() == ReferenceForm.DOTTED ? withArrow(reference, text) : text;
    }

    private static String one(DraftingStyle style, Reference reference, Target target) {
        String text = style.references().text(target.sheet(), zoneNamed(style.grid(), target.zone()));
        return style.references() == ReferenceForm.WORDS ? lead(reference.flow()) + " " + text : text;
    }

    /** The word before the sheet. */
    static String lead(Flow flow) {
        return switch (flow) {
            case OUT -> "TO";
            case IN -> "FROM";
            case UNKNOWN -> "SEE";
        };
    }

    /** The arrow stands between line and text and shows where the oil goes; texts at upright lines read upwards. */
    private static String withArrow(Reference reference, String text) {
        if (reference.flow() == Flow.UNKNOWN) {
            return text;
        }
        boolean forward = reference.heading() == Heading.EAST || reference.heading() == Heading.NORTH;
        String arrow = forward == (reference.flow() == Flow.OUT) ? "\u2192" : "\u2190";
        return forward ? arrow + " " + text : text + " " + arrow;
    }

    private static Zone zoneNamed(Grid grid, String name) {
        for (int column = 0; column < grid.columnLabels().size(); column++) {
            for (int row = 0; row < grid.rowLabels().size(); row++) {
                if (grid.zone(column, row).name().equals(name)) {
                    return grid.zone(column, row);
                }
            }
        }
        throw new IllegalArgumentException("no zone " + name);
    }
}
