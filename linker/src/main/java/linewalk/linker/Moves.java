package linewalk.linker;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import linewalk.drawing.Line;
import linewalk.drawing.LineKind;
import linewalk.drawing.Reference;
import linewalk.linker.Circuit.PortAt;
import linewalk.linker.Circuit.Spot;

/** Where the oil can go on from each line end, for one question. Doubtful ways are left out where asked for. */
final class Moves {

    /** Confidence at which a join or a mate counts as sure. */
    static final double SURE = 0.9;

    final Circuit circuit;
    final Passes passes;
    private final boolean sureOnly;
    private final Map<Spot, List<Move>> known = new HashMap<>();

    Moves(Circuit circuit, Passes passes, boolean sureOnly) {
        this.circuit = circuit;
        this.passes = passes;
        this.sureOnly = sureOnly;
    }

    List<Move> from(Spot leave) {
        return known.computeIfAbsent(leave, this::find);
    }

    private List<Move> find(Spot leave) {
        List<Move> moves = new ArrayList<>();
        circuit.port(leave.end()).ifPresent(at -> through(leave, at, moves));
        circuit.reference(leave.end()).ifPresent(r -> across(leave, r, moves));
        return moves;
    }

    private void through(Spot leave, PortAt at, List<Move> moves) {
        for (Pass p : passes.from(at.component(), at.port())) {
            if (sureOnly && p.unread()) {
                continue;
            }
            for (Spot enter : circuit.atPort(p.out())) {
                if (open(enter)) {
                    moves.add(new Move(leave, enter, p, null, null, p.cost() + Cost.ELEMENT + lineCost(enter)));
                }
            }
        }
    }

    private void across(Spot leave, Reference r, List<Move> moves) {
        for (Reference mate : circuit.mates(r)) {
            if (sureOnly && mateConfidence(r, mate) < SURE) {
                continue;
            }
            for (Spot enter : circuit.atReference(mate)) {
                if (open(enter)) {
                    moves.add(new Move(leave, enter, null, r, mate, 2 * Cost.ELEMENT + lineCost(enter)));
                }
            }
        }
    }

    /** Both ends carry the figure of their least sure mate; the lower of the two is the safe one. */
    static double mateConfidence(Reference a, Reference b) {
        return Math.min(a.mateConfidence(), b.mateConfidence());
    }

    boolean open(Spot enter) {
        return !sureOnly || line(enter).confidence() >= SURE;
    }

    Line line(Spot s) {
        return circuit.lines.get(s.line());
    }

    long lineCost(Spot s) {
        LineKind kind = line(s).kind();
        return kind == LineKind.PILOT ? Cost.PILOT : kind == LineKind.DRAIN ? Cost.DRAIN : Cost.OPEN;
    }
}
