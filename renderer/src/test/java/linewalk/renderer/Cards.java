package linewalk.renderer;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linewalk.drawing.Component;
import linewalk.drawing.CycleChart;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.End;
import linewalk.drawing.Line;
import linewalk.drawing.LineKind;
import linewalk.drawing.Part;
import linewalk.drawing.Port;
import linewalk.linker.step.PressureClass;
import linewalk.linker.step.StepState;

/** The bench's round trip with parts joined to it, and a job card. */
final class Cards {

    final Bench bench = new Bench().roundTrip();
    final Map<String, Boolean> open = new HashMap<>();
    private final List<Line> branches = new ArrayList<>();
    private final Map<String, PressureClass> classes = new HashMap<>();
    private boolean solved;

    /** A line from port {@code 0P1:P} of the path or of a part joined to it to a port of another part. */
    Cards join(String port, Component to, String name) {
        Port at = to.findPortNamed(name).orElseThrow();
        String part = port.substring(0, port.indexOf(':'));
        List<End> ends = List.of(
                new End.AtPort(part, port, at.place().plus(0, -40)), new End.AtPort(to.id(), at.id(), at.place()));
        branches.add(new Line(
                "b" + branches.size(),
                to.page(),
                LineKind.WORKING,
                "B-" + (branches.size() + 1),
                null,
                1,
                ends,
                List.of()));
        return this;
    }

    /** A row of the parts list. */
    Cards listed(String tag, String setting, String testPoint) {
        bench.parts.put(tag, new Part(tag, null, null, setting, testPoint));
        return this;
    }

    /** A step that was worked out: lines of a label are of a class, the others idle. */
    Cards solved(String label, PressureClass as) {
        solved = true;
        classes.put(label, as);
        return this;
    }

    Cards step(CycleChart.Said said, String... on) {
        bench.step = new CycleChart.Step("3", "Press down", Set.of(on), said);
        return this;
    }

    PrintJob job() {
        PrintJob job = bench.job();
        DrawingSet set = job.set();
        List<Line> lines = new ArrayList<>(set.lines());
        lines.addAll(branches);
        SetFacts facts = new SetFacts(
                job.facts().title(),
                new DrawingSet(
                        set.sheets(), set.references(), set.components(), set.enclosures(), lines, set.findings()),
                job.facts().itemNumbers(),
                job.facts().parts(),
                job.facts().sources(),
                job.facts().palette());
        PrintForm form = job.form();
        return new PrintJob(
                facts,
                job.subject(),
                new Moment(bench.step, solved ? state(lines) : null, null, null),
                new PrintForm(form.paper(), form.turn(), form.look(), form.hidden(), true),
                job.date());
    }

    private StepState state(List<Line> lines) {
        Map<String, PressureClass> of = new HashMap<>();
        lines.forEach(l -> of.put(l.id(), classes.getOrDefault(l.label(), PressureClass.IDLE)));
        return new StepState(bench.step, Map.of(), of, Set.of("0P1"), open, List.of());
    }

    /** The words of the card alone. */
    String text(String name) {
        String all = Prints.text(Prints.print(job(), name));
        return all.substring(all.indexOf("Job card"));
    }

    /** What stands in the card from one heading to another. */
    String between(String from, String to, String name) {
        String text = text(name);
        int start = text.indexOf(from);
        return text.substring(start, text.indexOf(to, start));
    }
}
