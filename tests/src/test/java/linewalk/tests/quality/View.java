package linewalk.tests.quality;

import static linewalk.tests.Run.fine;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** One print that is measured: its name in the ratchet and what to ask {@code trace} for. */
record View(String name, List<String> question) {

    static final List<View> DEMO = inBothLooks(
            new View("demo-pump-at-rest", List.of("--from", "0P1")),
            new View("demo-hoist-raise", List.of("--from", "0P1", "--via", "1A1", "--step", "Raise span")),
            new View("demo-winch-return", List.of("--from", "4M1", "--step", "Heave winch")));

    static final List<View> SET_D = inBothLooks(
            new View("set-d-pump-standby", List.of("--from", "0P1", "--step", "1")),
            new View("set-d-small-pump-revolve", List.of("--from", "0P2", "--step", "4")),
            new View("set-d-lift-raise", List.of("--from", "0P1", "--via", "1A1", "--step", "3")));

    private static List<View> inBothLooks(View... views) {
        List<View> both = new ArrayList<>();
        for (View v : views) {
            for (String look : List.of("drawn", "cuttings")) {
                List<String> question = new ArrayList<>(v.question);
                question.addAll(List.of("--look", look));
                both.add(new View(v.name + "-" + look, question));
            }
        }
        return List.copyOf(both);
    }

    Quality measured(Path set, Path folder) {
        Path print = folder.resolve(name + ".pdf");
        List<Object> args = new ArrayList<>(List.of("trace", set));
        args.addAll(question);
        args.addAll(List.of("--out", print));
        fine(args.toArray());
        return Quality.of(print);
    }
}
