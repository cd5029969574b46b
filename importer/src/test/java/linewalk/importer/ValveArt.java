package linewalk.importer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linewalk.drawing.Point;

/**
 * Draws directional valves as different drafters do. One square is one unit; the square at rest starts at 0, 0; turned,
 * mirrored and scaled onto the page. Squares read {@code P>A B>T} (arrows), {@code P-T} (a plain line), {@code A=B=T}
 * (joined), {@code A~T} (throttled), {@code P!A} (a check that opens towards A); ports not named are blocked.
 */
final class ValveArt {

    /** How heads, caps and lines are drawn. */
    enum Hand {
        FILLED_HEADS,
        OPEN_HEADS_EXPLODED,
        STROKE_HEADS_BARS,
        OUTLINED_HEADS_SHORT
    }

    private final Drawn page;
    private final double sidePt;
    private final int turn;
    private final boolean mirrored;
    private final Hand hand;
    private final Point origin;

    ValveArt(Drawn page, Point origin, double sidePt, int turn, boolean mirrored, Hand hand) {
        this.page = page;
        this.origin = origin;
        this.sidePt = sidePt;
        this.turn = turn;
        this.mirrored = mirrored;
        this.hand = hand;
    }

    Point at(double x, double y) {
        double a = mirrored ? -x : x;
        double[] p = {a, y};
        for (int t = 0; t < turn; t++) {
            p = new double[] {-p[1], p[0]};
        }
        return origin.plus(p[0] * sidePt, p[1] * sidePt);
    }

    private double[] xy(double... local) {
        double[] out = new double[local.length];
        for (int i = 0; i < local.length; i += 2) {
            Point p = at(local[i], local[i + 1]);
            out[i] = p.xPt();
            out[i + 1] = p.yPt();
        }
        return out;
    }

    void line(double... local) {
        if (hand == Hand.FILLED_HEADS || hand == Hand.OUTLINED_HEADS_SHORT) {
            page.line(xy(local));
            return;
        }
        for (int i = 2; i < local.length; i += 2) {
            double mx = local[i - 2] + 0.55 * (local[i] - local[i - 2]);
            double my = local[i - 1] + 0.55 * (local[i + 1] - local[i - 1]);
            page.line(xy(local[i - 2], local[i - 1], mx, my));
            page.line(xy(mx, my, local[i], local[i + 1]));
        }
    }

    void whole(double... local) {
        page.line(xy(local));
    }

    void polygon(double... local) {
        page.polygon(xy(local));
    }

    void filled(double... local) {
        page.filled(xy(local));
    }

    void circle(double x, double y, double r) {
        Point c = at(x, y);
        page.circle(c.xPt(), c.yPt(), r * sidePt);
    }

    void box(double x0, double y0, double x1, double y1) {
        if (hand == Hand.OPEN_HEADS_EXPLODED || hand == Hand.STROKE_HEADS_BARS) {
            whole(x0, y0, x1, y0);
            whole(x1, y0, x1, y1);
            whole(x1, y1, x0, y1);
            whole(x0, y1, x0, y0);
        } else {
            polygon(x0, y0, x1, y0, x1, y1, x0, y1);
        }
    }

    /** The text's middle is near the place. */
    void text(double x, double y, String text) {
        double size = 0.3 * sidePt;
        Point p = at(x, y);
        page.lettering(size).text(p.xPt() - 0.28 * size * text.length(), p.yPt() + 0.36 * size, text);
    }

    void squares(int count, int rest) {
        if (hand == Hand.STROKE_HEADS_BARS || hand == Hand.OUTLINED_HEADS_SHORT) {
            box(-rest, 0, count - rest, 1);
            for (int i = 1; i < count; i++) {
                line(i - rest, 0, i - rest, 1);
            }
        } else {
            for (int i = 0; i < count; i++) {
                box(i - rest, 0, i - rest + 1, 1);
            }
        }
    }

    /** @param ports places on the square, y 0 or 1 */
    void square(double x, String says, Map<String, double[]> ports) {
        List<String> open = new ArrayList<>();
        for (String word : says.isEmpty() ? new String[0] : says.split(" ")) {
            String[] names = word.split("[>=~!-]");
            open.addAll(List.of(names));
            double[][] p = new double[names.length][];
            for (int i = 0; i < p.length; i++) {
                p[i] = new double[] {x + ports.get(names[i])[0], ports.get(names[i])[1]};
            }
            way(word.charAt(names[0].length()), p);
        }
        ports.forEach((name, p) -> {
            if (!open.contains(name)) {
                cap(x + p[0], p[1]);
            }
        });
    }

    private void way(char sign, double[][] p) {
        if (sign == '>') {
            arrow(p[0][0], p[0][1], p[1][0], p[1][1]);
        } else if (sign == '=') {
            joined(p);
        } else if (sign == '!') {
            check(p[0], p[1]);
        } else if (p[0][1] == p[1][1]) {
            double y = Math.abs(p[0][1] - 0.3);
            line(p[0][0], p[0][1], p[0][0], y, p[1][0], y, p[1][0], p[1][1]);
        } else {
            line(p[0][0], p[0][1], p[1][0], p[1][1]);
            if (sign == '~') {
                throttle((p[0][0] + p[1][0]) / 2, 0.5);
            }
        }
    }

    /** Chevrons point at an upright passage from both sides. */
    private void throttle(double x, double y) {
        whole(x - 0.16, y - 0.12, x - 0.07, y, x - 0.16, y + 0.12);
        whole(x + 0.16, y - 0.12, x + 0.07, y, x + 0.16, y + 0.12);
    }

    /** All reach the middle; the lines lie as an H or a part of one. */
    private void joined(double[][] p) {
        double from = 1e9;
        double to = -1e9;
        for (double[] a : p) {
            from = Math.min(from, a[0]);
            to = Math.max(to, a[0]);
        }
        Map<Double, List<double[]>> columns = new LinkedHashMap<>();
        for (double[] a : p) {
            columns.computeIfAbsent(a[0], k -> new ArrayList<>()).add(a);
        }
        for (List<double[]> c : columns.values()) {
            line(c.get(0)[0], c.get(0)[1], c.get(0)[0], c.size() == 2 ? c.get(1)[1] : 0.5);
        }
        line(from, 0.5, to, 0.5);
        if (hand == Hand.OUTLINED_HEADS_SHORT) {
            for (double[] a : p) {
                Point c = at(a[0], 0.5);
                double r = 0.05 * sidePt;
                page.filled(
                        c.xPt() - r,
                        c.yPt(),
                        c.xPt() - 0.7 * r,
                        c.yPt() - 0.7 * r,
                        c.xPt(),
                        c.yPt() - r,
                        c.xPt() + 0.7 * r,
                        c.yPt() - 0.7 * r,
                        c.xPt() + r,
                        c.yPt(),
                        c.xPt() + 0.7 * r,
                        c.yPt() + 0.7 * r,
                        c.xPt(),
                        c.yPt() + r,
                        c.xPt() - 0.7 * r,
                        c.yPt() + 0.7 * r);
            }
        }
    }

    /** A ball behind a seat on an upright passage; oil lifts it on its way to b. */
    private void check(double[] a, double[] b) {
        double x = a[0];
        double d = Math.signum(b[1] - a[1]);
        double apex = 0.5 - 0.2 * d;
        line(x, a[1], x, apex);
        whole(x - 0.2, apex + 0.2 * d, x, apex);
        whole(x, apex, x + 0.2, apex + 0.2 * d);
        double r = 0.1;
        double c = apex + d * r * Math.sqrt(2);
        circle(x, c, r);
        line(x, c + d * r, x, b[1]);
    }

    private void cap(double x, double y) {
        double inner = Math.abs(y - 0.22);
        if (hand == Hand.STROKE_HEADS_BARS) {
            line(x, y, x, inner);
            double thick = 0.03;
            filled(x - 0.1, inner - thick, x + 0.1, inner - thick, x + 0.1, inner + thick, x - 0.1, inner + thick);
        } else {
            line(x, y, x, inner);
            line(x - 0.1, inner, x + 0.1, inner);
        }
    }

    private void arrow(double x0, double y0, double x1, double y1) {
        double d = Math.hypot(x1 - x0, y1 - y0);
        double ux = (x1 - x0) / d;
        double uy = (y1 - y0) / d;
        double tip = hand == Hand.OUTLINED_HEADS_SHORT ? 0.06 : 0;
        double tx = x1 - tip * ux;
        double ty = y1 - tip * uy;
        double bx = tx - 0.2 * ux;
        double by = ty - 0.2 * uy;
        double w = 0.07;
        double[] head = {bx + w * uy, by - w * ux, tx, ty, bx - w * uy, by + w * ux};
        boolean toBase = hand == Hand.FILLED_HEADS || hand == Hand.OUTLINED_HEADS_SHORT;
        line(x0, y0, toBase ? bx : tx, toBase ? by : ty);
        switch (hand) {
            case FILLED_HEADS -> filled(head);
            case OUTLINED_HEADS_SHORT -> polygon(head);
            case OPEN_HEADS_EXPLODED -> whole(head);
            default -> {
                whole(head[0], head[1], tx, ty);
                whole(tx, ty, head[4], head[5]);
            }
        }
    }

    /** @param out -1 at the left end, 1 at the right */
    void spring(double edge, int out, double y0, double y1) {
        double[] p = new double[14];
        for (int i = 0; i < 7; i++) {
            p[2 * i] = edge + out * 0.1 * i;
            p[2 * i + 1] = i % 2 == 0 ? y0 : y1;
        }
        whole(p);
    }

    void solenoid(double edge, int out, String name) {
        box(edge, 0.02, edge + out * 0.7, 0.5);
        whole(edge + out * 0.25, 0.5, edge + out * 0.45, 0.02);
        text(edge + out * (turn % 2 == 0 ? 0.45 : 0.35), turn % 2 == 0 ? -0.25 : -0.55, name);
    }
}
