package linewalk.samples.random;

import java.util.List;
import java.util.Map;
import linewalk.samples.machine.Flow;
import linewalk.samples.machine.Heading;
import linewalk.samples.machine.Reference;
import linewalk.samples.machine.SheetPlan;
import linewalk.samples.style.DraftingStyle;
import linewalk.samples.style.DraftingStyle.LabelPlace;
import linewalk.samples.symbol.Spot;

/**
 * A reference whose pipes have no names yet: {@code targets} of them go on from here. {@code number} tells it from the
 * sheet's others.
 */
record Goes(
        int number, Spot end, Heading way, Flow flow, boolean letter, int targets, boolean labelled, boolean sized) {
    private static final double ASIDE = 0.6;

    String owner() {
        return "reference " + number;
    }

    Reference on(SheetPlan sheet, Map<Goes, List<String>> links) {
        List<String> names = links.get(this);
        return sheet.reference(names, flow, end, way, labelled ? "L-" + names.get(0) : null, sized);
    }

    Tip tip(DraftingStyle style) {
        double straight = behind(style) + 0.5;
        Spot exit = end.plus(-way.dx * straight, -way.dy * straight);
        return new Tip(end, exit, -way.dx, -way.dy, owner(), owner());
    }

    /** What is printed along the line before it ends. */
    Area label(DraftingStyle style) {
        return along(-behind(style), 0, ASIDE);
    }

    private double behind(DraftingStyle style) {
        if (!labelled) {
            return 1.1;
        }
        double width = Extent.width("L-100", 0.32, false);
        return sized && style.labels() == LabelPlace.GAP ? 2.9 + width : 1.3 + width;
    }

    /** What is printed where the line has ended. */
    Area text(DraftingStyle style) {
        if (letter) {
            Area circle = along(0, 1.24, 0.62);
            Spot at = circle.centre();
            return way == Heading.NORTH
                    ? circle.join(new Area(at.x(), at.y(), at.x() + 2.4, at.y()))
                    : circle.join(new Area(at.x() - 0.85, at.y(), at.x() + 0.85, at.y() + 1.25));
        }
        double height = style.references().height;
        return switch (style.references()) {
            case FLAG -> along(0, 0.8 + width(6, 14, height), 0.36);
            case PLAIN -> along(0, 0.65 + width(13, 29, height), 0.2);
            case CIRCLE -> along(0, 1.6 * targets, 0.8);
            case DOTTED -> along(0, 0.35 + width(8, 16, height), 0.2);
            case WORDS ->
                way.upright()
                        ? along(0, 0.35 + 0.92 * targets, 1.3)
                        : along(0, 0.35 + width(13, 13, height), 0.46 * targets);
            case HEXAGON -> along(0, 0.85 + width(6, 14, height), 0.4);
        };
    }

    private double width(int lettersOfOne, int lettersOfTwo, double height) {
        return Extent.width("x".repeat(targets == 1 ? lettersOfOne : lettersOfTwo), height, false);
    }

    private Area along(double from, double to, double half) {
        Spot a = end.plus(way.dx * from, way.dy * from);
        Spot b = end.plus(way.dx * to, way.dy * to);
        return new Area(
                Math.min(a.x(), b.x()) - Math.abs(way.dy) * half,
                Math.min(a.y(), b.y()) - Math.abs(way.dx) * half,
                Math.max(a.x(), b.x()) + Math.abs(way.dy) * half,
                Math.max(a.y(), b.y()) + Math.abs(way.dx) * half);
    }
}
