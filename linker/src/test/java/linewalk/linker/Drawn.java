package linewalk.linker;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linewalk.drawing.Affine;
import linewalk.drawing.Box;
import linewalk.drawing.Component;
import linewalk.drawing.CycleChart;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.End;
import linewalk.drawing.Finding;
import linewalk.drawing.Flow;
import linewalk.drawing.HandTag;
import linewalk.drawing.Kind;
import linewalk.drawing.Line;
import linewalk.drawing.LineKind;
import linewalk.drawing.Origin;
import linewalk.drawing.PageKey;
import linewalk.drawing.Part;
import linewalk.drawing.Point;
import linewalk.drawing.Port;
import linewalk.drawing.Position;
import linewalk.drawing.Reference;
import linewalk.drawing.ReferenceReading;
import linewalk.drawing.Rule;
import linewalk.drawing.SetSettings;
import linewalk.drawing.SheetReading;
import linewalk.drawing.Target;
import linewalk.drawing.Zone;
import linewalk.drawing.ZoneGrid;

/**
 * A drawing set in a few lines of text. Pages are 400 x 400 points with a grid of columns 1 to 4 and rows A to D, so
 * each zone is 100 points wide; things stand in the middle of their zone, or {@code B4+20,0} beside it.
 *
 * <pre>
 * sheet 1                           also: sheet 1|UER-77 (two names), sheet ? (none), of=11, nogrid, from=2 (first column)
 * ref a B4 > 2/C1 L-101 out         also: two targets 3/H1,6/K1; p=0.6; or=2/C7:0.3 another reading; form=AN:N; ocr
 * part P1 pump B2 P S               a port -x has the id x and no name, x@-20,0 stands beside the part's middle
 * pos V1 Y1A P-A B>T                 by, then passages in the notation of hand tags
 * line P1:P a                       also: drain, pilot, p=0.5, size=DN25, L-101 first; open@B2 a loose end
 * </pre>
 */
final class Drawn {

    private static final class Page {
        final int number;
        List<SheetReading.Name> names = new ArrayList<>();
        Integer sheetCount;
        ZoneGrid grid;
        final Map<String, ReferenceReading> references = new LinkedHashMap<>();
        final Map<String, Component> components = new LinkedHashMap<>();
        final List<Line> lines = new ArrayList<>();

        Page(int number) {
            this.number = number;
        }

        PageKey key() {
            return new PageKey("set.pdf", number);
        }
    }

    static final ZoneGrid GRID = new ZoneGrid(
            StandardGrid.split(List.of("1", "2", "3", "4"), 0, 400),
            StandardGrid.split(List.of("A", "B", "C", "D"), 0, 400),
            true);

    private final List<Page> pages = new ArrayList<>();
    final List<HandTag> tags = new ArrayList<>();
    final List<Part> parts = new ArrayList<>();
    CycleChart chart = CycleChart.NONE;
    String standardGrid;

    static Drawn of(String text) {
        Drawn drawn = new Drawn();
        for (String row : text.strip().split("\\n")) {
            List<String> words = new ArrayList<>(Arrays.asList(row.strip().split("\\s+")));
            String what = words.remove(0);
            switch (what) {
                case "sheet" -> drawn.sheet(words);
                case "ref" -> drawn.ref(words);
                case "part" -> drawn.part(words);
                case "pos" -> drawn.pos(words);
                case "line" -> drawn.line(words);
                case "" -> {}
                default -> throw new IllegalArgumentException(row);
            }
        }
        return drawn;
    }

    Drawn tag(HandTag tag) {
        tags.add(tag);
        return this;
    }

    Drawn step(String name, String... energised) {
        List<String> solenoids = new ArrayList<>(chart.solenoids());
        Arrays.stream(energised).filter(s -> !solenoids.contains(s)).forEach(solenoids::add);
        List<CycleChart.Step> steps = new ArrayList<>(chart.steps());
        steps.add(new CycleChart.Step(Integer.toString(steps.size() + 1), name, Set.of(energised)));
        chart = new CycleChart(solenoids, steps);
        return this;
    }

    private Page page() {
        return pages.get(pages.size() - 1);
    }

    private static String option(List<String> words, String name) {
        for (String w : List.copyOf(words)) {
            if (w.startsWith(name + "=")) {
                words.remove(w);
                return w.substring(name.length() + 1);
            }
        }
        return null;
    }

    private void sheet(List<String> words) {
        Page p = new Page(pages.size() + 1);
        pages.add(p);
        String of = option(words, "of");
        p.sheetCount = of == null ? null : Integer.valueOf(of);
        String from = option(words, "from");
        p.grid = words.remove("nogrid") ? null : from == null ? GRID : from(Integer.parseInt(from));
        double likelihood = 0.95;
        for (String name : words.get(0).split("\\|")) {
            if (!name.equals("?")) {
                p.names.add(new SheetReading.Name(name, likelihood, "title block"));
                likelihood -= 0.3;
            }
        }
    }

    private static ZoneGrid from(int column) {
        return new ZoneGrid(GRID.columns().subList(column - 1, 4), GRID.rows(), true);
    }

    private static Point place(String word) {
        int plus = word.indexOf('+');
        Zone zone = Zone.parse(plus < 0 ? word : word.substring(0, plus)).orElseThrow();
        Point center = GRID.box(zone).orElseThrow().center();
        if (plus < 0) {
            return center;
        }
        return beside(center, word.substring(plus + 1));
    }

    private static Point beside(Point p, String word) {
        String[] by = word.split(",");
        return p.plus(Double.parseDouble(by[0]), Double.parseDouble(by[1]));
    }

    private void ref(List<String> words) {
        String p = option(words, "p");
        String or = option(words, "or");
        Origin origin = words.remove("ocr") ? Origin.OCR : Origin.TEXT;
        String form = option(words, "form");
        Flow flow = words.remove("out") ? Flow.OUT : words.remove("in") ? Flow.IN : Flow.UNKNOWN;
        Point place = place(words.get(1));
        String text = words.get(3);
        List<ReferenceReading.Says> says = new ArrayList<>();
        double other = or == null ? 0.01 : Double.parseDouble(or.substring(or.indexOf(':') + 1));
        says.add(new ReferenceReading.Says(targets(text), 1 - other));
        if (or != null) {
            says.add(new ReferenceReading.Says(targets(or.substring(0, or.indexOf(':'))), other));
        }
        page().references
                .put(
                        words.get(0),
                        new ReferenceReading(
                                words.get(0),
                                place,
                                Box.around(place).grow(5),
                                text,
                                form == null ? "N/AN" : form,
                                says,
                                words.size() > 4 ? words.get(4) : null,
                                flow,
                                Flow.UNKNOWN,
                                Set.of(),
                                origin,
                                p == null ? 0.95 : Double.parseDouble(p)));
    }

    private static List<Target> targets(String text) {
        return ReferenceTags.targets(text.replace(',', ' '));
    }

    private void part(List<String> words) {
        String tag = words.get(0);
        String setting = option(words, "set");
        Point place = place(words.get(2));
        List<Port> ports = new ArrayList<>();
        for (String word : words.subList(3, words.size())) {
            int at = word.indexOf('@');
            String name = at < 0 ? word : word.substring(0, at);
            boolean unnamed = name.startsWith("-");
            String plain = unnamed ? name.substring(1) : name;
            Point on = at < 0 ? place.plus(ports.size() * 10, 0) : beside(place, word.substring(at + 1));
            ports.add(new Port(tag + "." + plain, unnamed ? null : plain, on));
        }
        page().components
                .put(
                        tag,
                        new Component(
                                tag,
                                tag,
                                page().key(),
                                place,
                                Box.around(place).grow(10),
                                Kind.find(words.get(1)).orElse(Kind.UNKNOWN),
                                setting,
                                Origin.TEXT,
                                1,
                                ports,
                                List.of()));
    }

    private void pos(List<String> words) {
        Component c = page().components.get(words.get(0));
        String passages = String.join(" ", words.subList(2, words.size()));
        Position position = new PassageNotation(c)
                .position(new HandTag.OfPosition(
                        c.tag(), words.get(1), words.get(1).equals("pilot") ? "pilot" : null, passages))
                .orElseThrow();
        List<Position> positions = new ArrayList<>(c.positions());
        positions.add(position);
        page().components.put(c.tag(), LineEdits.with(c, c.ports(), positions));
    }

    private void line(List<String> words) {
        String p = option(words, "p");
        String size = option(words, "size");
        LineKind kind =
                words.remove("drain") ? LineKind.DRAIN : words.remove("pilot") ? LineKind.PILOT : LineKind.WORKING;
        String label = words.get(0).startsWith("L-") ? words.remove(0) : null;
        List<End> ends = words.stream().map(this::end).toList();
        page().lines
                .add(new Line(
                        "l" + page().lines.size(),
                        page().key(),
                        kind,
                        label,
                        size,
                        p == null ? 1 : Double.parseDouble(p),
                        ends,
                        List.of()));
    }

    private End end(String word) {
        if (word.startsWith("open@")) {
            return new End.Open(place(word.substring(5)));
        }
        int colon = word.indexOf(':');
        if (colon < 0) {
            return new End.AtReference(word, page().references.get(word).place());
        }
        Component c = page().components.get(word.substring(0, colon));
        Port port = c.findPort(c.tag() + "." + word.substring(colon + 1)).orElseThrow();
        return new End.AtPort(c.id(), port.id(), port.place());
    }

    List<SheetReading> readings() {
        return pages.stream().map(Drawn::reading).toList();
    }

    private static SheetReading reading(Page p) {
        return new SheetReading(
                p.key(),
                400,
                400,
                Affine.IDENTITY,
                p.names,
                p.sheetCount,
                null,
                null,
                null,
                p.grid,
                List.copyOf(p.references.values()),
                List.copyOf(p.components.values()),
                List.of(),
                p.lines,
                List.of());
    }

    DrawingSet link() {
        return link(readings());
    }

    DrawingSet link(List<SheetReading> readings) {
        return Linker.link(readings, tags, new SetSettings(List.of("set.pdf"), null, standardGrid), parts, chart);
    }

    Answer trace(Question q) {
        return new Tracer(link(), chart).trace(q);
    }

    /** The walk in words: {@code P1 a>b V1 TANK}; or why there is none. */
    String walk(Question q) {
        Answer answer = trace(q);
        return answer instanceof Answer.Found f
                ? walk(f.traces().get(0))
                : "stopped: " + ((Answer.Stopped) answer).why();
    }

    static String walk(Trace trace) {
        List<String> words = new ArrayList<>();
        for (Leg leg : trace.legs()) {
            if (leg instanceof Leg.Through t) {
                words.add(t.component().tag());
            } else if (leg instanceof Leg.Across a) {
                words.add(plain(a.from().id()) + ">" + plain(a.to().id()));
            }
        }
        return String.join(" ", words);
    }

    static Question from(String from, String... via) {
        return new Question(from, List.of(via), null, null, false, false, 1);
    }

    static String plain(String id) {
        return id.substring(id.indexOf(':') + 1);
    }

    static Reference ref(DrawingSet set, String id) {
        return set.references().stream()
                .filter(r -> plain(r.id()).equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** Mates of a reference by the ids of their own pages. */
    static List<String> mates(DrawingSet set, String id) {
        return ref(set, id).mates().stream().map(Drawn::plain).toList();
    }

    /** Findings as {@code next-zone a}, in order of rule and reference. */
    static List<String> findings(DrawingSet set) {
        return set.findings().stream()
                .map(f -> f.rule().word()
                        + f.references().stream()
                                .map(id -> " " + plain(id))
                                .sorted()
                                .reduce("", String::concat))
                .sorted()
                .toList();
    }

    static Finding finding(DrawingSet set, Rule rule) {
        return set.findings().stream().filter(f -> f.rule() == rule).findFirst().orElseThrow();
    }
}
