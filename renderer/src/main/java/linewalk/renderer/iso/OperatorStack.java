package linewalk.renderer.iso;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import linewalk.drawing.Position;
import linewalk.drawing.Position.How;

/** The operators at one end of a row of squares, one above the other. */
final class OperatorStack {

    private final boolean left;
    private final List<Operator> operators = new ArrayList<>();

    private OperatorStack(boolean left) {
        this.left = left;
    }

    /** At both ends, left first. */
    static List<OperatorStack> of(SpoolRow row, Set<String> energised, List<PortUse> lines) {
        OperatorStack left = new OperatorStack(true);
        OperatorStack right = new OperatorStack(false);
        int rest = row.rest();
        double middle = rest < 0 ? (row.size() - 1) / 2.0 : rest;
        for (int i = 0; i < row.size(); i++) {
            for (Position p : row.all(i)) {
                if (p.isRest()) {
                    continue;
                }
                boolean toLeft = i < middle || i == middle && rest == 0 && row.size() > 1;
                (toLeft ? left : right).add(Operator.of(p, energised));
            }
        }
        if (rest >= 0) {
            back(row, rest, left, right);
        }
        lines.forEach(u -> line(u, left, right));
        return List.of(left, right);
    }

    /** What brings the valve to its position at rest. */
    private static void back(SpoolRow row, int rest, OperatorStack left, OperatorStack right) {
        How how = row.get(rest).how();
        boolean first = rest == 0 && row.size() > 1;
        boolean between = rest > 0 && rest < row.size() - 1;
        if (how == How.SPRING && between) {
            left.add(Operator.of(how));
            right.add(Operator.of(how));
        } else if (how != null && (!between || how == How.DETENT)) {
            (first ? left : right).add(Operator.of(how));
        }
    }

    private static void line(PortUse u, OperatorStack left, OperatorStack right) {
        boolean drain = Roles.isDrain(u.name());
        List<OperatorStack> order = drain ? List.of(right, left) : List.of(left, right);
        for (boolean named : new boolean[] {true, false}) {
            for (OperatorStack s : order) {
                if ((named || !drain) && s.take(u, named)) {
                    return;
                }
            }
        }
        OperatorStack fewer = left.lines() <= right.lines() ? left : right;
        (drain && right.lines() == 0 ? right : fewer).operators.add(new Operator(null, List.of(), Set.of(), u));
    }

    private long lines() {
        return operators.stream().filter(o -> o.line() != null).count();
    }

    /** By a pilot operator that still has no line. */
    private boolean take(PortUse u, boolean named) {
        for (int i = 0; i < operators.size(); i++) {
            Operator o = operators.get(i);
            boolean fits = !named
                    || u.name() != null
                            && o.names().stream()
                                    .anyMatch(n -> n.equalsIgnoreCase(u.name().strip()));
            if (o.how() == How.PILOT && o.line() == null && fits) {
                operators.set(i, o.with(u));
                return true;
            }
        }
        return false;
    }

    private void add(Operator o) {
        if (!operators.contains(o)) {
            operators.add(o);
        }
    }

    double width() {
        double names = operators.stream().mapToDouble(Operator::width).max().orElse(0);
        return operators.isEmpty() ? 0 : Math.ceil(4 * Math.max(3.25, names + 0.25)) / 4;
    }

    double height() {
        return operators.stream().mapToDouble(Operator::height).sum();
    }

    /** Of the lines that come in, where the stack begins at a height. */
    List<Dock> docks(double top) {
        List<Dock> docks = new ArrayList<>();
        double y = top;
        for (Operator o : operators) {
            if (o.line() != null) {
                Side side = left ? Side.LEFT : Side.RIGHT;
                docks.add(new Dock(o.line(), side, y + o.lineY(), Duty.CONTROL, width() - o.depth()));
            }
            y += o.height();
        }
        return docks;
    }

    /** Beside the end of a row at an upright line, from a top downwards. */
    void draw(Pen p, double endX, double top, boolean proportional) {
        double y = top;
        for (Operator o : operators) {
            Pen q = p.moved(endX, y).mirrored(left, 0);
            o.draw(q, proportional);
            y += o.height();
        }
    }

    /** Where the first sign stands below its names. */
    double firstSign(double top) {
        return operators.isEmpty()
                ? Double.MAX_VALUE
                : top + Operator.NAME * operators.get(0).names().size();
    }
}
