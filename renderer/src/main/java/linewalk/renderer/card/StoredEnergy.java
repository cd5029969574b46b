package linewalk.renderer.card;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import linewalk.drawing.Component;
import linewalk.drawing.CycleChart;
import linewalk.drawing.Kind;
import linewalk.drawing.Line;
import linewalk.linker.step.PressureClass;

/**
 * Energy that is still there when all is locked out, and that must be relieved, restrained or otherwise made safe (29
 * CFR 1910.147(d)(5)). What nobody told is listed as stored.
 */
final class StoredEnergy {

    private static final Set<PressureClass> PRESSED = Set.of(
            PressureClass.SUPPLY,
            PressureClass.INTENSIFIED,
            PressureClass.REDUCED,
            PressureClass.METERED,
            PressureClass.PILOT);

    private static final int MOST_PLACES = 3;

    private final CardJob job;
    private final Surroundings around;
    private final List<Task> tasks = new ArrayList<>();

    private StoredEnergy(CardJob job, Surroundings around) {
        this.job = job;
        this.around = around;
    }

    static List<Task> of(CardJob job, Surroundings around) {
        StoredEnergy energy = new StoredEnergy(job, around);
        energy.accumulators();
        energy.lines();
        energy.loads();
        energy.brakes();
        energy.others();
        energy.proof();
        return energy.tasks;
    }

    private void accumulators() {
        List<Component> all = around.connected(Kind.ACCUMULATOR);
        for (Component a : all) {
            String setting = job.names().setting(a);
            String said = setting.isEmpty()
                    ? job.names().called(a) + ": charge not told"
                    : job.names().called(a) + ", as drawn or listed: " + setting;
            String behind = around.isOpenly(a) ? "" : "; only a valve taken as closed keeps it off this " + job.word();
            tasks.add(new Task(said + behind, job.address(a), discharge(a)));
        }
        if (all.isEmpty()) {
            tasks.add(new Task(
                    "No accumulator is joined to this " + job.word() + " on the drawings",
                    "",
                    "Look round at the machine for one that is not drawn"));
        }
    }

    private String discharge(Component a) {
        String valves = around.neighbours(a).stream()
                .filter(c -> c.kind() == Kind.SHUT_OFF_VALVE)
                .map(c -> c.tag() + (around.isDrawnClosed(c) ? " (drawn closed)" : ""))
                .distinct()
                .collect(Collectors.joining(", "));
        return "Let its oil off to the tank, prove zero. Its gas stays charged"
                + (valves.isEmpty() ? "" : ". Valves at it: " + valves);
    }

    private void lines() {
        if (job.state() == null) {
            String when = job.step() == null ? "at rest" : "in this step";
            tasks.add(new Task(
                    "All lines of this " + job.word() + ": what the oil does in them " + when + " is not told",
                    "",
                    "Treat every one as under pressure; let it off, prove zero"));
            return;
        }
        lines(Set.of(PressureClass.HELD), "Held oil, shut in, in ", "Block what it holds up, then let it off slowly");
        lines(
                Set.of(PressureClass.UNKNOWN),
                "Not known in this step, so treated as stored: ",
                "Let it off, prove zero");
        lines(
                PRESSED,
                "Under pressure in this step; may stay so behind checks and shut valves: ",
                "Let it off, prove zero");
    }

    private void lines(Set<PressureClass> classes, String what, String how) {
        Map<String, Set<String>> addresses = new LinkedHashMap<>();
        for (Line l : around.lines()) {
            PressureClass c = job.classOf(l);
            if (classes.contains(c) || c == null && classes.contains(PressureClass.UNKNOWN)) {
                String number = job.names().number(l);
                addresses
                        .computeIfAbsent(number == null ? "" : number, k -> new LinkedHashSet<>())
                        .add(address(l));
            }
        }
        Set<String> unnumbered = addresses.remove("");
        List<String> named = new ArrayList<>(addresses.keySet());
        if (!named.isEmpty()) {
            tasks.add(new Task(
                    what + (named.size() > 1 ? "lines " : "line ") + String.join(", ", named),
                    joined(addresses.values()),
                    how));
        }
        if (unnumbered != null) {
            tasks.add(new Task(what + "lines without a number", joined(List.of(unnumbered)), how));
        }
    }

    /** "sheet 9, C4, D2; sheet 10, B3"; sheets alone where there are many, since the lines' numbers stand beside. */
    private static String joined(Collection<Set<String>> addresses) {
        Map<String, Set<String>> zones = new LinkedHashMap<>();
        for (Set<String> some : addresses) {
            for (String a : some) {
                String[] parts = a.split(", ", 2);
                Set<String> of = zones.computeIfAbsent(parts[0], k -> new LinkedHashSet<>());
                if (parts.length > 1) {
                    of.add(parts[1]);
                }
            }
        }
        if (addresses.size() > MOST_PLACES) {
            return (zones.size() > 1 ? "sheets " : "sheet ")
                    + zones.keySet().stream()
                            .map(s -> s.replaceFirst("^sheet ", ""))
                            .collect(Collectors.joining(", "));
        }
        return zones.entrySet().stream()
                .map(e -> e.getKey() + (e.getValue().isEmpty() ? "" : ", " + String.join(", ", e.getValue())))
                .collect(Collectors.joining("; "));
    }

    private String address(Line l) {
        return l.ends().isEmpty()
                ? "sheet " + job.set().getSheet(l.page()).name()
                : job.set().address(l.page(), l.ends().get(0).place());
    }

    private void loads() {
        for (Kind kind : Kind.values()) {
            if (kind.isActuator()) {
                for (Component a : around.shown(kind)) {
                    tasks.add(new Task(job.names().called(a) + load(a) + held(a), job.address(a), block(a)));
                }
            }
        }
        List<String> others = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            if (kind.isActuator()) {
                around.connected(kind).stream().filter(a -> !around.isShown(a)).forEach(a -> others.add(a.tag()));
            }
        }
        if (!others.isEmpty()) {
            tasks.add(new Task(
                    "Also joined to this " + job.word() + ": " + String.join(", ", others),
                    "",
                    "See whether opening this " + job.word() + " lets one of them move; if so, block it"));
        }
    }

    private CycleChart.Load loadOf(Component a) {
        if (job.step() == null) {
            return null;
        }
        return job.step().said().loads().entrySet().stream()
                .filter(e -> Pairs.plain(e.getKey()).equals(Pairs.plain(a.tag())))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse(null);
    }

    private String load(Component a) {
        CycleChart.Load load = loadOf(a);
        if (load == null) {
            return ": may hold a load; nothing tells whether it does";
        }
        return load == CycleChart.Load.NONE
                ? ": the cycle chart says no load in this step"
                : ": its load would " + load.name().toLowerCase(Locale.ROOT) + " it (cycle chart)";
    }

    private String held(Component a) {
        boolean held = around.linesAt(a).stream().anyMatch(l -> job.classOf(l) == PressureClass.HELD);
        return held ? "; held oil stands at it" : "";
    }

    private String block(Component a) {
        return loadOf(a) == CycleChart.Load.NONE
                ? "Make sure of it at the machine"
                : "Lower it to its stop, or block what it holds by something solid";
    }

    private void brakes() {
        for (Component b : around.shown(Kind.BRAKE)) {
            brake(b, "");
        }
        around.connected(Kind.BRAKE).stream()
                .filter(b -> !around.isShown(b))
                .forEach(b -> brake(b, ", joined to this " + job.word()));
    }

    private void brake(Component b, String link) {
        tasks.add(new Task(
                job.calledWithSetting(b) + link + ": a spring may set it, oil may free it",
                job.address(b),
                "Block what it holds before its line is opened; its spring stays loaded"));
    }

    private void others() {
        for (Component i : around.connected(Kind.INTENSIFIER)) {
            tasks.add(new Task(
                    job.names().called(i) + ": more than pump pressure may stand behind it",
                    job.address(i),
                    "Let off both sides, prove zero"));
        }
        tasks.add(new Task(
                "Raised or moving loads that no drawing shows: springs, counterweights, doors, ropes",
                "",
                "Look round at the machine; lower or block"));
        tasks.add(new Task(
                "Oil shut in between valves closed for this job", "", "Let it off after closing them, prove zero"));
    }

    private void proof() {
        String points = Gauges.points(around).stream().map(Component::tag).collect(Collectors.joining(", "));
        tasks.add(new Task(
                points.isEmpty()
                        ? "Zero pressure: no test point is drawn on or beside this " + job.word()
                        : "Zero pressure at " + points,
                "",
                (points.isEmpty() ? "Find where a gauge can be fitted. " : "")
                        + "Prove it before opening; again where pressure can build up anew"));
    }
}
