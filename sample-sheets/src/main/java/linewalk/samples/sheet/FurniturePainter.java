package linewalk.samples.sheet;

import linewalk.samples.machine.Furniture;
import linewalk.samples.machine.Furniture.Bubble;
import linewalk.samples.machine.Furniture.Dimension;
import linewalk.samples.machine.Furniture.Enclosure;
import linewalk.samples.machine.Furniture.FacePort;
import linewalk.samples.machine.Furniture.Leader;
import linewalk.samples.machine.Furniture.Table;
import linewalk.samples.style.DraftingStyle;
import linewalk.samples.style.ReferenceForm;
import linewalk.samples.symbol.Lettering;
import linewalk.samples.symbol.Pen;

/** Enclosures, leaders, balloons, tables, dimensions. */
final class FurniturePainter {
    private static final double TEXT = 0.3;

    private final ScaledInk ink;
    private final DraftingStyle style;

    FurniturePainter(ScaledInk ink, DraftingStyle style) {
        this.ink = ink;
        this.style = style;
    }

    void paint(Furniture thing) {
        ink.as(DrawnText.Role.OTHER);
        if (thing instanceof Enclosure enclosure) {
            enclosure(enclosure);
        } else if (thing instanceof Leader leader) {
            leader(leader);
        } else if (thing instanceof Bubble bubble) {
            bubble(bubble);
        } else if (thing instanceof Table table) {
            ink.text(Lettering.left(0.36).inBold(), table.x(), table.y() - 0.45, table.title());
            TablePainter.paint(ink, table.x(), table.y(), table.widths(), 0.8, TEXT, table.rows());
        } else if (thing instanceof Dimension dimension) {
            dimension(dimension);
        }
    }

    private void enclosure(Enclosure e) {
        ink.closed(Pen.CHAIN, e.x0(), e.y0(), e.x1(), e.y0(), e.x1(), e.y1(), e.x0(), e.y1());
        ink.text(Lettering.left(0.38).inBold(), e.x0() + 0.4, e.y0() + 0.6, e.name());
        ink.as(DrawnText.Role.PORT);
        for (FacePort port : e.ports()) {
            ink.circle(Pen.THIN, port.x(), port.y(), 0.16);
            double dy = port.y() == e.y1() ? 0.42 : -0.42;
            boolean onRight = port.x() == e.x1();
            Lettering text = onRight
                    ? Lettering.left(TEXT).inBold()
                    : Lettering.right(TEXT).inBold();
            ink.text(text, port.x() + (onRight ? 0.28 : -0.28), port.y() + dy, port.name());
        }
    }

    /** The text stands over a shelf that starts at the knee. */
    private void leader(Leader leader) {
        double shelf = ink.width(leader.text(), TEXT, false) + 0.2;
        ink.line(
                Pen.THIN,
                leader.knee().x() + shelf,
                leader.knee().y(),
                leader.knee().x(),
                leader.knee().y(),
                leader.tip().x(),
                leader.tip().y());
        ink.arrowHead(
                leader.tip().x(),
                leader.tip().y(),
                leader.tip().x() - leader.knee().x(),
                leader.tip().y() - leader.knee().y(),
                0.35);
        ink.text(Lettering.left(TEXT), leader.knee().x() + 0.1, leader.knee().y() - 0.28, leader.text());
    }

    private void bubble(Bubble b) {
        double radius = 0.75;
        double ring = Math.abs(b.radius());
        double dx = b.balloon().x() - b.ring().x();
        double dy = b.balloon().y() - b.ring().y();
        double norm = Math.hypot(dx, dy);
        if (b.radius() > 0) {
            ink.circle(Pen.DRAIN, b.ring().x(), b.ring().y(), ring);
        }
        ink.line(
                Pen.THIN,
                b.ring().x() + dx / norm * ring,
                b.ring().y() + dy / norm * ring,
                b.balloon().x() - dx / norm * radius,
                b.balloon().y() - dy / norm * radius);
        ink.circle(Pen.OUTLINE, b.balloon().x(), b.balloon().y(), radius);
        if (style.references() == ReferenceForm.CIRCLE) {
            // Where references are circles with a bar, balloons have none.
            ink.text(Lettering.centred(0.4), b.balloon().x(), b.balloon().y(), "Z" + b.letter());
            return;
        }
        ink.line(
                Pen.THIN,
                b.balloon().x() - radius,
                b.balloon().y(),
                b.balloon().x() + radius,
                b.balloon().y());
        ink.text(Lettering.centred(0.34), b.balloon().x(), b.balloon().y() - 0.34, b.letter());
        ink.text(Lettering.centred(0.34), b.balloon().x(), b.balloon().y() + 0.34, b.sheet());
    }

    private void dimension(Dimension d) {
        ink.line(Pen.THIN, d.x0(), d.y() - 0.5, d.x0(), d.y() + 0.3);
        ink.line(Pen.THIN, d.x1(), d.y() - 0.5, d.x1(), d.y() + 0.3);
        ink.line(Pen.THIN, d.x0(), d.y(), d.x1(), d.y());
        ink.arrowHead(d.x0(), d.y(), -1, 0, 0.4);
        ink.arrowHead(d.x1(), d.y(), 1, 0, 0.4);
        String text = style.usUnits() ? d.text().us() : d.text().metric();
        ink.text(Lettering.centred(TEXT), (d.x0() + d.x1()) / 2, d.y() - 0.3, text);
    }
}
