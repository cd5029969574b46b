package linewalk.linker;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import linewalk.linker.step.LineFlows;
import linewalk.linker.step.Sense;
import org.junit.jupiter.api.Test;

/**
 * Which way oil goes at every end of every line, against circuits solved on paper by one who had not seen the program:
 * "in" to the line, "out" of it, "-" where it stands, "?" where drawing and step do not tell. There a cylinder moves for
 * the whole step; the program tells nothing of one that was driven alike in the step before, since it may have come to its end.
 */
class FlowTest {

    /** Of the ends at which oil surely goes one way; may only rise. */
    private static final double TOLD = 0.837;

    @Test
    void nothingWrongIsSaidAndMostIsTold() throws IOException, URISyntaxException {
        JsonNode solved = Truths.read(
                Path.of(FlowTest.class.getResource("/hand-flows.json").toURI()));
        List<String> wrong = new ArrayList<>();
        int sure = 0;
        int told = 0;
        for (Path file : HandCircuitTest.files()) {
            HandCircuit circuit = new HandCircuit(file);
            Steps steps = new Steps(circuit.set, circuit.chart);
            for (var step : solved.get(circuit.name).properties()) {
                LineFlows flows = steps.flows(step.getKey());
                for (var line : step.getValue().properties()) {
                    List<String> ends = Truths.texts(line.getValue());
                    for (int i = 0; i < ends.size(); i++) {
                        Sense found = flows.senses().get(line.getKey()).get(i);
                        boolean says = found == Sense.IN || found == Sense.OUT;
                        boolean right = found.name().equalsIgnoreCase(ends.get(i));
                        sure += ends.get(i).matches("in|out") ? 1 : 0;
                        told += right ? 1 : 0;
                        if (says && !right) {
                            wrong.add(circuit.name + ", " + step.getKey() + ": " + line.getKey() + " end " + i + " is "
                                    + found + ", not " + ends.get(i));
                        }
                    }
                }
            }
        }
        System.out.println("flows told at " + told + " of " + sure + " ends");
        assertThat(wrong).isEmpty();
        assertThat((double) told / sure).isGreaterThanOrEqualTo(TOLD);
    }
}
