package linewalk.renderer.iso;

import java.util.List;
import linewalk.renderer.ink.ChangeMark;
import linewalk.renderer.sheet.Canvas;

/** A body in its field: lines from the field's edges to the body, the ports' letters beside them. */
final class Mounted implements Symbol {

    private static final double EDGE = 0.25;
    /** From a level line's middle to the foot of its letter, which may reach below it. */
    private static final double ABOVE = 0.5;

    /** Room for the mark of a change. */
    private static final double MARK = 1.5;

    private final Plan plan;
    private final LetterSides sides;
    private final boolean changed;
    private final double left;
    private final double top;
    private final double width;
    private final double height;

    Mounted(Plan plan, boolean changed) {
        this.plan = plan;
        sides = new LetterSides(plan.docks());
        this.changed = changed;
        boolean marked = changed || plan.switches();
        left = up(Math.max(Math.max(across(Side.LEFT), marked ? MARK : 0), overhang(true) + (marked ? MARK : 0)));
        top = up(Math.max(Math.max(along(Side.TOP), marked ? MARK : 0), lift(marked)));
        double right = up(Math.max(across(Side.RIGHT), overhang(false)));
        width = left + plan.body().width() + right;
        height = top + plan.body().height() + up(along(Side.BOTTOM));
    }

    private static double up(double modules) {
        return Math.ceil(modules * 4 - 1e-6) / 4;
    }

    private List<Dock> at(Side side) {
        return plan.docks().stream().filter(d -> d.side() == side).toList();
    }

    /** Depth of the margin above or below. */
    private double along(Side side) {
        List<Dock> docks = at(side);
        boolean lettered = docks.stream().anyMatch(d -> d.letterWidth() > 0);
        return docks.isEmpty() ? EDGE : lettered ? 2 : 1;
    }

    /** Depth of the margin at left or right. */
    private double across(Side side) {
        return at(side).stream()
                .mapToDouble(d -> Math.max(1, d.letterWidth() + 2 * EDGE))
                .max()
                .orElse(EDGE);
    }

    /** Of the letters of upright lines beyond the body. */
    private double overhang(boolean toLeft) {
        return plan.docks().stream()
                .filter(d -> !d.level() && d.letterWidth() > 0 && sides.isLeft(d) == toLeft)
                .mapToDouble(d -> LetterSides.BESIDE
                        + d.letterWidth()
                        + EDGE
                        + (toLeft ? -d.at() : d.at() - plan.body().width()))
                .max()
                .orElse(0);
    }

    /** Letters of level lines stand above them. */
    private double lift(boolean marked) {
        return plan.docks().stream()
                .filter(d -> d.level() && d.letterWidth() > 0)
                .mapToDouble(d -> ABOVE + Pen.CAP + EDGE + (marked ? MARK : 0) - d.at())
                .max()
                .orElse(0);
    }

    @Override
    public boolean asks() {
        return plan.body().asks();
    }

    @Override
    public double widthPt() {
        return width * MODULE_PT;
    }

    @Override
    public double heightPt() {
        return height * MODULE_PT;
    }

    @Override
    public PortPlace place(String portId) {
        Dock dock = dock(portId);
        return new PortPlace(dock.side(), ((dock.level() ? top : left) + dock.at()) * MODULE_PT);
    }

    @Override
    public Duty duty(String portId) {
        return dock(portId).duty();
    }

    private Dock dock(String portId) {
        return plan.docks().stream()
                .filter(d -> d.use().id().equals(portId))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("the symbol was made without port " + portId));
    }

    @Override
    public void paint(Canvas canvas, double xPt, double yPt) {
        Pen field = Pen.at(canvas, xPt, yPt);
        plan.docks().forEach(d -> line(field, d));
        plan.body().art().draw(field.moved(left, top));
        if (changed) {
            ChangeMark.paint(canvas, xPt + MARK * MODULE_PT / 2, yPt + MARK * MODULE_PT / 2);
        }
    }

    private void line(Pen p, Dock d) {
        double at = (d.level() ? top : left) + d.at();
        double in = d.reach();
        double[] ends =
                switch (d.side()) {
                    case TOP -> new double[] {at, top + in, at, 0};
                    case BOTTOM -> new double[] {at, top + plan.body().height() - in, at, height};
                    case LEFT -> new double[] {left + in, at, 0, at};
                    case RIGHT -> new double[] {left + plan.body().width() - in, at, width, at};
                };
        if (d.duty() != Duty.WORKING) {
            p.dashes(ends);
        } else {
            p.lines(ends);
        }
        if (d.letterWidth() > 0) {
            letter(p, d, at);
        }
    }

    private void letter(Pen p, Dock d, double at) {
        double half = d.letterWidth() / 2;
        double above = at - ABOVE - Pen.CAP / 2;
        double beside = at + (sides.isLeft(d) ? -1 : 1) * (LetterSides.BESIDE + half);
        String name = d.use().name().strip();
        switch (d.side()) {
            case TOP -> p.text(name, beside, top - 1.12); // nearer the edge: letters may reach below their foot
            case BOTTOM -> p.text(name, beside, (top + plan.body().height() + height) / 2);
            case LEFT -> p.text(name, EDGE + half, above);
            case RIGHT -> p.text(name, width - EDGE - half, above);
        }
    }
}
