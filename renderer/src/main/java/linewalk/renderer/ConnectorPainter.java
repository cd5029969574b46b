package linewalk.renderer;

import java.awt.Color;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
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
    private final List<Rectangle2D> frames = new ArrayList<>();

    ConnectorPainter(PrintJob job, Canvas c, Rectangle2D area, int page) {
        words = new Words(job);
        this.c = c;
        this.area = area;
        this.page = page;
    }

    void paint(List<Connector> all, List<Stay> stays, List<Panel> panels, List<Rectangle2D> marks) {
        panels.stream().filter(p -> p.page() == page).forEach(p -> {
            frames.add(onPage(p.frame()));
            frames.add(onPage(p.captionBox()));
        });
        marks.forEach(m -> frames.add(onPage(m)));
        List<Connector> here =
                all.stream().filter(k -> k.isDrawn() && k.from().page() == page).toList();
        for (Connector k : here) {
            List<Point2D> line = line(k);
            // a line that crosses another interrupts it, so that nobody turns off at the crossing
            c.pen(Color.WHITE, Ink.line(8));
            c.polyline(k.way().stream().map(this::onPage).toList());
            c.pen(Ink.PATH, Ink.line(2.2));
            c.polyline(line);
            tip(line);
        }
        for (Connector k : here) {
            List<List<Point2D>> others =
                    here.stream().filter(o -> o != k).map(this::line).toList();
            label(line(k), address(k, stays), others);
        }
        for (Connector k : all) {
            if (!k.isDrawn() && k.from().page() == page) {
                end(k.start(), k.letter(), k.to().page());
            }
            if (!k.isDrawn() && k.to().page() == page) {
                end(k.end(), k.letter(), k.from().page());
            }
        }
    }

    private List<Point2D> line(Connector k) {
        return k.whole().stream().map(this::onPage).toList();
    }

    private String address(Connector k, List<Stay> stays) {
        return words.crossing(
                stays.get(k.from().stay()).exit(), stays.get(k.to().stay()).entry());
    }

    private Rectangle2D onPage(Rectangle2D r) {
        return new Rectangle2D.Double(area.getX() + r.getX(), area.getY() + r.getY(), r.getWidth(), r.getHeight());
    }

    private Point2D onPage(Point2D p) {
        return new Point2D.Double(area.getX() + p.getX(), area.getY() + p.getY());
    }

    private void tip(List<Point2D> line) {
        Point2D p = line.get(line.size() - 2);
        Point2D q = line.get(line.size() - 1);
        c.arrow(q.getX(), q.getY(), q.getX() - p.getX(), q.getY() - p.getY(), 10);
    }

    /** On the first level stretch that is long enough and where no other connector passes. */
    private void label(List<Point2D> line, String text, List<List<Point2D>> others) {
        double w = Lettering.widthPt(text, Lettering.TEXT_PT) + 8;
        for (int i = 1; i < line.size(); i++) {
            Point2D p = line.get(i - 1);
            Point2D q = line.get(i);
            double length = Math.abs(p.getX() - q.getX());
            for (double share = 0.5; p.getY() == q.getY() && length > w + 24 && share < 0.9; share += 0.1) {
                double x = p.getX() + share * (q.getX() - p.getX());
                Rectangle2D box = new Rectangle2D.Double(x - w / 2, p.getY() - 7, w, 14);
                if (Math.abs(x - q.getX()) > w / 2 + 8
                        && frames.stream().noneMatch(box::intersects)
                        && others.stream().noneMatch(o -> passes(o, box))) {
                    c.fill(Color.WHITE, box);
                    c.pen(Ink.BLACK, Ink.line(1));
                    c.textAround(text, x, p.getY(), Lettering.TEXT_PT);
                    return;
                }
            }
        }
    }

    private static boolean passes(List<Point2D> line, Rectangle2D box) {
        for (int i = 1; i < line.size(); i++) {
            if (box.intersectsLine(
                    line.get(i - 1).getX(), line.get(i - 1).getY(),
                    line.get(i).getX(), line.get(i).getY())) {
                return true;
            }
        }
        return false;
    }

    private void end(List<Point2D> stub, String letter, int other) {
        Point2D a = onPage(stub.get(0));
        Point2D b = onPage(stub.get(1));
        c.pen(Ink.PATH, Ink.line(2.2));
        c.line(a.getX(), a.getY(), b.getX(), b.getY());
        MatchMarks.paint(c, letter, b.getX(), b.getY(), MatchMarks.where(page, other), a.getY() == b.getY());
    }
}
