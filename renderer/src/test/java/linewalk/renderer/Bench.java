package linewalk.renderer;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import linewalk.drawing.Affine;
import linewalk.drawing.Box;
import linewalk.drawing.Component;
import linewalk.drawing.CycleChart;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.End;
import linewalk.drawing.Finding;
import linewalk.drawing.Flow;
import linewalk.drawing.Kind;
import linewalk.drawing.Line;
import linewalk.drawing.LineKind;
import linewalk.drawing.Origin;
import linewalk.drawing.PageKey;
import linewalk.drawing.Part;
import linewalk.drawing.Passage;
import linewalk.drawing.Point;
import linewalk.drawing.Port;
import linewalk.drawing.Position;
import linewalk.drawing.Reference;
import linewalk.drawing.Sheet;
import linewalk.drawing.Target;
import linewalk.drawing.Zone;
import linewalk.drawing.ZoneGrid;
import linewalk.linker.Leg;
import linewalk.linker.Question;
import linewalk.linker.Trace;
import linewalk.renderer.ink.Palette;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;

/**
 * A test bench on three small invented sheets: a pump on sheet 1, a valve on sheet 2, a cylinder on sheet 3, and back to
 * the tank. Each test changes the one thing it is about. Zones are 4 by 4, columns 1 to 4 and rows A to D.
 */
final class Bench {

    static final double WIDTH_PT = 842;
    static final double HEIGHT_PT = 595;

    final List<Leg> legs = new ArrayList<>();
    final List<Finding> doubts = new ArrayList<>();
    final List<Finding> findings = new ArrayList<>();
    final Map<String, Integer> items = new HashMap<>();
    final Map<String, Part> parts = new HashMap<>();
    private final List<Sheet> sheets = new ArrayList<>();
    private final List<Component> components = new ArrayList<>();
    private final List<Reference> references = new ArrayList<>();
    private final List<Line> lines = new ArrayList<>();
    private final List<Line> aside = new ArrayList<>();
    Look look = Look.DRAWN;
    Paper paper = Paper.A3;
    CycleChart.Step step;
    Turn turn = Turn.FITTING;
    boolean anyPosition;
    Path source = Path.of("missing.pdf");

    Bench() {
        for (int n = 1; n <= 3; n++) {
            sheets.add(new Sheet(
                    String.valueOf(n),
                    page(n),
                    WIDTH_PT,
                    HEIGHT_PT,
                    "SHEET TITLE " + n,
                    n == 2 ? null : "B",
                    Origin.TEXT,
                    new ZoneGrid(bands("1234", WIDTH_PT), bands("ABCD", HEIGHT_PT), true),
                    new Affine(1, 0, 0, 0, -1, HEIGHT_PT)));
        }
    }

    static PageKey page(int n) {
        return new PageKey("bench.pdf", n);
    }

    private static List<ZoneGrid.Band> bands(String labels, double extentPt) {
        List<ZoneGrid.Band> bands = new ArrayList<>();
        double step = extentPt / labels.length();
        for (int i = 0; i < labels.length(); i++) {
            bands.add(new ZoneGrid.Band(labels.substring(i, i + 1), i * step, (i + 1) * step));
        }
        return bands;
    }

    /** Ports are written {@code P@100,200}. */
    Component part(int sheet, String tag, Kind kind, double xPt, double yPt, String... ports) {
        List<Port> made = new ArrayList<>();
        for (String p : ports) {
            String[] f = p.split("[@,]");
            made.add(new Port(tag + ":" + f[0], f[0], new Point(Double.parseDouble(f[1]), Double.parseDouble(f[2]))));
        }
        Component c = new Component(
                tag,
                tag,
                page(sheet),
                new Point(xPt, yPt),
                Box.around(new Point(xPt, yPt)).grow(25),
                kind,
                null,
                Origin.TEXT,
                1,
                made,
                List.of());
        return add(c);
    }

    Component withPositions(Component c, List<Position> positions) {
        components.remove(c);
        return add(new Component(
                c.id(),
                c.tag(),
                c.page(),
                c.place(),
                c.box(),
                c.kind(),
                c.setting(),
                c.origin(),
                c.confidence(),
                c.ports(),
                positions));
    }

    Component set(Component c, String setting) {
        components.remove(c);
        return add(new Component(
                c.id(),
                c.tag(),
                c.page(),
                c.place(),
                c.box(),
                c.kind(),
                setting,
                c.origin(),
                c.confidence(),
                c.ports(),
                c.positions()));
    }

    private Component add(Component c) {
        components.add(c);
        items.putIfAbsent(c.tag(), items.size() + 1);
        return c;
    }

    Reference reference(int sheet, String text, double xPt, double yPt, double mateConfidence) {
        Point place = new Point(xPt, yPt);
        Zone zone = sheets.get(sheet - 1).grid().zoneAt(place).orElseThrow();
        Reference r = new Reference(
                text + "@" + sheet,
                page(sheet),
                place,
                new Box(xPt - 22, yPt - 10, xPt + 22, yPt + 10),
                zone,
                text,
                List.of(),
                null,
                Flow.UNKNOWN,
                Origin.TEXT,
                1,
                List.of("mate"),
                mateConfidence);
        references.add(r);
        return r;
    }

    /** As if a hand tag had told where a reference leads, whatever its text says. */
    void correct(String id, Target to) {
        references.replaceAll(r -> corrected(r, id, to));
        legs.replaceAll(l ->
                l instanceof Leg.Across a ? new Leg.Across(corrected(a.from(), id, to), corrected(a.to(), id, to)) : l);
    }

    private static Reference corrected(Reference r, String id, Target to) {
        return !r.id().equals(id)
                ? r
                : new Reference(
                        r.id(),
                        r.page(),
                        r.place(),
                        r.box(),
                        r.zone(),
                        r.text(),
                        List.of(to),
                        r.label(),
                        r.flow(),
                        Origin.HAND,
                        1,
                        r.mates(),
                        r.mateConfidence());
    }

    /** From here to there, drawn straight through the points given; with none the line was joined by hand. */
    void along(int sheet, String label, Point... course) {
        List<Point> way = List.of(course);
        along(sheet, label, way.get(0), way.get(way.size() - 1), List.of(way));
    }

    void along(int sheet, String label, Point from, Point to, List<List<Point>> runs) {
        Line line = line(sheet, label, from, to, runs);
        legs.add(new Leg.Along(line, line.ends().get(0), line.ends().get(1)));
    }

    /** A line that the walk does not take, open at both ends. */
    void aside(int sheet, String label, Point from, Point to) {
        aside.add(line(sheet, label, from, to, List.of(List.of(from, to))));
    }

    private Line line(int sheet, String label, Point from, Point to, List<List<Point>> runs) {
        List<End> ends = List.of(new End.Open(from), new End.Open(to));
        Line line = new Line("l" + lines.size(), page(sheet), LineKind.WORKING, label, null, 1, ends, runs);
        lines.add(line);
        return line;
    }

    void through(Component c, String in, String out, Position shift) {
        Port from = in == null ? null : c.findPortNamed(in).orElseThrow();
        Port to = out == null ? null : c.findPortNamed(out).orElseThrow();
        Passage passage = c.positions().stream()
                .flatMap(p -> p.passages().stream())
                .filter(p -> from != null && to != null && p.from().equals(from.id()) && p.to().equals(to.id()))
                .findFirst()
                .orElse(null);
        legs.add(new Leg.Through(c, from, to, passage, shift));
    }

    void across(Reference from, Reference to) {
        legs.add(new Leg.Across(from, to));
    }

    static Point at(double xPt, double yPt) {
        return new Point(xPt, yPt);
    }

    /** Pump, valve P to A, cylinder, valve B to T, tank: five stays on three sheets. */
    Bench roundTrip() {
        Component pump = part(1, "0P1", Kind.PUMP, 200, 400, "P@200,375");
        Component tank = part(1, "TANK", Kind.TANK, 600, 500, "R@600,480");
        Component valve =
                part(2, "1V1", Kind.DIRECTIONAL_VALVE, 400, 300, "P@390,325", "T@410,325", "A@390,275", "B@410,275");
        Position left = new Position(
                List.of("Y1A"),
                Position.How.SOLENOID,
                List.of(
                        new Passage("1V1:P", "1V1:A", false, false, null),
                        new Passage("1V1:B", "1V1:T", false, false, null)));
        valve = withPositions(valve, List.of(new Position(List.of("rest"), null, List.of()), left));
        Component cylinder = part(3, "1A1", Kind.CYLINDER, 400, 200, "A@380,225", "B@420,225");
        Position shift = anyPosition ? left : null;
        through(pump, null, "P", null);
        along(1, "L-1", at(200, 375), at(200, 100), at(758, 100));
        across(reference(1, "2.C1", 780, 100, 1), reference(2, "1.A4", 60, 400, 1));
        along(2, "L-1", at(82, 400), at(390, 400), at(390, 325));
        through(valve, "P", "A", shift);
        along(2, "L-2", at(390, 275), at(390, 80));
        across(reference(2, "3.D2", 390, 70, 1), reference(3, "2.A2", 380, 560, 1));
        along(3, "L-2", at(380, 550), at(380, 225));
        through(cylinder, "A", "B", null);
        along(3, "L-3", at(420, 225), at(420, 400), at(758, 400));
        across(reference(3, "2.A4", 780, 400, 1), reference(2, "3.C4", 780, 100, 1));
        along(2, "L-3", at(758, 100), at(410, 100), at(410, 275));
        through(valve, "B", "T", shift);
        along(2, "L-4", at(410, 325), at(410, 500), at(758, 500));
        across(reference(2, "1.C4", 780, 500, 1), reference(1, "2.D4", 780, 350, 1));
        along(1, "L-4", at(758, 350), at(600, 350), at(600, 480));
        through(tank, "R", null, null);
        return this;
    }

    PrintJob job() {
        Wiring wiring = new Wiring(legs);
        List<Reference> mated = references.stream()
                .map(r -> wiring.references.getOrDefault(r.id(), r))
                .toList();
        List<Line> all = Stream.concat(wiring.lines().stream(), aside.stream()).toList();
        DrawingSet set = new DrawingSet(sheets, mated, components, List.of(), all, findings);
        Question q =
                new Question("0P1", List.of("1A1"), "TANK", step == null ? null : step.number(), anyPosition, true, 1);
        Trace trace = new Trace(q, wiring.legs, List.of("1", "2", "3", "2", "1"), doubts);
        return new PrintJob(
                new SetFacts("Test bench press", set, items, parts, s -> source, Palette.OWN),
                Subject.of(trace),
                Moment.named(step),
                new PrintForm(paper, turn, look, Set.of()),
                LocalDate.of(2026, 2, 3));
    }

    static CycleChart.Step step(String number, String name, String... on) {
        return new CycleChart.Step(number, name, Set.of(on));
    }

    /** The three sheets as a PDF: the lines as drawn, names of parts and references; turned pages where asked. */
    Bench drawnTo(Path file, int rotation) {
        return drawnTo(file, rotation, 0);
    }

    /** With a page that is larger than what is shown of it, by so much on its left and lower edges. */
    Bench drawnTo(Path file, int rotation, double hiddenPt) {
        try (PDDocument doc = new PDDocument()) {
            for (int n = 1; n <= 3; n++) {
                drawSheet(doc, n, rotation, hiddenPt);
            }
            doc.save(file.toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        source = file;
        return this;
    }

    private void drawSheet(PDDocument doc, int n, int rotation, double hiddenPt) throws IOException {
        boolean turned = rotation == 90;
        float w = (float) (turned ? HEIGHT_PT : WIDTH_PT);
        float h = (float) (turned ? WIDTH_PT : HEIGHT_PT);
        PDPage page = new PDPage(new PDRectangle(w + (float) hiddenPt, h + (float) hiddenPt));
        page.setCropBox(new PDRectangle((float) hiddenPt, (float) hiddenPt, w, h));
        page.setRotation(rotation);
        // a page turned by 90 degrees shows its own (y, x) where the viewer sees (x, y from the top)
        Affine toPage = turned
                ? new Affine(0, 1, hiddenPt, 1, 0, hiddenPt)
                : new Affine(1, 0, hiddenPt, 0, -1, HEIGHT_PT + hiddenPt);
        Sheet s = sheets.get(n - 1);
        sheets.set(
                n - 1,
                new Sheet(
                        s.name(),
                        s.page(),
                        s.widthPt(),
                        s.heightPt(),
                        s.title(),
                        s.revision(),
                        s.origin(),
                        s.grid(),
                        toPage));
        doc.addPage(page);
        try (PDPageContentStream out = new PDPageContentStream(doc, page)) {
            for (Line l : lines) {
                if (l.page().page() == n) {
                    for (List<Point> run : l.runs()) {
                        stroke(out, run, toPage);
                    }
                }
            }
            for (Component c : components) {
                if (c.page().page() == n) {
                    write(out, c.tag(), c.place().plus(28, 0), toPage, turned);
                }
            }
            for (Reference r : references) {
                if (r.page().page() == n) {
                    write(out, r.text(), r.place().plus(-16, 4), toPage, turned);
                }
            }
        }
    }

    private static void stroke(PDPageContentStream out, List<Point> run, Affine toPage) throws IOException {
        for (int i = 0; i < run.size(); i++) {
            Point p = toPage.apply(run.get(i));
            if (i == 0) {
                out.moveTo((float) p.xPt(), (float) p.yPt());
            } else {
                out.lineTo((float) p.xPt(), (float) p.yPt());
            }
        }
        out.stroke();
    }

    private static void write(PDPageContentStream out, String text, Point at, Affine toPage, boolean turned)
            throws IOException {
        Point p = toPage.apply(at);
        out.beginText();
        out.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA), 12);
        out.setTextMatrix(
                turned
                        ? new org.apache.pdfbox.util.Matrix(0, 1, -1, 0, (float) p.xPt(), (float) p.yPt())
                        : new org.apache.pdfbox.util.Matrix(1, 0, 0, 1, (float) p.xPt(), (float) p.yPt()));
        out.showText(text);
        out.endText();
    }
}
