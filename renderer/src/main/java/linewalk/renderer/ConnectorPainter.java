package linewalk.renderer;

import java.awt.Color;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;
import linewalk.renderer.sheet.Lettering;

/** Draws what joins two cuttings, with both addresses where there is room on the line itself. */
final class ConnectorPainter {

    private final Words words;
    private final Canvas c;
    private final Rectangle2D area;
    private final int page;

    ConnectorPainter(PrintJob job, Canvas c, Rectangle2D area, int page) {
        words = new Words(job);
        this.c = c;
        this.area = area;
        this.page = page;
    }

    void paint(Connector k, List<Stay> stays) {
        if (k.isDrawn()) {
            if (k.from().page() == page) {
                List<Point2D> line = k.whole().stream().map(this::onPage).toList();
                c.pen(Ink.PATH, Ink.line(2.2));
                c.polyline(line);
                tip(line);
                label(line, address(k, stays));
            }
            return;
        }
        if (k.from().page() == page) {
            end(k.start(), k.letter(), k.to().page());
        }
        if (k.to().page() == page) {
            end(k.end(), k.letter(), k.from().page());
        }
    }

    private String address(Connector k, List<Stay> stays) {
        return words.address(stays.get(k.from().stay()).exit()) + " -> "
                + words.address(stays.get(k.to().stay()).entry());
    }

    private Point2D onPage(Point2D p) {
        return new Point2D.Double(area.getX() + p.getX(), area.getY() + p.getY());
    }

    private void tip(List<Point2D> line) {
        Point2D p = line.get(line.size() - 2);
        Point2D q = line.get(line.size() - 1);
        c.arrow(q.getX(), q.getY(), q.getX() - p.getX(), q.getY() - p.getY(), 10);
    }

    private void label(List<Point2D> line, String text) {
        double w = Lettering.widthPt(text, Lettering.TEXT_PT) + 8;
        for (int i = 3; i < line.size() - 1; i++) {
            Point2D p = line.get(i - 1);
            Point2D q = line.get(i);
            if (p.getY() == q.getY() && Math.abs(p.getX() - q.getX()) > w + 10) {
                double x = (p.getX() + q.getX()) / 2;
                c.fill(Color.WHITE, new Rectangle2D.Double(x - w / 2, p.getY() - 7, w, 14));
                c.pen(Ink.BLACK, Ink.line(1));
                c.textAround(text, x, p.getY(), Lettering.TEXT_PT);
                return;
            }
        }
    }

    private void end(List<Point2D> stub, String letter, int other) {
        Point2D a = onPage(stub.get(0));
        Point2D b = onPage(stub.get(1));
        c.pen(Ink.PATH, Ink.line(2.2));
        c.line(a.getX(), a.getY(), b.getX(), b.getY());
        MatchMarks.paint(c, letter, b.getX(), b.getY(), other == page ? 0 : other + 1);
    }
}
