package linewalk.tests.quality;

import static linewalk.tests.Run.fine;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** One print that is measured: its name in the ratchet and the command that makes it, without the set. */
record View(String name, List<String> command) {

    static final List<View> DEMO = all(
            inBothLooks(
                    trace("demo-pump-at-rest", "--from", "0P1"),
                    trace("demo-hoist-raise", "--from", "0P1", "--via", "1A1", "--step", "Raise span"),
                    trace("demo-winch-return", "--from", "4M1", "--step", "Heave winch")),
            circuits("demo", "Raise span"));

    static final List<View> SET_D = all(
            inBothLooks(
                    trace("set-d-pump-standby", "--from", "0P1", "--step", "1"),
                    trace("set-d-small-pump-revolve", "--from", "0P2", "--step", "4"),
                    trace("set-d-lift-raise", "--from", "0P1", "--via", "1A1", "--step", "3")),
            circuits("set-d", "3"));

    private static View trace(String name, String... options) {
        List<String> command = new ArrayList<>(List.of("trace"));
        command.addAll(List.of(options));
        return new View(name, command);
    }

    /**
     * One actuator in one step, in all steps, one pump's circuit, and all of the set at rest; as cuttings all but the
     * steps, each of which is cut alike.
     */
    private static List<View> circuits(String set, String step) {
        View actuator = new View(set + "-actuator-step", List.of("circuit", "--actuator", "1A1", "--step", step));
        View steps = new View(set + "-actuator-all-steps", List.of("circuit", "--actuator", "1A1", "--all-steps"));
        View pump = new View(set + "-pump-circuit", List.of("circuit", "--pump", "0P1"));
        View whole = new View(set + "-whole-at-rest", List.of("circuit"));
        return List.of(
                actuator, steps, pump, whole, actuator.in("cuttings"), pump.in("cuttings"), whole.in("cuttings"));
    }

    private View in(String look) {
        List<String> words = new ArrayList<>(command);
        words.addAll(List.of("--look", look));
        return new View(name + "-" + look, words);
    }

    private static List<View> inBothLooks(View... views) {
        List<View> both = new ArrayList<>();
        for (View v : views) {
            for (String look : List.of("drawn", "cuttings")) {
                both.add(v.in(look));
            }
        }
        return both;
    }

    private static List<View> all(List<View> some, List<View> more) {
        List<View> all = new ArrayList<>(some);
        all.addAll(more);
        return List.copyOf(all);
    }

    Quality measured(Path set, Path folder) {
        Path print = folder.resolve(name + ".pdf");
        List<Object> args = new ArrayList<>(List.of(command.get(0), set));
        args.addAll(command.subList(1, command.size()));
        args.addAll(List.of("--out", print));
        fine(args.toArray());
        return Quality.of(print);
    }
}
