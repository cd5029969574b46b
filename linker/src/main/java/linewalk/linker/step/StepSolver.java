package linewalk.linker.step;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import linewalk.drawing.Component;
import linewalk.drawing.CycleChart;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.Position;

/**
 * Solves the steps of a cycle chart over one set, in the chart's order, since a detent keeps what the step before left.
 * A pure function of set and chart; the work of one step grows with the size of the set.
 */
public final class StepSolver {

    /** Rounds of pilots moving valves that feed pilots, before the step counts as unsettled. */
    private static final int ROUNDS = 50;

    private final DrawingSet set;
    private final CycleChart chart;
    private final PumpPorts pumpPorts;
    private final Net whole;
    private final Pumps wholePumps;
    private final boolean guessing;
    private final boolean remembers;
    private Net cut;
    private Pumps cutPumps;
    private final Map<CycleChart.Step, StepState> solved = new HashMap<>();

    public StepSolver(DrawingSet set, CycleChart chart, PumpPorts pumpPorts) {
        this.set = set;
        this.chart = chart;
        this.pumpPorts = pumpPorts;
        this.whole = new Net(set, false);
        this.wholePumps = new Pumps(whole, pumpPorts);
        this.guessing = Unknowns.any(whole, wholePumps);
        this.remembers = set.components().stream()
                .flatMap(c -> c.positions().stream())
                .anyMatch(p -> p.how() == Position.How.DETENT);
    }

    /** All steps in the chart's order. */
    public List<StepState> all() {
        return chart.steps().stream().map(this::state).toList();
    }

    /** A step of the chart. */
    public StepState state(CycleChart.Step step) {
        StepState known = solved.get(step);
        if (known != null) {
            return known;
        }
        StepState state = state(step, answers(step));
        solved.put(step, state);
        return state;
    }

    /** Which way oil surely goes in each line in a step of the chart, whatever is taken for what is not known. */
    public LineFlows flows(CycleChart.Step step) {
        int at = chart.steps().indexOf(step);
        List<Settled> before = at > 0 ? answers(chart.steps().get(at - 1)).tried : List.of();
        return LineFlows.agreed(answers(step).tried.stream()
                .map(t -> LineSenses.of(set, t.net, Currents.of(t.oil, oilOf(t.net, before))))
                .toList());
    }

    private static Classes oilOf(Net net, List<Settled> answers) {
        return answers.stream()
                .filter(a -> a.net == net)
                .map(a -> a.oil)
                .findFirst()
                .orElse(null);
    }

    /**
     * Lines that a pump feeds in a step, surely: over nothing that is guessed. Empty where it stands still.
     *
     * @param pump its designation
     */
    public Set<String> fedBy(CycleChart.Step step, String pump) {
        StepState state = state(step);
        Position[] positions = new Position[whole.parts.size()];
        whole.parts.forEach(p -> positions[p.index()] = state.position(p.component()));
        Facts facts = new Facts(whole, chart, step);
        Positions.Ranks ranks = new Hydraulics(whole, wholePumps, facts, Guess.SHUT, positions, v -> 0).ranks();
        Flood flood = new Hydraulics(whole, wholePumps, facts, Guess.SHUT, positions, ranks).from(pump);
        Set<String> fed = new LinkedHashSet<>();
        for (int i = 0; i < whole.lines.size(); i++) {
            if (whole.lines.get(i).confidence() >= Net.SURE && flood.fed(whole.volumes(i)[0])) {
                fed.add(whole.lines.get(i).id());
            }
        }
        return fed;
    }

    /** With all that is not known taken one way and the other; the first answer guesses nothing. */
    private Answers answers(CycleChart.Step step) {
        Facts facts = new Facts(whole, chart, step);
        Map<String, Position> before = before(step);
        Settled first = settle(whole, wholePumps, facts, before, Guess.SHUT, Set.of());
        Set<Integer> unsettled = first.unsettled;
        List<Settled> tried = new ArrayList<>();
        tried.add(unsettled.isEmpty() ? first : settle(whole, wholePumps, facts, before, Guess.SHUT, unsettled));
        boolean unsure = guessing || !unsettled.isEmpty() || tried.get(0).unknown();
        for (Guess g : unsure ? List.of(Guess.JOINED, Guess.PRESSED) : List.<Guess>of()) {
            tried.add(settle(whole, wholePumps, facts, before, g, unsettled));
        }
        if (whole.doubtful) {
            if (cut == null) {
                cut = new Net(set, true);
                cutPumps = new Pumps(cut, pumpPorts);
            }
            tried.add(settle(cut, cutPumps, facts, before, Guess.SHUT, unsettled));
        }
        return new Answers(facts, tried, unsettled);
    }

    private Map<String, Position> before(CycleChart.Step step) {
        int at = chart.steps().indexOf(step);
        return remembers && at > 0 ? state(chart.steps().get(at - 1)).positions() : Map.of();
    }

    private record Answers(Facts facts, List<Settled> tried, Set<Integer> unsettled) {}

    /** One answer, and the parts that went round and round. */
    private record Settled(Net net, Position[] positions, Classes oil, Set<Integer> unsettled) {
        boolean unknown() {
            return net.parts.stream()
                    .anyMatch(p -> !p.component().positions().isEmpty() && positions[p.index()] == null);
        }
    }

    private Settled settle(
            Net net, Pumps pumps, Facts facts, Map<String, Position> before, Guess guess, Set<Integer> unknown) {
        Positions choice = new Positions(facts, before);
        Positions.Ranks ranks = v -> 0;
        List<Position[]> seen = new ArrayList<>();
        seen.add(without(choice.choose(net.parts, ranks), unknown));
        for (int n = 0; ; n++) {
            Position[] positions = seen.get(seen.size() - 1);
            Hydraulics now = new Hydraulics(net, pumps, facts, guess, positions, ranks);
            Positions.Ranks next = v -> now.flood.rank[v];
            Position[] then = without(choice.choose(net.parts, next), unknown);
            boolean same = Arrays.equals(positions, then);
            if (same && samePilots(net, ranks, next)) {
                return new Settled(net, then, Classes.of(now), Set.of());
            }
            int earlier = same ? -1 : indexOf(seen, then);
            if (!same) {
                seen.add(then);
            }
            if (earlier >= 0 || n > ROUNDS) {
                return new Settled(net, then, Classes.of(now), moving(seen.subList(Math.max(0, earlier), seen.size())));
            }
            ranks = next;
        }
    }

    private static int indexOf(List<Position[]> seen, Position[] positions) {
        for (int i = 0; i < seen.size(); i++) {
            if (Arrays.equals(seen.get(i), positions)) {
                return i;
            }
        }
        return -1;
    }

    /** The parts that moved in a round that leads back to where it began. */
    private static Set<Integer> moving(List<Position[]> round) {
        Set<Integer> moving = new LinkedHashSet<>();
        for (int k = 1; k < round.size(); k++) {
            moving.addAll(differ(round.get(k - 1), round.get(k)));
        }
        return moving;
    }

    private static boolean samePilots(Net net, Positions.Ranks a, Positions.Ranks b) {
        return net.parts.stream()
                .filter(Unknowns::opensByPilot)
                .flatMap(p -> Pilots.unnamed(p).stream())
                .allMatch(v -> a.at(v) > 0 == b.at(v) > 0);
    }

    private static Position[] without(Position[] positions, Set<Integer> unknown) {
        unknown.forEach(i -> positions[i] = null);
        return positions;
    }

    private static Set<Integer> differ(Position[] a, Position[] b) {
        Set<Integer> differ = new LinkedHashSet<>();
        for (int i = 0; i < a.length; i++) {
            if (!Objects.equals(a[i], b[i])) {
                differ.add(i);
            }
        }
        return differ;
    }

    private StepState state(CycleChart.Step step, Answers a) {
        Map<String, Position> positions = new LinkedHashMap<>();
        for (Part p : whole.parts) {
            Position first = a.tried.get(0).positions[p.index()];
            if (first != null && a.tried.stream().allMatch(t -> first.equals(t.positions[p.index()]))) {
                positions.put(p.component().id(), first);
            }
        }
        List<Component> round =
                a.unsettled.stream().map(i -> whole.parts.get(i).component()).toList();
        return new StepState(step, positions, classes(a.tried), a.facts.running, a.facts.open, round);
    }

    /** A line's class is known where all answers agree on it. */
    private Map<String, PressureClass> classes(List<Settled> tried) {
        Map<String, PressureClass> classes = new LinkedHashMap<>();
        for (int i = 0; i < whole.lines.size(); i++) {
            PressureClass agreed = null;
            for (Settled t : tried) {
                for (int v : t.net.volumes(i)) {
                    PressureClass said = LineClass.of(t.net, i, v, t.oil.classes[v]);
                    agreed = agreed == null || agreed == said ? said : PressureClass.UNKNOWN;
                }
            }
            classes.put(whole.lines.get(i).id(), agreed);
        }
        return classes;
    }
}
