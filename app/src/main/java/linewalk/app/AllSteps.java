package linewalk.app;

import com.fasterxml.jackson.databind.node.ArrayNode;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import linewalk.drawing.CycleChart;
import linewalk.drawing.UserError;
import linewalk.linker.Answer;
import linewalk.linker.Question;
import linewalk.linker.Trace;
import linewalk.linker.Tracer;
import linewalk.renderer.PrintBook;

/** One question asked in every step of the cycle chart. */
record AllSteps(LoadedSet loaded, Tracer tracer, Prints prints) {

    /** @return 1 where no step has a path, or one stops at a doubt */
    int trace(Function<String, Question> question, boolean json, PrintFile out) {
        List<CycleChart.Step> steps = loaded.chart().steps();
        if (steps.isEmpty()) {
            throw new UserError("--all-steps wants a cycle chart: the set has no cycle.csv or cycle.xlsx");
        }
        List<PrintBook.Chapter> chapters = new ArrayList<>();
        ArrayNode list = TraceJson.list();
        boolean found = false;
        boolean doubt = false;
        for (CycleChart.Step s : steps) {
            Answer answer = tracer.trace(question.apply(s.title()));
            found |= answer instanceof Answer.Found;
            doubt |= answer instanceof Answer.Stopped stopped && stopped.atDoubt();
            chapters.add(chapter(s, answer));
            if (json) {
                add(list, s, answer);
            } else {
                print(s, answer);
            }
        }
        if (json) {
            Output.json(list);
        }
        if (found && out != null) {
            prints.writeChapters(chapters, out);
        }
        return found && !doubt ? 0 : 1;
    }

    private static List<Trace> traces(Answer answer) {
        return answer instanceof Answer.Found f ? f.traces() : List.of();
    }

    private PrintBook.Chapter chapter(CycleChart.Step step, Answer answer) {
        String none = answer instanceof Answer.Stopped s ? " (no path: " + s.why() + ")" : "";
        return new PrintBook.Chapter(
                step.title() + none, traces(answer).stream().map(prints::job).toList());
    }

    private void add(ArrayNode list, CycleChart.Step step, Answer answer) {
        if (answer instanceof Answer.Stopped stopped) {
            list.add(TraceJson.of(stopped));
        } else {
            list.addAll((ArrayNode) TraceJson.of(traces(answer), tracer.state(step.title()), true));
        }
    }

    private void print(CycleChart.Step step, Answer answer) {
        PrintStream text = Output.text();
        text.println("Step " + step.title() + ":");
        if (answer instanceof Answer.Stopped stopped) {
            text.println("no path: " + TraceCommand.why(stopped));
        }
        traces(answer).forEach(prints::walk);
        text.println();
    }
}
