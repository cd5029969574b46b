package linewalk.renderer.iso;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Kind;
import linewalk.renderer.iso.SpoolPorts.Spot;

/**
 * A directional valve: a row of squares with operators at its ends, drawn shifted, so that the lines meet the square that
 * is active. A proportional valve has bars along the row.
 */
final class Spool {

    private static final double BAR = 0.7;

    private final Drafting d;
    private final SpoolRow row;
    private final SpoolPorts ports;
    private final OperatorStack left;
    private final OperatorStack right;
    private final int active;
    private final boolean proportional;
    private final double bar;
    private final double squareY;
    private final double height;

    private Spool(Drafting d) {
        this.d = d;
        row = new SpoolRow(d.part().positions());
        ports = new SpoolPorts(d);
        List<OperatorStack> ends = OperatorStack.of(row, d.standing().energised(), ports.beside());
        left = ends.get(0);
        right = ends.get(1);
        active = row.indexOf(d.shown());
        proportional = d.part().kind() == Kind.PROPORTIONAL_VALVE;
        bar = proportional ? BAR : 0;
        double stacks = Math.max(left.height(), right.height());
        squareY = Math.max(bar, stacks - SquareArt.HEIGHT);
        height = squareY + SquareArt.HEIGHT + bar;
    }

    static Plan plan(Drafting d) {
        Spool s = new Spool(d);
        return new Plan(new Body(s.width(), s.height, s::draw, s.row.size() == 0), s.docks(), true);
    }

    private double bottom() {
        return squareY + SquareArt.HEIGHT;
    }

    private double width() {
        return left.width() + cells() * ports.cell() + right.width();
    }

    private int cells() {
        return Math.max(1, row.size());
    }

    private double cellX(int i) {
        return left.width() + i * ports.cell();
    }

    private double endX() {
        return cellX(cells());
    }

    /** Stacks that fit stand in the middle of the row's end; taller ones end with it. */
    private double top(OperatorStack s) {
        double room = SquareArt.HEIGHT - s.height();
        return squareY + (room > 0 ? room / 2 : room);
    }

    private List<Dock> docks() {
        List<Dock> docks = new ArrayList<>();
        for (PortUse u : ports.shown()) {
            Spot s = ports.spots().get(u.id());
            docks.add(new Dock(
                    u,
                    s.above() ? Side.TOP : Side.BOTTOM,
                    cellX(active) + s.x(),
                    Duty.of(u),
                    s.above() ? squareY : bar));
        }
        docks.addAll(left.docks(top(left)));
        docks.addAll(right.docks(top(right)));
        return docks;
    }

    private void draw(Pen p) {
        SquareArt art = new SquareArt(d.part(), ports);
        for (int i = 0; i < cells(); i++) {
            Pen q = p.moved(cellX(i), squareY);
            q.rect(0, 0, ports.cell(), SquareArt.HEIGHT);
            if (row.size() == 0) {
                art.unknown(q);
            } else {
                art.draw(q, row.get(i));
            }
        }
        double x = cellX(active);
        p.heavy(x, squareY, x + ports.cell(), squareY, x + ports.cell(), bottom(), x, bottom());
        if (proportional) {
            p.lines(cellX(0), squareY - bar, endX(), squareY - bar);
            p.lines(cellX(0), height, endX(), height);
        }
        end(p, left, cellX(0));
        end(p, right, endX());
    }

    private void end(Pen p, OperatorStack stack, double x) {
        stack.draw(p, x, top(stack), proportional);
        double sign = stack.firstSign(top(stack));
        if (sign < squareY) {
            p.lines(x, sign, x, squareY);
        }
    }
}
