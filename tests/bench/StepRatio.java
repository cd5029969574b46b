import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import linewalk.drawing.Affine;
import linewalk.drawing.Box;
import linewalk.drawing.Component;
import linewalk.drawing.CycleChart;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.End;
import linewalk.drawing.Flow;
import linewalk.drawing.Kind;
import linewalk.drawing.Line;
import linewalk.drawing.LineKind;
import linewalk.drawing.Origin;
import linewalk.drawing.PageKey;
import linewalk.drawing.Passage;
import linewalk.drawing.Point;
import linewalk.drawing.Port;
import linewalk.drawing.Position;
import linewalk.drawing.Reference;
import linewalk.drawing.Sheet;
import linewalk.linker.Answer;
import linewalk.linker.Question;
import linewalk.linker.Steps;
import linewalk.linker.Tracer;
import linewalk.linker.step.PressureClass;
import linewalk.linker.step.StepState;
import org.jgrapht.Graph;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.SimpleGraph;
import org.jgrapht.traverse.BreadthFirstIterator;

/**
 * Compares, warm and in one run, the state with all pressure classes and one trace of a step over a large set with one
 * breadth-first walk over a JGraphT graph of the same lines, ports and references. Prints milliseconds and ratios.
 *
 * <p>Each sheet has a pump gallery, a return and a drain line and seven lines that pass through, all going on to the
 * next sheet (20 references), and a cylinder on a 4/3 valve with two pilot checks and two one-way flow controls.
 */
final class StepRatio {

    private static final Point NOWHERE = new Point(0, 0);
    private static final int THROUGH = 7;
    private static final int WARM = 8;
    private static final int RUNS = 9;

    private final int sheetCount;
    private final List<Sheet> sheets = new ArrayList<>();
    private final List<Component> components = new ArrayList<>();
    private final List<Line> lines = new ArrayList<>();
    private final List<Reference> references = new ArrayList<>();

    private StepRatio(int sheetCount) {
        this.sheetCount = sheetCount;
        for (int s = 1; s <= sheetCount; s++) {
            sheet(s);
        }
    }

    public static void main(String[] args) {
        int sheetCount = args.length > 0 ? Integer.parseInt(args[0]) : 1000;
        StepRatio bench = new StepRatio(sheetCount);
        DrawingSet set = bench.set();
        CycleChart chart = bench.chart(2 * (WARM + RUNS));
        Graph<String, DefaultEdge> graph = graph(set);
        double walk = median(graph, chart.steps(), s -> breadthFirst(graph));
        Tracer tracer = new Tracer(set, chart);
        double state = median(graph, chart.steps().subList(0, WARM + RUNS), s -> check(tracer.state(s.title())));
        double trace = median(graph, chart.steps().subList(0, WARM + RUNS), s -> trace(tracer, s));
        double both = median(graph, chart.steps().subList(WARM + RUNS, 2 * (WARM + RUNS)), s -> trace(tracer, s));
        double anew = median(graph, chart.steps().subList(0, 6), s -> check(new Steps(set, chart).get(s.title())));
        System.out.printf(
                "%d sheets, %d lines, %d references, %d vertices%n",
                sheetCount, set.lines().size(), set.references().size(), graph.vertexSet().size());
        System.out.printf("breadth-first walk %.1f ms%n", walk);
        System.out.printf("state and classes of a step %.1f ms, %.1f walks%n", state, state / walk);
        System.out.printf("trace of a step whose state is known %.1f ms, %.1f walks%n", trace, trace / walk);
        System.out.printf("state and trace of a step %.1f ms, %.1f walks%n", both, both / walk);
        System.out.printf("state of a step, the set built anew %.1f ms, %.1f walks%n", anew, anew / walk);
        System.out.printf("ratio %.2f%n", both / walk);
    }

    private interface Task {
        long run(CycleChart.Step step);
    }

    private static double median(Graph<String, DefaultEdge> graph, List<CycleChart.Step> steps, Task task) {
        List<Double> ms = new ArrayList<>();
        long sum = 0;
        for (CycleChart.Step s : steps) {
            long start = System.nanoTime();
            sum += task.run(s);
            ms.add((System.nanoTime() - start) / 1e6);
        }
        if (sum == 0) {
            throw new IllegalStateException("nothing was done");
        }
        double[] last = ms.subList(ms.size() / 2, ms.size()).stream().mapToDouble(d -> d).sorted().toArray();
        return last[last.length / 2];
    }

    private static long breadthFirst(Graph<String, DefaultEdge> graph) {
        long n = 0;
        for (BreadthFirstIterator<String, DefaultEdge> i = new BreadthFirstIterator<>(graph); i.hasNext(); i.next()) {
            n++;
        }
        return n;
    }

    private static long check(StepState state) {
        return state.classes().values().stream().filter(c -> c == PressureClass.SUPPLY).count();
    }

    private static long trace(Tracer tracer, CycleChart.Step step) {
        String cylinder = step.energised().iterator().next().replace("Ya", "A").replace("Yb", "A");
        Answer answer = tracer.trace(new Question("P1", List.of(cylinder), "TANK", step.title(), false, false, 1));
        if (answer instanceof Answer.Found f) {
            return f.traces().get(0).legs().size();
        }
        throw new IllegalStateException(((Answer.Stopped) answer).why());
    }

    private static Graph<String, DefaultEdge> graph(DrawingSet set) {
        Graph<String, DefaultEdge> g = new SimpleGraph<>(DefaultEdge.class);
        for (Component c : set.components()) {
            c.ports().forEach(p -> g.addVertex(p.id()));
            for (int i = 1; i < c.ports().size(); i++) {
                g.addEdge(c.ports().get(0).id(), c.ports().get(i).id());
            }
        }
        set.references().forEach(r -> g.addVertex(r.id()));
        set.references().forEach(r -> r.mates().forEach(m -> g.addEdge(r.id(), m)));
        for (Line l : set.lines()) {
            g.addVertex(l.id());
            for (End e : l.ends()) {
                g.addEdge(l.id(), e instanceof End.AtPort p ? p.port() : ((End.AtReference) e).reference());
            }
        }
        return g;
    }

    private DrawingSet set() {
        return new DrawingSet(sheets, references, components, List.of(), lines, List.of());
    }

    /** In each step one cylinder extends, another retracts; they lie far from one another. */
    private CycleChart chart(int count) {
        List<String> solenoids = new ArrayList<>();
        for (int s = 1; s <= sheetCount; s++) {
            solenoids.add("Ya" + s);
            solenoids.add("Yb" + s);
        }
        List<CycleChart.Step> steps = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int s = 1 + (i * 37) % Math.min(50, sheetCount);
            steps.add(new CycleChart.Step(
                    Integer.toString(i), "step " + i, Set.of((i % 2 == 0 ? "Ya" : "Yb") + s)));
        }
        return new CycleChart(solenoids, steps);
    }

    private void sheet(int s) {
        PageKey page = new PageKey("bench.pdf", s);
        sheets.add(new Sheet("" + s, page, 400, 400, null, null, Origin.TEXT, null, Affine.IDENTITY));
        valve(page, s);
        part(page, "C" + s, Kind.PILOT_CHECK_VALVE, "A B X", List.of(at("rest", "A>B"), at("X", "A-B")));
        part(page, "D" + s, Kind.PILOT_CHECK_VALVE, "A B X", List.of(at("rest", "A>B"), at("X", "A-B")));
        part(page, "F" + s, Kind.FLOW_CONTROL, "A B", List.of(at("rest", "A>B B~A")));
        part(page, "G" + s, Kind.FLOW_CONTROL, "A B", List.of(at("rest", "A>B B~A")));
        part(page, "A" + s, Kind.CYLINDER, "A B", List.of());
        List<String> gallery = new ArrayList<>(List.of("V%d:P".formatted(s)));
        List<String> back = new ArrayList<>(List.of("V%d:T".formatted(s)));
        List<String> drain = new ArrayList<>();
        if (s % 100 == 1) {
            pump(page, s, gallery, back, drain);
        }
        goesOn(page, s, "p", LineKind.WORKING, gallery);
        goesOn(page, s, "t", LineKind.WORKING, back);
        goesOn(page, s, "l", LineKind.DRAIN, drain);
        line(page, LineKind.WORKING, "V%d:A C%d:A D%d:X".formatted(s, s, s));
        line(page, LineKind.WORKING, "V%d:B D%d:A C%d:X".formatted(s, s, s));
        line(page, LineKind.WORKING, "C%d:B F%d:A".formatted(s, s));
        line(page, LineKind.WORKING, "D%d:B G%d:A".formatted(s, s));
        line(page, LineKind.WORKING, "F%d:B A%d:A".formatted(s, s));
        line(page, LineKind.WORKING, "G%d:B A%d:B".formatted(s, s));
        for (int i = 0; i < THROUGH; i++) {
            goesOn(page, s, "x" + i, LineKind.WORKING, new ArrayList<>());
        }
    }

    private void valve(PageKey page, int s) {
        Position a = at("Ya" + s, "P-A B-T");
        Position b = at("Yb" + s, "P-B A-T");
        part(page, "V" + s, Kind.DIRECTIONAL_VALVE, "P T A B", List.of(a, at("rest", "A-T B-T"), b));
    }

    /** Every hundredth sheet has a pump with its check, a tank and a return filter. */
    private void pump(PageKey page, int s, List<String> gallery, List<String> back, List<String> drain) {
        part(page, "P" + s, Kind.PUMP, "P S L", List.of());
        part(page, "K" + s, Kind.CHECK_VALVE, "A B", List.of(at("rest", "A>B")));
        part(page, "Z" + s, Kind.FILTER, "A B", List.of());
        part(page, "TANK" + s, Kind.TANK, "S R L", List.of());
        line(page, LineKind.WORKING, "TANK%d:S P%d:S".formatted(s, s));
        line(page, LineKind.WORKING, "P%d:P K%d:A".formatted(s, s));
        line(page, LineKind.WORKING, "Z%d:B TANK%d:R".formatted(s, s));
        gallery.add("K%d:B".formatted(s));
        back.add("Z%d:A".formatted(s));
        drain.addAll(List.of("P%d:L".formatted(s), "TANK%d:L".formatted(s)));
    }

    private static Position at(String by, String passages) {
        Position.How how = by.equals("rest")
                ? Position.How.SPRING
                : by.startsWith("Y") ? Position.How.SOLENOID : Position.How.PILOT;
        List<Passage> ways = new ArrayList<>();
        for (String w : passages.split(" ")) {
            char sign = w.charAt(1);
            ways.add(new Passage(w.substring(0, 1), w.substring(2), sign == '>', sign == '~', null));
        }
        return new Position(List.of(by), how, ways);
    }

    private void part(PageKey page, String tag, Kind kind, String ports, List<Position> positions) {
        List<Port> own = Arrays.stream(ports.split(" "))
                .map(p -> new Port(tag + ":" + p, p, NOWHERE))
                .toList();
        List<Position> named = positions.stream()
                .map(x -> new Position(x.by(), x.how(), x.passages().stream()
                        .map(w -> new Passage(tag + ":" + w.from(), tag + ":" + w.to(), w.oneWay(), w.throttled(), null))
                        .toList()))
                .toList();
        components.add(new Component(
                tag, tag, page, NOWHERE, Box.around(NOWHERE), kind, null, Origin.TEXT, 1, own, named));
    }

    private void line(PageKey page, LineKind kind, String ends) {
        List<End> all = new ArrayList<>();
        for (String e : ends.split(" ")) {
            all.add(
                    e.contains(":")
                            ? new End.AtPort(e.substring(0, e.indexOf(':')), e, NOWHERE)
                            : new End.AtReference(e, NOWHERE));
        }
        lines.add(new Line("line" + lines.size(), page, kind, null, null, 1, all, List.of()));
    }

    /** From the sheet before to the sheet after. */
    private void goesOn(PageKey page, int s, String name, LineKind kind, List<String> ends) {
        List<String> all = new ArrayList<>(ends);
        if (s > 1) {
            all.add(reference(page, "i" + name + s, "o" + name + (s - 1)));
        }
        if (s < sheetCount) {
            all.add(reference(page, "o" + name + s, "i" + name + (s + 1)));
        }
        line(page, kind, String.join(" ", all));
    }

    private String reference(PageKey page, String id, String mate) {
        references.add(new Reference(
                id, page, NOWHERE, Box.around(NOWHERE), null, id, List.of(), null, Flow.UNKNOWN, Origin.TEXT, 1,
                List.of(mate), 1));
        return id;
    }
}
