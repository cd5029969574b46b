package linewalk.renderer.card;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import linewalk.drawing.Position;
import linewalk.linker.Leg;

/** What to lock out and shut, in this order: drives, valves, solenoids. Common practice; the plant's own rules go first. */
final class Isolation {

    private static final Set<Kind> SWITCHED =
            Set.of(Kind.DIRECTIONAL_VALVE, Kind.PROPORTIONAL_VALVE, Kind.CARTRIDGE_VALVE);

    private final CardJob job;
    private final Surroundings around;
    private final List<Component> motors;
    private final List<Task> tasks = new ArrayList<>();

    private Isolation(CardJob job, Surroundings around) {
        this.job = job;
        this.around = around;
        motors = job.set().components().stream()
                .filter(c -> c.kind() == Kind.ELECTRIC_MOTOR)
                .toList();
    }

    static List<Task> of(CardJob job, Surroundings around) {
        Isolation isolation = new Isolation(job, around);
        isolation.drives();
        isolation.valves();
        isolation.solenoids();
        return isolation.tasks;
    }

    private void drives() {
        List<Component> shown = around.shown(Kind.PUMP);
        List<Component> all = around.connected(Kind.PUMP);
        Set<Component> unpaired = new LinkedHashSet<>(motors);
        for (Component pump : all) {
            Pairs.motorOf(pump, motors).ifPresent(unpaired::remove);
        }
        for (Component pump : all) {
            String link = shown.contains(pump) ? "" : ", which is joined to this " + job.word();
            Pairs.motorOf(pump, motors)
                    .ifPresentOrElse(m -> paired(m, pump, link), () -> unpaired(pump, link, unpaired));
        }
        if (all.isEmpty()) {
            tasks.add(new Task(
                    "No pump is joined to this " + job.word() + " on the drawings",
                    "",
                    "Find what feeds it, stop it and lock it out" + which(Set.copyOf(motors))));
        }
    }

    private void paired(Component motor, Component pump, String link) {
        tasks.add(new Task(
                job.calledWithSetting(motor) + ": by its number it drives "
                        + job.names().called(pump) + link,
                job.address(motor),
                "Check that it is the one, stop it, lock it out, try to start it"));
    }

    private void unpaired(Component pump, String link, Set<Component> unpaired) {
        tasks.add(new Task(
                "Drive of " + job.names().called(pump) + link + ": no electric motor has its number",
                job.address(pump),
                "Find which drive it is, stop it, lock it out, try to start it" + which(unpaired)));
    }

    private static String which(Set<Component> motors) {
        String tags = motors.stream().map(Component::tag).distinct().sorted().collect(Collectors.joining(", "));
        return tags.isEmpty() ? "" : ". Find which: " + tags;
    }

    private void valves() {
        List<Component> valves = around.near(Kind.SHUT_OFF_VALVE);
        for (Component v : valves) {
            tasks.add(new Task(job.calledWithSetting(v) + ": " + stands(v), job.address(v), close(v)));
        }
        if (job.isPath()) {
            missing();
        } else if (valves.isEmpty()) {
            tasks.add(new Task(
                    "No shut-off valve is drawn in or next to this circuit",
                    "",
                    "Find how it can be cut off, or drain it"));
        }
    }

    private String close(Component v) {
        if (around.isDrawnClosed(v)) {
            return "Check that it is closed; open it only to let stored oil off";
        }
        return around.neighbours(v).stream().anyMatch(c -> c.kind() == Kind.PUMP)
                ? "Close and hold it so, only after the pump is locked out"
                : "Close and hold it so";
    }

    private String stands(Component v) {
        if (!around.isShown(v)) {
            return "beside this " + job.word() + ", at " + neighbours(v);
        }
        return job.isPath() ? "on this path, " + between(v) : "in this circuit, at " + neighbours(v);
    }

    private String neighbours(Component v) {
        List<String> tags = around.neighbours(v).stream()
                .filter(c -> !Surroundings.sameTag(c, v) && !c.tag().isEmpty())
                .map(Component::tag)
                .distinct()
                .toList();
        int most = 4;
        return tags.isEmpty()
                ? "a line that meets no other part"
                : String.join(", ", tags.subList(0, Math.min(most, tags.size()))) + (tags.size() > most ? ", ..." : "");
    }

    /** Its neighbours on the path. */
    private String between(Component v) {
        List<Component> way = way();
        int first = 0;
        while (!Surroundings.sameTag(way.get(first), v) && !way.get(first).equals(v)) {
            first++;
        }
        if (first == 0 || first == way.size() - 1) {
            return "at its end";
        }
        return "between " + way.get(first - 1).tag() + " and "
                + way.get(first + 1).tag();
    }

    /** The path's parts in order, a part again each time it is passed. */
    private List<Component> way() {
        return job.legs().stream()
                .filter(Leg.Through.class::isInstance)
                .map(l -> ((Leg.Through) l).component())
                .toList();
    }

    /** A path is cut off where a valve shuts both its feed and its way back. */
    private void missing() {
        List<Component> way = way();
        int actuator = -1;
        for (int i = 0; i < way.size() && actuator < 0; i++) {
            actuator = way.get(i).kind().isActuator() ? i : -1;
        }
        Component first = way.get(0);
        Component last = way.get(way.size() - 1);
        if (actuator <= 0 || actuator == way.size() - 1) {
            noValve(way, first, last);
        } else {
            noValve(way.subList(0, actuator), first, way.get(actuator));
            noValve(way.subList(actuator, way.size()), way.get(actuator), last);
        }
    }

    private void noValve(List<Component> way, Component from, Component to) {
        if (way.stream().noneMatch(c -> c.kind() == Kind.SHUT_OFF_VALVE)) {
            tasks.add(new Task(
                    "No shut-off valve is drawn on the path between " + from.tag() + " and " + to.tag(),
                    "",
                    "It cannot be cut off there by a valve: see that no oil runs back or on"));
        }
    }

    private void solenoids() {
        for (Kind kind : SWITCHED.stream().sorted().toList()) {
            for (Component v : around.shown(kind)) {
                solenoids(v);
            }
        }
    }

    private void solenoids(Component v) {
        List<String> names = v.positions().stream()
                .filter(p -> p.how() == Position.How.SOLENOID)
                .flatMap(p -> p.by().stream())
                .filter(b -> !b.equals(Position.REST))
                .distinct()
                .toList();
        if (!names.isEmpty()) {
            tasks.add(new Task(
                    job.names().called(v) + ": solenoid" + (names.size() > 1 ? "s " : " ") + String.join(", ", names)
                            + energised(names),
                    job.address(v),
                    "Pull the plug" + (names.size() > 1 ? "s" : "") + " after every load is blocked: the valve"
                            + " moves to rest. No lock-out by itself"));
        } else if (v.positions().isEmpty()) {
            tasks.add(new Task(
                    job.names().called(v) + ": what moves it was not read",
                    job.address(v),
                    "Look at the valve; pull its solenoid plugs if it has any"));
        }
    }

    private String energised(List<String> solenoids) {
        if (job.step() == null) {
            return "";
        }
        Set<String> on = job.step().energised().stream().map(Pairs::plain).collect(Collectors.toSet());
        List<String> now =
                solenoids.stream().filter(s -> on.contains(Pairs.plain(s))).toList();
        return now.isEmpty() ? "" : " (" + String.join(", ", now) + " energised in this step)";
    }
}
