package linewalk.samples.sheet;

import linewalk.samples.machine.Flow;
import linewalk.samples.machine.Heading;
import linewalk.samples.machine.Reference;
import linewalk.samples.sheet.DrawnReference.Target;
import linewalk.samples.style.DraftingStyle;
import linewalk.samples.symbol.Lettering;
import linewalk.samples.symbol.Pen;
import linewalk.samples.symbol.Spot;

/** Flags, plain texts, circles and match letters at line ends. */
final class ReferencePainter {
    private final ScaledInk ink;
    private final DraftingStyle style;

    ReferencePainter(ScaledInk ink, DraftingStyle style) {
        this.ink = ink;
        this.style = style;
    }

    void paint(DrawnReference drawn) {
        ink.as(DrawnText.Role.REFERENCE);
        Reference reference = drawn.reference();
        if (reference.isLetter()) {
            letter(reference, drawn.targets().get(0).sheet());
            return;
        }
        switch (style.references()) {
            case FLAG -> flag(reference, drawn.text());
            case PLAIN -> plain(reference, drawn.text());
            case CIRCLE -> circles(drawn);
            case DOTTED -> dotted(reference, drawn.text());
            case WORDS -> words(drawn);
            case HEXAGON -> hexagon(reference, drawn.text());
        }
    }

    private void letter(Reference reference, String sheet) {
        Heading way = reference.heading();
        Spot at = along(reference, ReferenceRoom.LETTER_RADIUS);
        ink.circle(Pen.OUTLINE, at.x(), at.y(), ReferenceRoom.LETTER_RADIUS);
        ink.text(
                Lettering.centred(0.5).inBold(),
                at.x(),
                at.y(),
                reference.links().get(0));
        boolean aside = way == Heading.NORTH;
        Lettering small =
                aside ? Lettering.left(ReferenceRoom.LETTER_TEXT) : Lettering.centred(ReferenceRoom.LETTER_TEXT);
        ink.text(
                small,
                at.x() + (aside ? ReferenceRoom.LETTER_ASIDE : 0),
                at.y() + (aside ? 0 : ReferenceRoom.LETTER_BELOW),
                "SH " + sheet);
        arrowOnLine(reference);
    }

    private void flag(Reference reference, String text) {
        double length = ReferenceRoom.flagLength(ink, reference.links().size());
        double half = 0.36;
        double tip = 0.36;
        double near = reference.flow() == Flow.IN ? tip : 0;
        double far = reference.flow() == Flow.OUT ? length - tip : length;
        Spot[] corners = {
            turned(reference, near, -half), turned(reference, far, -half), turned(reference, length, 0),
            turned(reference, far, half), turned(reference, near, half), turned(reference, 0, 0)
        };
        outline(corners);
        centred(reference, (near + far) / 2, text);
    }

    private void plain(Reference reference, String text) {
        Heading way = reference.heading();
        if (reference.flow() == Flow.OUT) {
            Spot tip = along(reference, 0.4);
            ink.arrowHead(tip.x(), tip.y(), way.dx, way.dy, 0.4);
        } else if (reference.flow() == Flow.IN) {
            ink.arrowHead(reference.end().x(), reference.end().y(), -way.dx, -way.dy, 0.4);
        }
        double height = style.references().height;
        centred(reference, ReferenceRoom.plainStart(reference) + ink.width(text, height, false) / 2, text);
    }

    private void dotted(Reference reference, String text) {
        centred(reference, 0.3 + ink.width(text, style.references().height, false) / 2, text);
    }

    private void hexagon(Reference reference, String text) {
        double length = ReferenceRoom.hexagonLength(
                ink.canvas().fonts(), reference.links().size());
        double half = ReferenceRoom.HEXAGON_HALF;
        double tip = half * 0.7;
        outline(
                turned(reference, 0, 0),
                turned(reference, tip, -half),
                turned(reference, length - tip, -half),
                turned(reference, length, 0),
                turned(reference, length - tip, half),
                turned(reference, tip, half));
        centred(reference, length / 2, text);
        arrowOnLine(reference);
    }

    private void outline(Spot... corners) {
        double[] xy = new double[2 * corners.length];
        for (int i = 0; i < corners.length; i++) {
            xy[2 * i] = corners[i].x();
            xy[2 * i + 1] = corners[i].y();
        }
        ink.closed(Pen.OUTLINE, xy);
    }

    private void centred(Reference reference, double along, String text) {
        Spot middle = along(reference, along);
        Lettering lettering = Lettering.centred(style.references().height)
                .turnedUp(reference.heading().upright());
        ink.text(lettering, middle.x(), middle.y(), text);
    }

    /** Sheet and zone on a line each, away from the drawn line's end. */
    private void words(DrawnReference drawn) {
        Heading way = drawn.reference().heading();
        double step = ReferenceRoom.WORDS_STEP;
        int count = 2 * drawn.targets().size();
        Spot start = along(drawn.reference(), ReferenceRoom.WORDS_START);
        double height = style.references().height;
        double top = way.upright()
                ? start.y() + (way == Heading.NORTH ? -step * (count - 0.5) : step / 2)
                : start.y() - step * (count - 1) / 2;
        Lettering lettering = way.upright()
                ? Lettering.centred(height)
                : way == Heading.EAST ? Lettering.left(height) : Lettering.right(height);
        String lead = Wording.lead(drawn.flow());
        for (int i = 0; i < count; i++) {
            Target target = drawn.targets().get(i / 2);
            String text = i % 2 == 0 ? lead + " SHEET " + target.sheet() : "ZONE " + target.zone();
            ink.text(lettering, start.x(), top + step * i, text);
        }
        arrowOnLine(drawn.reference());
    }

    private void circles(DrawnReference drawn) {
        Reference reference = drawn.reference();
        double radius = ReferenceRoom.CIRCLE_RADIUS;
        double height = style.references().height;
        for (int i = 0; i < drawn.targets().size(); i++) {
            Spot at = along(reference, radius * (2 * i + 1));
            ink.circle(Pen.OUTLINE, at.x(), at.y(), radius);
            ink.line(Pen.THIN, at.x() - radius, at.y(), at.x() + radius, at.y());
            ink.text(
                    Lettering.centred(height),
                    at.x(),
                    at.y() - 0.28,
                    drawn.targets().get(i).sheet());
            ink.text(
                    Lettering.centred(height),
                    at.x(),
                    at.y() + 0.28,
                    drawn.targets().get(i).zone());
        }
        arrowOnLine(reference);
    }

    private void arrowOnLine(Reference reference) {
        Heading way = reference.heading();
        if (reference.flow() == Flow.OUT) {
            ink.arrowHead(reference.end().x(), reference.end().y(), way.dx, way.dy, 0.4);
        } else if (reference.flow() == Flow.IN) {
            Spot tip = along(reference, -0.5);
            ink.arrowHead(tip.x(), tip.y(), -way.dx, -way.dy, 0.4);
        }
    }

    private static Spot along(Reference reference, double distance) {
        return turned(reference, distance, 0);
    }

    private static Spot turned(Reference reference, double along, double aside) {
        Heading way = reference.heading();
        return reference.end().plus(way.dx * along - way.dy * aside, way.dy * along + way.dx * aside);
    }
}
