package linewalk.importer.valve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linewalk.drawing.Passage;
import linewalk.drawing.Position;
import linewalk.drawing.Position.How;

/** Ties each square to what moves it over the ports: an operator moves the square beside it (ISO 1219-1). */
final class Movers {

    private final Operator left;
    private final Operator right;
    private final OperatorNames names;
    private final int rest;

    Movers(Operator left, Operator right, OperatorNames names, int rest) {
        this.left = left;
        this.right = right;
        this.names = names;
        this.rest = rest;
    }

    List<Position> positions(List<List<Passage>> squares) throws Doubt {
        int last = squares.size() - 1;
        Optional<String> a = left.present() ? names.of(left, right) : Optional.empty();
        Optional<String> b = right.present() ? names.of(right, left) : Optional.empty();
        List<Position> out = new ArrayList<>();
        for (int i = 0; i <= last; i++) {
            if (i == rest) {
                out.add(new Position(List.of(Position.REST), back(last), squares.get(i)));
                if (i == 0 && held(left)) {
                    out.add(moved(left, a, squares.get(i)));
                } else if (i == last && held(right)) {
                    out.add(moved(right, b, squares.get(i)));
                }
                continue;
            }
            boolean byLeft = mover(i, last);
            out.add(moved(byLeft ? left : right, byLeft ? a : b, squares.get(i)));
        }
        return out;
    }

    /** The operator beside the square; a lever at either end moves every square, others the outermost alone. */
    private boolean mover(int i, int last) throws Doubt {
        boolean toLeft = i < rest;
        Operator own = toLeft ? left : right;
        Operator other = toLeft ? right : left;
        boolean outermost = i == (toLeft ? 0 : last);
        if (own.present() && (outermost || own.how() == How.LEVER)) {
            return toLeft;
        } else if (other.how() == How.LEVER && !own.present()) {
            return !toLeft;
        }
        throw new Doubt("what moves a square is not drawn beside it");
    }

    /** Stands at the end of the square at rest and moves the valve back to it: without a spring, what is drawn need not be where it stays. */
    private static boolean held(Operator o) {
        return o.present() && !o.spring() && o.how() == How.SOLENOID;
    }

    private How back(int last) {
        boolean centred = rest > 0 && rest < last;
        boolean spring = centred ? left.spring() || right.spring() : (rest == 0 ? left : right).spring();
        if (spring) {
            return How.SPRING;
        } else if (left.detent() || right.detent()) {
            return How.DETENT;
        }
        Operator end = rest == 0 ? left : right;
        return centred || end.how() == How.SOLENOID ? null : end.how();
    }

    private static Position moved(Operator o, Optional<String> name, List<Passage> passages) {
        How how = o.how() == null && name.isPresent() ? How.SOLENOID : o.how();
        return new Position(List.of(name.orElse(o.word())), how, passages);
    }
}
