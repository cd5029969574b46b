package linewalk.renderer;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import linewalk.drawing.Component;
import linewalk.drawing.End;
import linewalk.drawing.Kind;
import linewalk.drawing.Line;
import linewalk.drawing.LineKind;
import linewalk.drawing.Port;
import linewalk.drawing.Reference;
import linewalk.linker.Leg;

/**
 * What a print shows, sorted into nodes and nets: parts, crossings from sheet to sheet, tanks (one for each line that ends
 * there) and branches that lead away.
 */
final class SchemeDraft {

    /** A node: a part or a crossing. */
    record Spot(Component part, List<Reference> crossing) {}

    /** Where a net meets a node. */
    record Meet(int spot, String port) {}

    /**
     * A line with what it meets.
     *
     * @param tanks ports of tanks that it ends at
     * @param away ends that the print does not show
     */
    record Strand(Line line, List<Meet> meets, List<End.AtPort> tanks, List<Beyond.Away> away) {}

    final List<Spot> spots = new ArrayList<>();
    final List<Strand> strands = new ArrayList<>();
    private final PrintJob job;
    private final SetIndex index;
    private final Words words;
    private final HeldEnergy energy;
    private final Map<String, Integer> partSpots = new LinkedHashMap<>();
    private final Map<String, Integer> crossingSpots = new HashMap<>();
    private final Set<String> shownLines = new TreeSet<>();
    private final Set<String> shownTanks = new TreeSet<>();

    SchemeDraft(PrintJob job, SetIndex index, HeldEnergy energy) {
        this.job = job;
        this.index = index;
        this.words = new Words(job);
        this.energy = energy;
        for (Component c : job.subject().excerpt().parts()) {
            if (c.kind() == Kind.TANK) {
                shownTanks.add(c.id());
            } else {
                spot(c);
            }
        }
        List<Line> lines = job.subject().excerpt().lines().stream()
                .filter(l -> !isHidden(l))
                .toList();
        lines.forEach(l -> shownLines.add(l.id()));
        lines.forEach(this::strand);
        new ArrayList<>(spots).forEach(this::branches);
        stop();
    }

    /** A walk that ends on a line says so there. */
    private void stop() {
        List<Leg> legs = job.subject().legs();
        if (!legs.isEmpty() && legs.get(legs.size() - 1) instanceof Leg.Along last) {
            strands.stream()
                    .filter(s -> s.line.id().equals(last.line().id()))
                    .findFirst()
                    .ifPresent(s -> s.away.add(Beyond.Away.at("the walk stops here")));
        }
    }

    boolean isHidden(Line line) {
        Layer layer = Layer.of(line, job.moment().classOf(line));
        return layer != null && job.form().hidden().contains(layer);
    }

    private int spot(Component c) {
        return partSpots.computeIfAbsent(c.id(), k -> {
            spots.add(new Spot(c, List.of()));
            return spots.size() - 1;
        });
    }

    private void strand(Line line) {
        Strand strand = new Strand(line, new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        strands.add(strand);
        for (End e : line.ends()) {
            if (e instanceof End.AtPort p && index.part(p.component()) != null) {
                meet(strand, p);
            } else if (e instanceof End.AtReference r && index.reference(r.reference()) != null) {
                cross(strand, index.reference(r.reference()));
            } else {
                strand.away.add(Beyond.Away.at("open end, " + words.address(line.page(), e.place())));
            }
        }
    }

    private void meet(Strand strand, End.AtPort p) {
        Component c = index.part(p.component());
        if (shownTanks.contains(c.id())) {
            strand.tanks.add(p);
        } else if (partSpots.containsKey(c.id()) || isInstrument(c)) {
            strand.meets.add(new Meet(spot(c), p.port()));
        } else {
            strand.away.addAll(Beyond.of(strand.line, index, words, energy, e -> !e.equals(p)));
        }
    }

    /** Shown wherever it hangs on a line that is shown. */
    static boolean isInstrument(Component c) {
        return c.kind() == Kind.GAUGE || c.kind() == Kind.TEST_POINT;
    }

    private void cross(Strand strand, Reference r) {
        List<Reference> crossing = index.crossing(r);
        List<Reference> shown = crossing.stream()
                .filter(x -> index.atReference(x.id()).stream().anyMatch(l -> shownLines.contains(l.id())))
                .toList();
        if (shown.size() < 2) {
            strand.away.addAll(Beyond.of(r, index, words, energy, e -> false));
            return;
        }
        String key = crossing.get(0).id();
        boolean first = !crossingSpots.containsKey(key);
        int spot = crossingSpots.computeIfAbsent(key, k -> {
            spots.add(new Spot(null, shown));
            return spots.size() - 1;
        });
        strand.meets.add(new Meet(spot, r.id()));
        if (first) {
            crossing.stream()
                    .filter(x -> !shown.contains(x))
                    .flatMap(x -> index.atReference(x.id()).stream())
                    .forEach(l ->
                            strand.away.addAll(Beyond.of(l, index, words, energy, e -> e instanceof End.AtReference)));
        }
    }

    /** Lines of a part's ports that the print does not show become branches. */
    private void branches(Spot spot) {
        if (spot.part == null) {
            return;
        }
        for (Port port : spot.part.ports()) {
            for (Line line : index.atPort(port.id())) {
                if (!shownLines.contains(line.id()) && !isHidden(line)) {
                    Strand strand = new Strand(line, new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
                    strand.meets.add(new Meet(partSpots.get(spot.part.id()), port.id()));
                    strand.away.addAll(Beyond.of(
                            line,
                            index,
                            words,
                            energy,
                            e -> e instanceof End.AtPort p && p.port().equals(port.id())));
                    strands.add(strand);
                }
            }
        }
    }

    /** Of nodes and strands, between tank and actuators. */
    Heights heights() {
        List<int[]> nets = new ArrayList<>();
        boolean[] grounded = new boolean[strands.size()];
        for (int i = 0; i < strands.size(); i++) {
            Strand s = strands.get(i);
            nets.add(s.meets.stream().mapToInt(Meet::spot).distinct().toArray());
            grounded[i] = !s.tanks.isEmpty() || s.line.kind() == LineKind.DRAIN && s.meets.size() == 1;
        }
        Double[] fixed = new Double[spots.size()];
        for (int i = 0; i < fixed.length; i++) {
            Component c = spots.get(i).part;
            if (c != null && (c.kind().isActuator() || c.kind() == Kind.BRAKE)) {
                fixed[i] = 1.0;
            } else if (c != null && c.kind() == Kind.PUMP) {
                fixed[i] = Heights.PUMP;
            }
        }
        return new Heights(nets, fixed, grounded);
    }
}
