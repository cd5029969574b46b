package linewalk.samples.sheet;

import linewalk.samples.machine.Flow;
import linewalk.samples.machine.Heading;
import linewalk.samples.machine.Reference;
import linewalk.samples.style.DraftingStyle;
import linewalk.samples.style.ReferenceForm;
import linewalk.samples.symbol.Spot;

/** The room a reference's text takes, known before it is known what it says. In units from the line's end. */
final class ReferenceRoom {
    static final double LETTER_RADIUS = 0.62;
    static final double CIRCLE_RADIUS = 0.8;
    static final double LETTER_TEXT = 0.34;
    static final double LETTER_ASIDE = 0.9;
    static final double LETTER_BELOW = 0.98;
    /** From a line of words to the next. */
    static final double WORDS_STEP = 0.46;

    static final double WORDS_START = 0.3;
    static final double HEXAGON_HALF = 0.4;

    private final DraftingStyle style;
    private final Fonts fonts;

    ReferenceRoom(DraftingStyle style, Fonts fonts) {
        this.style = style;
        this.fonts = fonts;
    }

    /** Where plain text starts: behind the arrowhead, if there is one. */
    static double plainStart(Reference reference) {
        return reference.flow() == Flow.UNKNOWN ? 0.3 : 0.62;
    }

    static double flagLength(ScaledInk ink, int targets) {
        return flagLength(ink.canvas().fonts(), targets);
    }

    private static double flagLength(Fonts fonts, int targets) {
        ReferenceForm form = ReferenceForm.FLAG;
        return 0.75 + textWidth(fonts, form, targets);
    }

    static double hexagonLength(Fonts fonts, int targets) {
        return 0.8 + textWidth(fonts, ReferenceForm.HEXAGON, targets);
    }

    private Box wordsRoom(Reference reference) {
        double width = textWidth(fonts, ReferenceForm.WORDS, 1);
        double height = 2 * reference.links().size() * WORDS_STEP;
        boolean upright = reference.heading().upright();
        return box(reference, WORDS_START, WORDS_START + (upright ? height : width), (upright ? width : height) / 2);
    }

    private static double textWidth(Fonts fonts, ReferenceForm form, int targets) {
        String widest = targets == 1 ? form.widest() : form.widest() + form.separator() + form.widest();
        return fonts.width(widest, form.height, false);
    }

    /** Box of the text at its widest, in units. */
    Box room(Reference reference) {
        int targets = reference.links().size();
        if (reference.isLetter()) {
            return letterRoom(reference);
        }
        return switch (style.references()) {
            case FLAG -> box(reference, 0, flagLength(fonts, targets), 0.36);
            case PLAIN ->
                box(
                        reference,
                        plainStart(reference),
                        plainStart(reference) + textWidth(fonts, style.references(), targets),
                        0.18);
            case DOTTED -> box(reference, 0.3, 0.3 + textWidth(fonts, style.references(), targets), 0.2);
            case WORDS -> wordsRoom(reference);
            case HEXAGON -> box(reference, 0, hexagonLength(fonts, targets), HEXAGON_HALF);
            case CIRCLE -> box(reference, 0, 2 * CIRCLE_RADIUS * targets, CIRCLE_RADIUS);
        };
    }

    /** The circle and the sheet under it, or beside it where the line is under it. */
    private Box letterRoom(Reference reference) {
        Box circle = box(reference, 0, 2 * LETTER_RADIUS, LETTER_RADIUS);
        Spot at = circle.centre();
        double width = fonts.width("SH H-13", LETTER_TEXT, false);
        return reference.heading() == Heading.NORTH
                ? circle.join(new Box(at.x(), at.y(), at.x() + LETTER_ASIDE + width, at.y()))
                : circle.join(new Box(at.x() - width / 2, at.y(), at.x() + width / 2, at.y() + LETTER_BELOW + 0.2));
    }

    private static Box box(Reference reference, double from, double to, double half) {
        Heading way = reference.heading();
        Spot end = reference.end();
        double aside = Math.abs(way.dx) * half;
        double across = Math.abs(way.dy) * half;
        Box near = new Box(end.x(), end.y(), end.x(), end.y());
        Spot a = end.plus(way.dx * from, way.dy * from);
        Spot b = end.plus(way.dx * to, way.dy * to);
        near = new Box(a.x() - across, a.y() - aside, a.x() + across, a.y() + aside);
        return near.join(new Box(b.x() - across, b.y() - aside, b.x() + across, b.y() + aside));
    }
}
