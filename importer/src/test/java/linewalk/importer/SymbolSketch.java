package linewalk.importer;

import java.util.LinkedHashMap;
import java.util.Map;
import linewalk.drawing.Point;

/** A pen that draws one symbol in units, turned, mirrored and scaled, in the way of one CAD program. */
final class SymbolSketch {

    /** How a program writes what the drafter drew. */
    enum Hand {
        /** Closed outlines, true curves, filled heads. */
        FILLED,
        /** Closed outlines, true curves, heads of two strokes, triangles as outlines. */
        OPEN,
        /** Every straight piece a stroke of its own, curves as short pieces, heads as outlines, dashes one by one. */
        PIECES
    }

    /** How long the lines at the ports are. */
    private static final double LINE = 5;

    private final Drawn page;
    private final Hand hand;
    private final double x;
    private final double y;
    private final double unitPt;
    private final int quarters;
    private final boolean mirrored;
    private final double penPt;
    private final Map<String, Point> ports = new LinkedHashMap<>();

    SymbolSketch(
            Drawn page, Hand hand, double x, double y, double unitPt, int quarters, boolean mirrored, double penPt) {
        this.page = page;
        this.hand = hand;
        this.x = x;
        this.y = y;
        this.unitPt = unitPt;
        this.quarters = quarters;
        this.mirrored = mirrored;
        this.penPt = penPt;
    }

    /** Where lines meet the symbol, by name. */
    Map<String, Point> ports() {
        return ports;
    }

    Point middle() {
        return at(0, 0);
    }

    private Point at(double ux, double uy) {
        double a = (mirrored ? -ux : ux) * unitPt;
        double b = uy * unitPt;
        return switch (quarters) {
            case 0 -> new Point(x + a, y + b);
            case 1 -> new Point(x - b, y + a);
            case 2 -> new Point(x - a, y - b);
            default -> new Point(x + b, y - a);
        };
    }

    private double[] placed(double... xy) {
        double[] out = new double[xy.length];
        for (int i = 0; i < xy.length; i += 2) {
            Point p = at(xy[i], xy[i + 1]);
            out[i] = p.xPt();
            out[i + 1] = p.yPt();
        }
        return out;
    }

    SymbolSketch line(double... xy) {
        double[] p = placed(xy);
        if (hand == Hand.PIECES) {
            for (int i = 2; i < p.length; i += 2) {
                page.line(p[i - 2], p[i - 1], p[i], p[i + 1]);
            }
        } else {
            page.line(p);
        }
        return this;
    }

    SymbolSketch closed(double... xy) {
        if (hand == Hand.PIECES) {
            double[] ring = java.util.Arrays.copyOf(xy, xy.length + 2);
            ring[xy.length] = xy[0];
            ring[xy.length + 1] = xy[1];
            return line(ring);
        }
        page.polygon(placed(xy));
        return this;
    }

    SymbolSketch box(double x0, double y0, double x1, double y1) {
        return closed(x0, y0, x1, y0, x1, y1, x0, y1);
    }

    /** An enclosure within the symbol: dash and dot. */
    SymbolSketch chainBox(double x0, double y0, double x1, double y1) {
        page.pen(0.5 * penPt, 7, 2, 1.5, 2);
        page.polygon(placed(x0, y0, x1, y0, x1, y1, x0, y1));
        page.pen(penPt);
        return this;
    }

    SymbolSketch circle(double cx, double cy, double r) {
        if (hand == Hand.PIECES) {
            return closed(points(cx, cy, r, 0, 360, 24));
        }
        Point c = at(cx, cy);
        page.circle(c.xPt(), c.yPt(), r * unitPt);
        return this;
    }

    /** Part of a circle, angles clockwise from the right. */
    SymbolSketch arc(double cx, double cy, double r, double fromDeg, double toDeg) {
        if (hand == Hand.PIECES) {
            return line(points(cx, cy, r, fromDeg, toDeg, 8));
        }
        // an arm of this share of the radius draws an arc of that angle
        double k = 4.0 / 3 * Math.tan(Math.toRadians(toDeg - fromDeg) / 4) * r;
        double[] ends = points(cx, cy, r, fromDeg, toDeg, 1);
        double a = Math.toRadians(fromDeg);
        double b = Math.toRadians(toDeg);
        page.curve(placed(
                ends[0],
                ends[1],
                ends[0] - k * Math.sin(a),
                ends[1] + k * Math.cos(a),
                ends[2] + k * Math.sin(b),
                ends[3] - k * Math.cos(b),
                ends[2],
                ends[3]));
        return this;
    }

    private static double[] points(double cx, double cy, double r, double fromDeg, double toDeg, int steps) {
        boolean whole = Math.abs(toDeg - fromDeg) >= 360;
        double[] xy = new double[2 * (whole ? steps : steps + 1)];
        for (int i = 0; 2 * i < xy.length; i++) {
            double a = Math.toRadians(fromDeg + (toDeg - fromDeg) * i / steps);
            xy[2 * i] = cx + r * Math.cos(a);
            xy[2 * i + 1] = cy + r * Math.sin(a);
        }
        return xy;
    }

    SymbolSketch capsule(double halfWidth, double halfHeight) {
        double[] top = points(0, halfWidth - halfHeight, halfWidth, 180, 360, 10);
        double[] bottom = points(0, halfHeight - halfWidth, halfWidth, 0, 180, 10);
        double[] all = new double[top.length + bottom.length];
        System.arraycopy(top, 0, all, 0, top.length);
        System.arraycopy(bottom, 0, all, top.length, bottom.length);
        return closed(all);
    }

    /** A sign such as a pump's: filled or an outline. */
    SymbolSketch triangle(double... xy) {
        if (hand == Hand.FILLED) {
            page.filled(placed(xy));
            return this;
        }
        return closed(xy);
    }

    SymbolSketch arrow(double x0, double y0, double x1, double y1) {
        double d = Math.hypot(x1 - x0, y1 - y0);
        double ux = (x1 - x0) / d;
        double uy = (y1 - y0) / d;
        double l = 0.35;
        double h = 0.12;
        double[] head = {x1, y1, x1 - l * ux - h * uy, y1 - l * uy + h * ux, x1 - l * ux + h * uy, y1 - l * uy - h * ux
        };
        line(x0, y0, x1, y1);
        if (hand == Hand.OPEN) {
            return line(head[2], head[3], head[0], head[1], head[4], head[5]);
        }
        if (hand == Hand.FILLED) {
            page.filled(placed(head));
            return this;
        }
        return line(head[0], head[1], head[2], head[3]).line(head[0], head[1], head[4], head[5]);
    }

    /** A zigzag between two points of one height or one side. */
    SymbolSketch spring(double x0, double y0, double x1, double y1, double half) {
        int turns = hand == Hand.OPEN ? 5 : 7;
        double d = Math.hypot(x1 - x0, y1 - y0);
        double[] xy = new double[2 * (turns + 1)];
        for (int i = 0; i <= turns; i++) {
            double side = i == 0 || i == turns ? 0 : i % 2 == 0 ? half : -half;
            xy[2 * i] = x0 + (x1 - x0) * i / turns - side * (y1 - y0) / d;
            xy[2 * i + 1] = y0 + (y1 - y0) * i / turns + side * (x1 - x0) / d;
        }
        return line(xy);
    }

    /** A pilot line inside the symbol. */
    SymbolSketch dash(double... xy) {
        dashes(0.14 * unitPt, 0.1 * unitPt, placed(xy));
        return this;
    }

    private void dashes(double onPt, double offPt, double... p) {
        if (hand != Hand.PIECES) {
            page.pen(0.7 * penPt, onPt, offPt);
            page.line(p);
            page.pen(penPt);
            return;
        }
        for (int i = 2; i < p.length; i += 2) {
            double d = Math.hypot(p[i] - p[i - 2], p[i + 1] - p[i - 1]);
            int n = Math.max(1, (int) Math.round(d / (onPt + offPt)));
            for (int k = 0; k <= n; k++) {
                double from = k * d / (n + onPt / (onPt + offPt));
                double to = Math.min(d, from + onPt);
                page.line(
                        p[i - 2] + (p[i] - p[i - 2]) * from / d,
                        p[i - 1] + (p[i + 1] - p[i - 1]) * from / d,
                        p[i - 2] + (p[i] - p[i - 2]) * to / d,
                        p[i - 1] + (p[i + 1] - p[i - 1]) * to / d);
            }
        }
    }

    /** A seat with its tip at a point and a ball of radius r; free towards (dx, dy). */
    SymbolSketch check(double tipX, double tipY, double dx, double dy, double r) {
        double arm = 2.1 * r;
        double c = Math.sqrt(0.5);
        line(
                tipX + arm * c * (dx - dy),
                tipY + arm * c * (dy + dx),
                tipX,
                tipY,
                tipX + arm * c * (dx + dy),
                tipY + arm * c * (dy - dx));
        return circle(tipX + dx * r / c, tipY + dy * r / c, r);
    }

    /** A line that meets the symbol at a place and comes from a direction. */
    SymbolSketch port(String name, double px, double py, double dx, double dy) {
        ports.put(name, at(px, py));
        return line(px, py, px + LINE * dx, py + LINE * dy);
    }

    SymbolSketch pilotPort(String name, double px, double py, double dx, double dy) {
        ports.put(name, at(px, py));
        dashes(7, 2.5, placed(px, py, px + LINE * dx, py + LINE * dy));
        return this;
    }

    SymbolSketch text(double cx, double cy, double size, String text) {
        page.lettering(size * unitPt);
        return text(cx, cy, text, size * unitPt);
    }

    /** The designation, upright whatever the symbol's turn. */
    SymbolSketch tag(double cx, double cy, String tag) {
        double sizePt = Math.max(7, 0.45 * unitPt);
        page.lettering(sizePt);
        return text(cx, cy, tag, sizePt);
    }

    private SymbolSketch text(double cx, double cy, String text, double sizePt) {
        Point c = at(cx, cy);
        page.text(c.xPt() - 0.3 * sizePt * text.length(), c.yPt() + 0.36 * sizePt, text);
        return this;
    }
}
