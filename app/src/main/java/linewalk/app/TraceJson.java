package linewalk.app;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import linewalk.drawing.Finding;
import linewalk.linker.Answer;
import linewalk.linker.Leg;
import linewalk.linker.Question;
import linewalk.linker.Trace;
import linewalk.linker.step.StepState;

/** A trace as JSON: components by designation and references by id, in the order walked. */
final class TraceJson {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private TraceJson() {}

    /** @param state the machine in the step asked for, or null for the machine at rest */
    static JsonNode of(List<Trace> traces, StepState state, boolean list) {
        if (!list) {
            return of(traces.get(0), state);
        }
        ArrayNode all = MAPPER.createArrayNode();
        traces.forEach(t -> all.add(of(t, state)));
        return all;
    }

    static ArrayNode list() {
        return MAPPER.createArrayNode();
    }

    /** Why there is no path; what was walked until then stands under {@code reached}, never under {@code path}. */
    static JsonNode of(Answer.Stopped stopped) {
        ObjectNode o = question(stopped.reached().question());
        o.put("stopped", stopped.why()).put("atDoubt", stopped.atDoubt());
        walk(o.putArray("reached"), stopped.reached().legs());
        return o;
    }

    private static ObjectNode of(Trace t, StepState state) {
        ObjectNode o = question(t.question());
        walk(o.putArray("path"), t.legs());
        ArrayNode sheets = o.putArray("sheets");
        t.sheets().forEach(sheets::add);
        ArrayNode shifts = o.putArray("shifts");
        t.legs().forEach(l -> shift(shifts, l));
        if (state != null) {
            ObjectNode classes = o.putObject("classes");
            t.legs().forEach(l -> pressureClass(classes, l, state));
        }
        ArrayNode doubts = o.putArray("doubts");
        for (Finding f : t.doubts()) {
            doubts.addObject().put("rule", f.rule().word()).put("message", f.message());
        }
        return o;
    }

    private static ObjectNode question(Question q) {
        ObjectNode o = MAPPER.createObjectNode();
        o.put("from", q.from());
        ArrayNode via = o.putArray("via");
        q.via().forEach(via::add);
        return o.put("to", q.to()).put("step", q.step());
    }

    private static void walk(ArrayNode path, List<Leg> legs) {
        for (Leg l : legs) {
            if (l instanceof Leg.Through t) {
                path.addObject().put("component", t.component().tag());
            } else if (l instanceof Leg.Across a) {
                path.addObject().put("reference", a.from().id());
                path.addObject().put("reference", a.to().id());
            }
        }
    }

    private static void pressureClass(ObjectNode classes, Leg l, StepState state) {
        if (l instanceof Leg.Along a) {
            String id = a.line().id();
            classes.put(id, state.classes().get(id).word());
        }
    }

    private static void shift(ArrayNode shifts, Leg l) {
        if (l instanceof Leg.Through t && t.shift() != null) {
            ObjectNode o = shifts.addObject().put("component", t.component().tag());
            ArrayNode by = o.putArray("by");
            t.shift().by().forEach(by::add);
        }
    }
}
