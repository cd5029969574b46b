package linewalk.tests.plant;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import linewalk.drawing.Affine;
import linewalk.drawing.Box;
import linewalk.drawing.Component;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.End;
import linewalk.drawing.Finding;
import linewalk.drawing.Flow;
import linewalk.drawing.Kind;
import linewalk.drawing.Line;
import linewalk.drawing.LineKind;
import linewalk.drawing.Origin;
import linewalk.drawing.PageKey;
import linewalk.drawing.Point;
import linewalk.drawing.Port;
import linewalk.drawing.Position;
import linewalk.drawing.Reference;
import linewalk.drawing.Sheet;
import linewalk.drawing.Target;
import linewalk.drawing.ZoneGrid;

/**
 * A drawing set that no page was read for: parts on sheets, and nets of ports. A net is a line on each sheet that it has
 * ports on, and goes from sheet to sheet over mated references. Ports are named {@code TAG:P}.
 */
final class MadeSet {

    private static final double WIDTH_PT = 842;
    private static final double HEIGHT_PT = 595;
    private static final double SURE = 0.98;

    /** How much of the set is in doubt, in percent: joins, mates, readings and line ends. */
    private static final int DOUBTFUL_PERCENT = 4;

    private final Random random;
    private final List<Sheet> sheets = new ArrayList<>();
    private final Map<String, Component> components = new LinkedHashMap<>();
    private final Map<String, Reference> references = new LinkedHashMap<>();
    private final List<Line> lines = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    MadeSet(int sheetCount, Random random) {
        this.random = random;
        for (int n = 1; n <= sheetCount; n++) {
            ZoneGrid grid = new ZoneGrid(bands("12345678", WIDTH_PT), bands("ABCDEF", HEIGHT_PT), true);
            sheets.add(new Sheet(
                    "" + n, page(n), WIDTH_PT, HEIGHT_PT, "PART " + n, "A", Origin.TEXT, grid, Affine.IDENTITY));
        }
    }

    DrawingSet set() {
        return new DrawingSet(
                sheets, List.copyOf(references.values()), List.copyOf(components.values()), List.of(), lines, findings);
    }

    int size() {
        return components.size();
    }

    /** @param ports names, by a space; one that begins with {@code ?} is drawn without its letter */
    void part(int sheet, String tag, Kind kind, String setting, String ports, List<Position> positions) {
        Point place = somewhere();
        List<Port> made = new ArrayList<>();
        for (String p : ports.split(" ")) {
            made.add(new Port(tag + ":" + p, p.startsWith("?") ? null : p, place));
        }
        Box box = Box.around(place).grow(20);
        components.put(
                tag,
                new Component(
                        tag, tag, page(sheet), place, box, kind, setting, Origin.TEXT, confidence(), made, positions));
    }

    /** @param label a line number, or null */
    void net(LineKind kind, String label, Collection<String> ports) {
        Map<PageKey, List<End>> bySheet = new TreeMap<>((a, b) -> Integer.compare(a.page(), b.page()));
        for (String port : ports) {
            Component c = components.get(port.substring(0, port.indexOf(':')));
            bySheet.computeIfAbsent(c.page(), k -> new ArrayList<>()).add(new End.AtPort(c.id(), port, c.place()));
        }
        List<PageKey> pages = List.copyOf(bySheet.keySet());
        boolean header = pages.size() > 2 && random.nextInt(4) == 0;
        if (header) {
            mates(pages.get(0), pages.subList(1, pages.size()), bySheet, label);
        }
        for (int i = 1; i < pages.size() && !header; i++) {
            mates(pages.get(i - 1), List.of(pages.get(i)), bySheet, label);
        }
        bySheet.forEach((page, ends) -> line(page, kind, label, ends));
    }

    /** A reference on one sheet that goes on to others, and theirs back to it. */
    private void mates(PageKey from, List<PageKey> to, Map<PageKey, List<End>> bySheet, String label) {
        double sure = confidence();
        String own = "r" + references.size();
        List<String> others = new ArrayList<>();
        for (PageKey page : to) {
            String id = "r" + references.size() + "-" + others.size();
            others.add(id);
            bySheet.get(page).add(reference(id, page, from, List.of(own), label, sure));
        }
        bySheet.get(from).add(reference(own, from, to.get(0), others, label, sure));
    }

    private End reference(String id, PageKey page, PageKey to, List<String> mates, String label, double sure) {
        Point place = somewhere();
        String name = sheets.get(to.page() - 1).name();
        references.put(
                id,
                new Reference(
                        id,
                        page,
                        place,
                        Box.around(place).grow(10),
                        sheets.get(page.page() - 1).grid().zoneAt(place).orElseThrow(),
                        name,
                        List.of(new Target(name, null)),
                        label,
                        Flow.UNKNOWN,
                        Origin.TEXT,
                        1,
                        mates,
                        sure));
        return new End.AtReference(id, place);
    }

    private void line(PageKey page, LineKind kind, String label, List<End> ends) {
        if (random.nextInt(100) < DOUBTFUL_PERCENT) {
            ends.add(new End.Open(somewhere()));
        }
        List<List<Point>> runs = new ArrayList<>();
        for (int i = 1; i < ends.size(); i++) {
            runs.add(List.of(ends.get(0).place(), ends.get(i).place()));
        }
        lines.add(new Line("l" + lines.size(), page, kind, label, null, confidence(), ends, runs));
    }

    private double confidence() {
        return random.nextInt(100) < DOUBTFUL_PERCENT ? 0.6 : SURE;
    }

    private Point somewhere() {
        return new Point(40 + random.nextInt(760), 40 + random.nextInt(510));
    }

    private static PageKey page(int n) {
        return new PageKey("made.pdf", n);
    }

    private static List<ZoneGrid.Band> bands(String labels, double extentPt) {
        List<ZoneGrid.Band> bands = new ArrayList<>();
        double step = extentPt / labels.length();
        for (int i = 0; i < labels.length(); i++) {
            bands.add(new ZoneGrid.Band(labels.substring(i, i + 1), i * step, (i + 1) * step));
        }
        return bands;
    }
}
