package linewalk.linker;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import linewalk.drawing.Component;
import linewalk.drawing.CycleChart;
import linewalk.drawing.Kind;
import linewalk.linker.step.PressureClass;
import linewalk.linker.step.StepState;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The walks of an invented stage lift, over its truth alone: the same parts and references in the same order. */
class StageLiftTraceTest {

    @TestFactory
    Stream<DynamicTest> walksAsTheTruthTells() {
        return walks(new TruthSet(Truths.folder("set-d"), true));
    }

    @TestFactory
    Stream<DynamicTest> walksTheSameWhenThePumpsPortsHaveNoNames() {
        return walks(new TruthSet(Truths.folder("set-d"), false));
    }

    private static Stream<DynamicTest> walks(TruthSet set) {
        Tracer tracer = new Tracer(set.set(), set.chart());
        List<DynamicTest> tests = new ArrayList<>();
        for (JsonNode p : set.truth.get("paths")) {
            String name = p.get("state").asText() + ": " + p.get("from").asText() + " over " + p.get("ask_via");
            tests.add(DynamicTest.dynamicTest(name, () -> {
                Answer answer = tracer.trace(question(p));
                assertThat(answer).isInstanceOf(Answer.Found.class);
                Trace trace = ((Answer.Found) answer).traces().get(0);
                assertThat(walk(trace)).containsExactlyElementsOf(Truths.texts(p.get("via")));
                assertThat(trace.sheets()).containsExactlyElementsOf(Truths.texts(p.get("sheets")));
            }));
        }
        return tests.stream();
    }

    private static Question question(JsonNode p) {
        return new Question(
                p.get("from").asText(),
                Truths.texts(p.get("ask_via")),
                p.get("to").asText(),
                p.get("state").asText(),
                false,
                false,
                1);
    }

    static List<String> walk(Trace trace) {
        List<String> walk = new ArrayList<>();
        for (Leg leg : trace.legs()) {
            if (leg instanceof Leg.Through t) {
                walk.add(t.component().tag());
            } else if (leg instanceof Leg.Across a) {
                walk.add(a.from().id());
                walk.add(a.to().id());
            }
        }
        return walk;
    }

    @Test
    void oilNeverLeavesAPumpBySuctionOrDrain() {
        TruthSet set = new TruthSet(Truths.folder("set-d"), false);
        Tracer tracer = new Tracer(set.set(), set.chart());
        Answer answer = tracer.trace(new Question("0P1", List.of(), null, null, true, true, 20));
        for (Trace t : ((Answer.Found) answer).traces()) {
            assertThat(((Leg.Through) t.legs().get(0)).out().id()).isEqualTo("0P1:P");
        }
    }

    /** Common practice, no source: oil goes from pressure to the tank, and what has come to a return line stays in it. */
    @Test
    void noPathClimbsFromAReturnLine() {
        TruthSet set = new TruthSet(Truths.folder("set-d"), true);
        Tracer tracer = new Tracer(set.set(), set.chart());
        int found = 0;
        for (CycleChart.Step step : set.chart().steps()) {
            for (String pump : tags(set, k -> k == Kind.PUMP)) {
                for (String actuator : tags(set, Kind::isActuator)) {
                    Question q = new Question(pump, List.of(actuator), null, step.title(), false, true, 3);
                    if (tracer.trace(q) instanceof Answer.Found f) {
                        f.traces().forEach(t -> assertThat(climbs(t, tracer.state(step.title())))
                                .as(step.title() + ": " + pump + " over " + actuator)
                                .isFalse());
                        found++;
                    }
                }
            }
        }
        assertThat(found).isPositive();
    }

    private static Set<String> tags(TruthSet set, Predicate<Kind> kinds) {
        return set.set().components().stream()
                .filter(c -> kinds.test(c.kind()))
                .map(Component::tag)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static boolean climbs(Trace trace, StepState state) {
        boolean returned = false;
        for (Leg leg : trace.legs()) {
            if (leg instanceof Leg.Along a) {
                PressureClass now = state.classes().get(a.line().id());
                if (returned && now != PressureClass.RETURN && now != PressureClass.DRAIN) {
                    return true;
                }
                returned |= now == PressureClass.RETURN;
            }
        }
        return false;
    }
}
