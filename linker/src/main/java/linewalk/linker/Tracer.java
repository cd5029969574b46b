package linewalk.linker;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import linewalk.drawing.Component;
import linewalk.drawing.CycleChart;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.Finding;
import linewalk.drawing.Kind;
import linewalk.drawing.Port;
import linewalk.drawing.UserError;
import linewalk.linker.step.StepState;

/**
 * Answers questions on where the oil flows: the way of least resistance from a part over others to a part, in the
 * position the machine is in. Doubt is never walked over silently.
 */
public final class Tracer {

    private final CycleChart chart;
    private final Circuit circuit;
    private final PumpSides pumps;
    private final Designations designations;
    private final Legs legs;
    private final TraceDoubts doubts;
    private Steps steps;

    public Tracer(DrawingSet set, CycleChart chart) {
        this.chart = chart;
        this.circuit = new Circuit(set);
        this.pumps = new PumpSides(circuit);
        this.designations = new Designations(circuit);
        this.legs = new Legs(circuit);
        this.doubts = new TraceDoubts(circuit);
    }

    /**
     * Finds up to as many ways as asked for.
     *
     * @throws UserError for a designation, port or step that is not there
     */
    public Answer trace(Question q) {
        MachineState state = new MachineState(q.step() == null ? null : state(q.step()));
        Route route = route(q, state);
        Passes passes = new Passes(circuit, pumps, state, q.anyPosition(), Set.copyOf(route.via()));
        Asked asked = new Asked(withEnd(q, route), route, state, passes);
        return q.crossDoubt() ? anyWay(asked) : sureWay(asked);
    }

    /**
     * The machine in a step; solved when first asked for.
     *
     * @throws UserError for a step that the chart does not have
     */
    public StepState state(String step) {
        Designations.step(chart, step);
        if (steps == null) {
            steps = new Steps(circuit, chart);
        }
        return steps.get(step);
    }

    private record Asked(Question question, Route route, MachineState state, Passes passes) {}

    private static Question withEnd(Question q, Route route) {
        String to = q.to() == null ? route.to().get(0).tag() : q.to();
        return new Question(q.from(), q.via(), to, q.step(), q.anyPosition(), q.crossDoubt(), q.paths());
    }

    private Route route(Question q, MachineState state) {
        if (q.paths() < 1) {
            throw new UserError("the number of paths must be at least 1");
        }
        Designations.Named from = designations.find(q.from());
        List<String> via = q.via().stream()
                .map(v -> Names.plain(designations.find(v).tag()))
                .toList();
        boolean anyTank = q.to() == null || Names.plain(q.to()).equals(Designations.TANK);
        Designations.Named to = anyTank ? null : designations.find(q.to());
        boolean guessed = from.port() == null
                && from.drawings().stream()
                        .anyMatch(c ->
                                c.kind() == Kind.PUMP && state.sides(c, pumps).guessed());
        return new Route(
                from.drawings(),
                leaving(from, state),
                guessed,
                via,
                to == null ? designations.tanks() : to.drawings(),
                to == null ? null : to.port());
    }

    /** Of a pump the pressure side, of a tank what pumps draw from, of anything else the working ports. */
    private List<Port> leaving(Designations.Named from, MachineState state) {
        List<Component> drawings = from.drawings();
        if (from.port() != null) {
            return drawings.stream()
                    .flatMap(c -> c.ports().stream())
                    .filter(p -> from.port().equalsIgnoreCase(p.name()))
                    .toList();
        }
        if (drawings.get(0).kind() == Kind.TANK) {
            return pumps.drawnFrom(drawings);
        }
        PortRoles roles = new PortRoles(circuit);
        List<Port> working = drawings.stream()
                .flatMap(c -> (c.kind() == Kind.PUMP ? state.sides(c, pumps).pressure() : roles.working(c)).stream())
                .toList();
        boolean pump = drawings.get(0).kind() == Kind.PUMP;
        return working.isEmpty() && !pump
                ? drawings.stream().flatMap(c -> c.ports().stream()).toList()
                : working;
    }

    private Answer anyWay(Asked a) {
        Moves moves = new Moves(circuit, a.passes, false);
        List<Search.Arrival> found = new Search(moves, a.route).best(a.question.paths());
        return found.isEmpty() ? notFound(a, moves) : found(a, found);
    }

    /** Where the way of least resistance crosses a doubt, only a sure way as easy as that will do instead. */
    private Answer sureWay(Asked a) {
        Moves all = new Moves(circuit, a.passes, false);
        List<Search.Arrival> easiest = new Search(all, a.route).best(1);
        if (easiest.isEmpty()) {
            return notFound(a, all);
        }
        Moves sure = new Moves(circuit, a.passes, true);
        List<Search.Arrival> found =
                a.route.leavingGuessed() ? List.of() : new Search(sure, a.route).best(a.question.paths());
        long least = Cost.hindrance(easiest.get(0).walk().cost);
        if (found.isEmpty() || Cost.hindrance(found.get(0).walk().cost) > least) {
            return atDoubt(a, easiest.get(0));
        }
        if (Cost.overRelief(found.get(0).walk().cost)) {
            Optional<DeadEnds.Stop> unknown = new DeadEnds(all, a.route, a.state).unknown();
            if (unknown.isPresent()) {
                return overReliefOnly(a, unknown.get());
            }
        }
        return found(a, found);
    }

    private Answer.Found found(Asked a, List<Search.Arrival> found) {
        return new Answer.Found(
                found.stream().map(f -> trace(a, legs.of(f.walk(), f.end()))).toList());
    }

    private Trace trace(Asked a, List<Leg> walked) {
        List<Finding> unsure = new ArrayList<>(doubts.of(walked, a.route.leavingGuessed()));
        StepState step = a.state.step();
        if (step != null && !step.unsettled().isEmpty()) {
            unsure.add(Steps.unsettled(step));
        }
        walked.stream()
                .filter(l -> l instanceof Leg.Through t && a.state.assumed(t.component()))
                .map(l -> TraceDoubts.assumed(((Leg.Through) l).component(), a.state))
                .filter(f -> !unsure.contains(f))
                .forEach(unsure::add);
        return new Trace(a.question, walked, legs.sheets(walked), unsure);
    }

    private Answer atDoubt(Asked a, Search.Arrival easiest) {
        List<Leg> walked = legs.of(easiest.walk(), easiest.end());
        for (int i = 0; i < walked.size(); i++) {
            Finding doubt = doubts.of(walked.get(i), i == 0 && a.route.leavingGuessed());
            if (doubt != null) {
                List<Leg> reached = walked.subList(0, Math.max(1, i));
                Trace trace = new Trace(a.question, reached, legs.sheets(reached), List.of(doubt));
                return new Answer.Stopped(trace, "stops at a doubt: " + doubt.message(), true);
            }
        }
        throw new IllegalStateException("a way that is not sure has no doubt on it: " + walked);
    }

    private Answer overReliefOnly(Asked a, DeadEnds.Stop s) {
        List<Leg> reached = legs.of(s.walk(), s.end());
        Trace trace = new Trace(a.question, reached, legs.sheets(reached), List.of());
        return new Answer.Stopped(
                trace,
                s.why() + "; the only way known to go on is over a relief valve, which opens only when nothing else"
                        + " leads on",
                true);
    }

    private String fedByAnother(Asked a) {
        return a.state.step() == null ? "" : new FeedingPumps(circuit, steps).instead(a.route, a.question.step());
    }

    private Answer notFound(Asked a, Moves moves) {
        Optional<DeadEnds.Stop> stop = new DeadEnds(moves, a.route, a.state).farthest();
        if (stop.isPresent()) {
            List<Leg> reached = legs.of(stop.get().walk(), stop.get().end());
            return new Answer.Stopped(
                    new Trace(a.question, reached, legs.sheets(reached), List.of()),
                    stop.get().why() + fedByAnother(a),
                    false);
        }
        Component from = a.route.from().get(0);
        Leg start = new Leg.Through(from, null, null, null, null);
        List<Leg> reached = List.of(start);
        String tags = a.route.via().stream().collect(Collectors.joining(", "));
        boolean none =
                a.route.leaving().stream().allMatch(p -> circuit.atPort(p).isEmpty());
        String where = from.tag() + " on " + circuit.set.address(from.page(), from.place());
        String why = none
                ? "ends at " + where + ": no line was read at a port by which oil leaves it"
                : "no way from " + where + " leads" + (tags.isEmpty() ? "" : " over " + tags) + " to " + a.question.to()
                        + fedByAnother(a);
        return new Answer.Stopped(new Trace(a.question, reached, legs.sheets(reached), List.of()), why, false);
    }
}
