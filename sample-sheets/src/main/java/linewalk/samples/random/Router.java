package linewalk.samples.random;

import java.util.ArrayList;
import java.util.List;
import linewalk.samples.symbol.Spot;

/** Finds a way for a line: straight, with one bend or with several, longer detours the more tries have failed. */
final class Router {
    private static final int TRIES = 50;

    private final Board board;
    private final Chance chance;

    Router(Board board, Chance chance) {
        this.board = board;
        this.chance = chance;
    }

    /** A way from one to the other, or null. */
    List<Spot> way(Tip from, Tip to, Object net) {
        for (int i = 0; i < TRIES; i++) {
            double reach = i < 4 ? 0 : 0.5 + i * 0.2;
            List<Spot> path = straightened(proposal(from, to, reach));
            if (path != null && board.lets(path, from, to, net)) {
                return path;
            }
        }
        return null;
    }

    private List<Spot> proposal(Tip from, Tip to, double reach) {
        Spot a = onGrid(from, chance.between(0, reach));
        Spot b = onGrid(to, chance.between(0, reach));
        List<Spot> path = new ArrayList<>(List.of(from.at(), from.exit(), a));
        switch (chance.between(0, 3)) {
            case 0 -> path.add(new Spot(a.x(), b.y()));
            case 1 -> path.add(new Spot(b.x(), a.y()));
            case 2 -> {
                double x = chance.snapped(Math.min(a.x(), b.x()) - reach, Math.max(a.x(), b.x()) + reach);
                path.add(new Spot(x, a.y()));
                path.add(new Spot(x, b.y()));
            }
            default -> {
                double y = chance.snapped(Math.min(a.y(), b.y()) - reach, Math.max(a.y(), b.y()) + reach);
                path.add(new Spot(a.x(), y));
                path.add(new Spot(b.x(), y));
            }
        }
        path.add(b);
        path.add(to.exit());
        path.add(to.at());
        return path;
    }

    /** A bend stands on the grid in the direction in which it can be moved. */
    private static Spot onGrid(Tip tip, double by) {
        if (by == 0) {
            return tip.exit();
        }
        Spot far = tip.farther(by);
        double x = tip.dx() == 0 ? far.x() : outwards(far.x(), tip.dx());
        double y = tip.dy() == 0 ? far.y() : outwards(far.y(), tip.dy());
        return new Spot(x, y);
    }

    private static double outwards(double value, int way) {
        return way > 0 ? Math.ceil(value * 2) / 2 : Math.floor(value * 2) / 2;
    }

    /** Without points that are no bends; null where the line would turn back on itself. */
    private static List<Spot> straightened(List<Spot> path) {
        List<Spot> out = new ArrayList<>();
        for (Spot next : path) {
            int last = out.size() - 1;
            if (last >= 0 && Area.of(out.get(last)).distance(next) < 1e-9) {
                continue;
            }
            if (last >= 1) {
                Spot a = out.get(last - 1);
                Spot b = out.get(last);
                double along = (b.x() - a.x()) * (next.x() - b.x()) + (b.y() - a.y()) * (next.y() - b.y());
                if (along < 0) {
                    return null;
                }
                if (along > 0) {
                    out.remove(last);
                }
            }
            out.add(next);
        }
        return out.size() < 2 ? null : List.copyOf(out);
    }
}
