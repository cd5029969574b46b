package linewalk.linker;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import linewalk.drawing.Component;
import linewalk.drawing.Position;
import linewalk.linker.step.PressureClass;
import linewalk.linker.step.StepState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Circuits solved on paper: the class of every line, the position of every valve and the paths of every step. */
class HandCircuitTest {

    static List<Path> files() throws IOException, URISyntaxException {
        Path folder = Path.of(HandCircuitTest.class.getResource("/hand").toURI());
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(f -> f.toString().endsWith(".json"))
                    .sorted(Comparator.comparing(Path::getFileName))
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void asSolvedOnPaper(Path file) {
        assertThat(differences(file)).isEmpty();
    }

    /** Two pumps on one line: the one behind the check feeds it, and never the other way. */
    @Test
    void tellsWhichPumpFeedsWhat() throws IOException, URISyntaxException {
        Path file = files().stream()
                .filter(f -> f.endsWith("07a-high-low.json"))
                .findFirst()
                .orElseThrow();
        HandCircuit circuit = new HandCircuit(file);
        Steps steps = new Steps(circuit.set, circuit.chart);
        assertThat(steps.fedBy("Down", "0P1")).containsExactly("n4", "n5");
        assertThat(steps.fedBy("Down", "0P2")).containsExactly("n3", "n4", "n5");
        assertThat(steps.fedBy("Down small pump only", "0P2")).isEmpty();
    }

    static List<String> differences(Path file) {
        HandCircuit circuit = new HandCircuit(file);
        Steps steps = new Steps(circuit.set, circuit.chart);
        List<String> wrong = new ArrayList<>();
        circuit.json.get("steps").properties().forEach(step -> {
            StepState state = steps.get(step.getKey());
            String where = circuit.name + ", " + step.getKey() + ": ";
            step.getValue().get("classes").properties().forEach(c -> {
                PressureClass found = state.classes().get(c.getKey());
                if (!found.word().equals(c.getValue().asText())) {
                    wrong.add(where + c.getKey() + " is " + found.word() + ", not "
                            + c.getValue().asText());
                }
            });
            step.getValue().get("positions").properties().forEach(p -> {
                Position found = state.position(component(circuit, p.getKey()));
                if (found == null || !found.by().equals(Truths.texts(p.getValue()))) {
                    wrong.add(where + p.getKey() + " is in " + found + ", not " + p.getValue());
                }
            });
            step.getValue().get("paths").forEach(p -> {
                Question q = new Question(
                        p.get("from").asText(),
                        Truths.texts(p.get("via")),
                        p.get("to").asText(),
                        step.getKey(),
                        false,
                        false,
                        1);
                Answer answer = new Tracer(circuit.set, circuit.chart).trace(q);
                String walk = answer instanceof Answer.Found f
                        ? Drawn.walk(f.traces().get(0))
                        : ((Answer.Stopped) answer).why();
                if (!walk.equals(String.join(" ", Truths.texts(p.get("walk"))))) {
                    wrong.add(where + q.from() + " to " + q.to() + " walks " + walk + ", not " + p.get("walk"));
                }
            });
        });
        return wrong;
    }

    private static Component component(HandCircuit circuit, String tag) {
        return Map.copyOf(circuit.set.components().stream()
                        .collect(java.util.stream.Collectors.toMap(Component::tag, c -> c)))
                .get(tag);
    }
}
