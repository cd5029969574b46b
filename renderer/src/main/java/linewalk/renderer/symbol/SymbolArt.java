package linewalk.renderer.symbol;

import java.awt.geom.Arc2D;
import java.awt.geom.RoundRectangle2D;
import linewalk.drawing.Kind;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;

/** The strokes of the plain symbols in a field 60 wide (96 for cylinder and tank) and 52 high; flow runs downwards. */
final class SymbolArt {

    private final Canvas c;
    private final double x;
    private final double y;
    private final boolean against;
    private double topPt = 8;
    private double bottomPt = 44;

    SymbolArt(Canvas c, double xPt, double yPt, boolean against) {
        this.c = c;
        this.x = xPt;
        this.y = yPt;
        this.against = against;
    }

    /** How far in the ports' lines reach from the top and how far down the outline goes. */
    double[] reach() {
        return new double[] {topPt, bottomPt};
    }

    void draw(Kind kind) {
        switch (kind) {
            case PUMP -> pump();
            case MOTOR, ROTARY_ACTUATOR -> motor();
            case ELECTRIC_MOTOR -> round("M");
            case CYLINDER -> cylinder();
            case BRAKE -> brake();
            case TANK -> tank();
            case RELIEF_VALVE, SEQUENCE_VALVE, UNLOADING_VALVE -> pressureValve(true, false);
            case COUNTERBALANCE_VALVE -> pressureValve(true, true);
            case REDUCING_VALVE -> pressureValve(false, false);
            case CHECK_VALVE, PREFILL_VALVE -> check(false);
            case PILOT_CHECK_VALVE -> check(true);
            case FLOW_CONTROL -> throttle(true);
            case ORIFICE -> throttle(false);
            case SHUT_OFF_VALVE -> shutOff();
            case FILTER, STRAINER -> filter();
            case COOLER -> thermal(true);
            case HEATER -> thermal(false);
            case ACCUMULATOR -> accumulator();
            case GAUGE, TEST_POINT -> gauge();
            case HOSE -> hose();
            default -> box(kind);
        }
    }

    private void round(String letter) {
        c.circle(x + 30, y + 26, 18);
        if (!letter.isEmpty()) {
            c.textAround(letter, x + 30, y + 26, 14);
        }
    }

    private void pump() {
        round("");
        c.polygon(Ink.BLACK, x + 30, y + 44, x + 23, y + 33, x + 37, y + 33);
        shaft();
    }

    private void motor() {
        round("");
        c.polygon(Ink.BLACK, x + 30, y + 19, x + 23, y + 8.6, x + 37, y + 8.6);
        shaft();
    }

    private void shaft() {
        c.line(x + 2, y + 24, x + 12, y + 24);
        c.line(x + 2, y + 28, x + 12, y + 28);
    }

    /** Which side has the rod is not known. */
    void cylinderWithoutRod() {
        topPt = 16;
        bottomPt = 42;
        c.rect(x + 4, y + 16, 74, 26);
        c.line(x + 38.5, y + 16, x + 38.5, y + 42);
        c.line(x + 43.5, y + 16, x + 43.5, y + 42);
    }

    private void cylinder() {
        topPt = 16;
        bottomPt = 42;
        c.rect(x + 4, y + 16, 74, 26);
        c.line(x + 30, y + 16, x + 30, y + 42);
        c.line(x + 35, y + 16, x + 35, y + 42);
        c.line(x + 35, y + 26, x + 94, y + 26);
        c.line(x + 35, y + 32, x + 94, y + 32);
        c.line(x + 94, y + 26, x + 94, y + 32);
    }

    private void brake() {
        topPt = 14;
        bottomPt = 40;
        c.rect(x + 14, y + 14, 32, 26);
        c.line(x + 14, y + 22, x + 46, y + 22);
        c.line(x + 14, y + 25, x + 46, y + 25);
        c.lines(x + 24, y + 25, x + 36, y + 28, x + 24, y + 31, x + 36, y + 34, x + 24, y + 37, x + 30, y + 40);
    }

    private void tank() {
        topPt = 30;
        c.lines(x + 3, y + 8, x + 3, y + 44, x + 93, y + 44, x + 93, y + 8);
    }

    /** A square with an arrow, a spring on its right and a dashed pilot on its left. */
    private void pressureValve(boolean shutAtRest, boolean withCheck) {
        c.rect(x + 16, y + 12, 28, 28);
        topPt = 12;
        bottomPt = 40;
        double ax = shutAtRest ? x + 24 : x + 30;
        c.line(ax, y + 14, ax, y + 38);
        c.arrow(ax, y + 39, 0, 1, 8);
        c.lines(x + 44, y + 26, x + 46, y + 21, x + 49, y + 31, x + 52, y + 21, x + 55, y + 31, x + 57, y + 26);
        c.pen(Ink.BLACK, Ink.dashed(1, 3, 2));
        double py = shutAtRest ? y + 4 : y + 48;
        c.lines(x + 30, py, x + 8, py, x + 8, y + 26, x + 16, y + 26);
        c.pen(Ink.BLACK, Ink.line(1.3));
        if (withCheck) {
            c.circle(x + 37, y + 25, 4);
            c.lines(x + 32, y + 26, x + 37, y + 31.5, x + 42, y + 26);
        }
    }

    /** A ball on its seat; oil that runs free lifts the ball away from the seat. */
    private void check(boolean piloted) {
        double seat = against ? 1 : -1;
        double cy = y + 26;
        c.circle(x + 30, cy, 7);
        c.lines(x + 18, cy - seat * 1, x + 30, cy + seat * 11, x + 42, cy - seat * 1);
        topPt = against ? 19 : 15;
        bottomPt = against ? 37 : 33;
        if (piloted) {
            c.pen(Ink.BLACK, Ink.dashed(1, 4, 2.5f));
            c.line(x + 1, cy + seat * 7, x + 22, cy + seat * 7);
            c.pen(Ink.BLACK, Ink.line(1.3));
        }
    }

    private void throttle(boolean adjustable) {
        topPt = 52;
        bottomPt = 52;
        c.draw(new Arc2D.Double(x + 6, y + 14, 20, 24, -75, 150, Arc2D.OPEN));
        c.draw(new Arc2D.Double(x + 34, y + 14, 20, 24, 105, 150, Arc2D.OPEN));
        if (adjustable) {
            c.line(x + 12, y + 42, x + 50, y + 10);
            c.arrow(x + 50, y + 10, 38, -32, 9);
        }
    }

    private void shutOff() {
        c.outline(x + 20, y + 10, x + 40, y + 10, x + 20, y + 42, x + 40, y + 42);
        c.line(x + 30, y + 26, x + 50, y + 26);
        c.line(x + 50, y + 20, x + 50, y + 32);
        topPt = 10;
        bottomPt = 42;
    }

    private void diamond() {
        c.outline(x + 30, y + 8, x + 48, y + 26, x + 30, y + 44, x + 12, y + 26);
    }

    private void filter() {
        diamond();
        c.pen(Ink.BLACK, Ink.dashed(1.2, 4, 2.5f));
        c.line(x + 12, y + 26, x + 48, y + 26);
        c.pen(Ink.BLACK, Ink.line(1.3));
    }

    private void thermal(boolean cools) {
        diamond();
        for (int s = -1; s <= 1; s += 2) {
            double tip = cools ? 27 : 8;
            c.line(x + 30 + s * 6, y + 26, x + 30 + s * 27, y + 26);
            c.arrow(x + 30 + s * tip, y + 26, cools ? s : -s, 0, 8);
        }
    }

    private void accumulator() {
        bottomPt = 46;
        c.draw(new RoundRectangle2D.Double(x + 19, y + 8, 22, 38, 22, 22));
        c.line(x + 19, y + 27, x + 41, y + 27);
    }

    private void gauge() {
        topPt = 12;
        c.circle(x + 30, y + 28, 16);
        c.line(x + 22, y + 36, x + 37, y + 19);
        c.arrow(x + 38, y + 18, 16, -18, 8);
    }

    private void hose() {
        topPt = 12;
        bottomPt = 40;
        c.fill(Ink.BLACK, Canvas.disc(x + 30, y + 12, 2.5));
        c.fill(Ink.BLACK, Canvas.disc(x + 30, y + 40, 2.5));
        c.draw(new Arc2D.Double(x + 16, y + 12, 28, 28, 90, 180, Arc2D.OPEN));
    }

    private void box(Kind kind) {
        c.rect(x + 8, y + 8, 44, 36);
        if (kind == Kind.UNKNOWN) {
            c.textAround("?", x + 30, y + 26, 16);
        }
    }
}
