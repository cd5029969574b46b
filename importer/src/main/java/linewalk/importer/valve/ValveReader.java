package linewalk.importer.valve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linewalk.drawing.Box;
import linewalk.drawing.Kind;
import linewalk.drawing.Passage;
import linewalk.drawing.Point;
import linewalk.drawing.Port;
import linewalk.drawing.Position;
import linewalk.importer.lettering.Label;

/** One figure that may be a directional valve, in one lie. */
final class ValveReader {

    /** How far from a long side a line may end and still meet it, in tolerances. */
    private static final double MEETS = 3;

    /** How near to a long side the arrow of a passage ends, in sizes of the square. */
    private static final double REACHES = 0.2;

    private final List<Ink> squares;
    private final List<Ink> ends;
    private final List<Port> ports;
    private final List<Label> labels;
    private final Lie lie;
    private final double pageTolPt;

    /**
     * @param squares the ink in the lie's own frame, with every short stroke by itself
     * @param ends the same, with dashes joined to lines
     */
    ValveReader(List<Ink> squares, List<Ink> ends, List<Port> ports, List<Label> labels, Lie lie, double pageTolPt) {
        this.squares = squares;
        this.ends = ends;
        this.ports = ports;
        this.labels = labels;
        this.lie = lie;
        this.pageTolPt = pageTolPt;
    }

    /** Empty where the figure is no row of squares with lines at one of them. */
    Optional<ValveReading> read(Row found) {
        double tolPt = Math.min(pageTolPt, 0.06 * found.heightPt());
        int rest = rest(found);
        if (rest < 0) {
            return Optional.empty();
        }
        int from = 0;
        int to = found.squares();
        while (from < rest && operator(found.square(from), tolPt)) {
            from++;
        }
        while (to > rest + 1 && operator(found.square(to - 1), tolPt)) {
            to--;
        }
        return to - from < 2 ? Optional.empty() : read(found.part(from, to), rest - from, tolPt);
    }

    private Optional<ValveReading> read(Row row, int rest, double tolPt) {
        Operator left = new OperatorReader(row, true, ends, tolPt).read();
        Operator right = new OperatorReader(row, false, ends, tolPt).read();
        boolean proportional = left.proportional() || right.proportional() || infinite(row, tolPt);
        Kind kind = proportional ? Kind.PROPORTIONAL_VALVE : Kind.DIRECTIONAL_VALVE;
        try {
            List<Position> positions = positions(row, rest, left, right, tolPt);
            return Optional.of(new ValveReading(kind, positions, null));
        } catch (Doubt d) {
            boolean sure = row.squares() <= 4
                    && (operates(left) && (operates(right) || right.spring()) || operates(right) && left.spring());
            return sure ? Optional.of(new ValveReading(kind, List.of(), d.getMessage())) : Optional.empty();
        }
    }

    private static boolean operates(Operator o) {
        return o.how() != null;
    }

    private List<Position> positions(Row row, int rest, Operator left, Operator right, double tolPt) throws Doubt {
        if (row.squares() > 4) {
            throw new Doubt("the row has more squares than a valve");
        } else if (goesOn(row, -1, tolPt) || goesOn(row, row.squares(), tolPt)) {
            throw new Doubt("a square beside the row was not made out");
        }
        Map<Place, Port> at = placed(row, rest);
        List<Place> places = List.copyOf(at.keySet());
        List<List<Way>> ways = new ArrayList<>();
        for (int i = 0; i < row.squares(); i++) {
            ways.add(new SquareReader(row.square(i), squares, places, tolPt).read());
        }
        agree(ways, places, rest, SquareReader.BESIDE * Math.min(row.pitchPt(), row.heightPt()));
        Passages passages = new Passages(at, ways);
        List<List<Passage>> joined = ways.stream().map(passages::of).toList();
        return new Movers(left, right, new OperatorNames(labels, lie), rest).positions(joined);
    }

    /** Two arrows lead from one long side to the other where an operator should stand. */
    private boolean goesOn(Row row, int square, double tolPt) {
        double x0 = row.x0Pt() + square * row.pitchPt();
        Box beside = new Box(x0, row.y0Pt(), x0 + row.pitchPt(), row.y1Pt());
        double side = Math.min(row.pitchPt(), row.heightPt());
        List<Point> across = new HeadFinder(SquareInk.of(beside, squares, tolPt), side, tolPt)
                .heads().stream()
                        .map(Head::tip)
                        .filter(t -> Math.min(t.yPt() - row.y0Pt(), row.y1Pt() - t.yPt()) < REACHES * side)
                        .toList();
        return across.stream().anyMatch(t -> t.distancePt(across.get(0)) > tolPt);
    }

    /** Each square says something of each port, and of the same places as the square at rest. */
    private static void agree(List<List<Way>> squares, List<Place> places, int rest, double withinPt) throws Doubt {
        List<Place> atRest =
                squares.get(rest).stream().flatMap(w -> w.places().stream()).toList();
        for (List<Way> ways : squares) {
            List<Place> here = ways.stream().flatMap(w -> w.places().stream()).toList();
            boolean all = here.containsAll(places);
            boolean same = here.size() == atRest.size()
                    && here.stream().allMatch(p -> atRest.stream().anyMatch(r -> r.near(p, withinPt)));
            if (!all || !same) {
                throw new Doubt("the squares do not agree on where the ports are");
            }
        }
    }

    /** Ports on the long sides of the square at rest. */
    private Map<Place, Port> placed(Row row, int rest) throws Doubt {
        Map<Place, Port> out = new LinkedHashMap<>();
        List<Place> aside = new ArrayList<>();
        double near = SquareReader.BESIDE * Math.min(row.pitchPt(), row.heightPt());
        for (Port p : ports) {
            int square = square(row, p);
            if (square < 0) {
                continue;
            }
            Point local = lie.local(p.place());
            boolean upper = local.yPt() < row.box().center().yPt();
            Place place = new Place(local.xPt() - row.square(square).x0Pt(), upper);
            if (square != rest) {
                aside.add(place);
            } else if (out.keySet().stream().anyMatch(o -> o.near(place, near))) {
                throw new Doubt("two lines meet one port");
            } else {
                out.put(place, p);
            }
        }
        if (aside.stream().anyMatch(p -> out.keySet().stream().anyMatch(o -> o.near(p, near)))) {
            throw new Doubt("lines meet more than one square");
        }
        return out;
    }

    /** The square whose long sides this port lies on, or -1. */
    private int square(Row row, Port p) {
        Point local = lie.local(p.place());
        double gap = Math.min(Math.abs(local.yPt() - row.y0Pt()), Math.abs(local.yPt() - row.y1Pt()));
        double at = (local.xPt() - row.x0Pt()) / row.pitchPt();
        return gap > MEETS * pageTolPt || at <= 0 || at >= row.squares() ? -1 : (int) at;
    }

    /** The square with the most lines; -1 where two have as many, or none has two. */
    private int rest(Row row) {
        int[] count = new int[row.squares()];
        for (Port p : ports) {
            int i = square(row, p);
            if (i >= 0) {
                count[i]++;
            }
        }
        int best = -1;
        for (int i = 0; i < count.length; i++) {
            if (count[i] > 1 && (best < 0 || count[i] > count[best])) {
                best = i;
            }
        }
        for (int i = 0; i < count.length; i++) {
            if (best >= 0 && i != best && count[i] == count[best]) {
                return -1;
            }
        }
        return best;
    }

    /** A square with nothing but one oblique stroke, or one triangle, is a solenoid or a pilot of the row's own size. */
    private boolean operator(Box square, double tolPt) {
        List<Ink> inside = SquareInk.of(square, squares, tolPt);
        if (inside.isEmpty() || inside.stream().anyMatch(Ink::curved)) {
            return false;
        }
        boolean triangles =
                inside.stream().allMatch(k -> k.closed() && k.points().size() == 3);
        Ink one = inside.get(0);
        Box b = one.box();
        boolean stroke = inside.size() == 1
                && one.points().size() == 2
                && b.widthPt() > 0.15 * square.widthPt()
                && b.heightPt() > 0.3 * square.heightPt();
        return triangles || stroke;
    }

    /** Rules along both long sides, a little off them: any place between the squares' is possible. */
    private boolean infinite(Row row, double tolPt) {
        boolean above = false;
        boolean below = false;
        for (Ruling r : Ruling.level(ends, tolPt)) {
            boolean spans = r.spans(row.x0Pt(), row.x1Pt(), 0.15 * row.pitchPt())
                    && r.toPt() - r.fromPt() < 1.15 * (row.x1Pt() - row.x0Pt());
            double up = row.y0Pt() - r.atPt();
            double down = r.atPt() - row.y1Pt();
            above |= spans && up > tolPt && up < 0.3 * row.heightPt();
            below |= spans && down > tolPt && down < 0.3 * row.heightPt();
        }
        return above && below;
    }
}
