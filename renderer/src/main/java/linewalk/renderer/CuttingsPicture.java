package linewalk.renderer;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import linewalk.drawing.PageKey;
import linewalk.drawing.Reference;
import linewalk.drawing.Sheet;
import linewalk.linker.Leg;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Page;

/** The original's own areas along the path, one cutting for each stay on a sheet, joined mate to mate. */
final class CuttingsPicture implements Picture {

    private final PrintJob job;
    private final Doubts doubts;
    private final SourcePages sources;
    private final List<Stay> stays;
    private final List<BrokenView> views = new ArrayList<>();
    private final List<Panel> panels;
    private final List<Connector> connectors = new ArrayList<>();
    private final MatchMarks marks = new MatchMarks();
    private final PanelCuts cuts;
    private final CuttingLinks links;

    private CuttingsPicture(PrintJob job, Doubts doubts, PrintAreas areas, SourcePages sources) {
        this.job = job;
        this.doubts = doubts;
        this.sources = sources;
        stays = job.subject().isPath()
                ? Stay.of(job.subject().legs())
                : Stay.of(job.subject().excerpt(), job.set());
        List<String> captions = new ArrayList<>();
        for (Stay s : stays) {
            Sheet sheet = job.set().getSheet(s.page());
            views.add(BrokenView.of(s, sheet, sources.marks(sheet).letters()));
            captions.add(caption(s, sheet));
        }
        panels = views.isEmpty()
                ? List.of()
                : Shelves.set(views, captions, areas, job.subject().isPath());
        cuts = new PanelCuts(panels, marks);
        // a path's crossings have connectors of their own
        List<Panel> linked = job.subject().isPath() ? List.of() : panels;
        links = new CuttingLinks(new SetIndex(job.set()), linked, marks);
        for (int page = 0; page < pages(); page++) {
            connect(page, areas.on(page));
        }
        nameFarConnectors();
    }

    static Picture layOut(PrintJob job, Doubts doubts, PrintAreas areas, SourcePages sources) {
        return new CuttingsPicture(job, doubts, areas, sources);
    }

    private String caption(Stay s, Sheet sheet) {
        Words words = new Words(job);
        StringBuilder text = new StringBuilder("Sheet " + sheet.name());
        text.append(sheet.revision() == null ? "" : " rev " + sheet.revision());
        int n = stays.indexOf(s);
        if (s.entry() != null) {
            text.append(". Enters: ").append(words.crossing(stays.get(n - 1).exit(), s.entry()));
        }
        if (s.exit() != null) {
            text.append(". Leaves: ")
                    .append(words.crossing(s.exit(), stays.get(n + 1).entry()));
        }
        if (sources.original(s.page()).isEmpty()) {
            text.append(". ORIGINAL MISSING OR NOT READABLE: ").append(s.page());
        }
        return job.subject().isPath() ? (n + 1) + ". " + text : text.toString();
    }

    /** Only a path goes from one sheet to the next. */
    private int links() {
        return job.subject().isPath() ? stays.size() : 1;
    }

    private void connect(int page, Rectangle2D area) {
        LaneRouter router = new LaneRouter(area.getWidth(), area.getHeight(), obstacles(page));
        for (int i = 1; i < links(); i++) {
            Panel from = panelOf(i - 1, stays.get(i - 1).exit());
            Panel to = panelOf(i, stays.get(i).entry());
            if (from.page() == page && to.page() == page) {
                connectors.add(between(i, from, to, router));
            }
        }
    }

    /** Where the letters of the page stand, with their words. */
    private List<Rectangle2D> markBoxes(int page) {
        List<Rectangle2D> boxes = new ArrayList<>();
        for (int i = 1; i < links(); i++) {
            Panel from = panelOf(i - 1, stays.get(i - 1).exit());
            Panel to = panelOf(i, stays.get(i).entry());
            if (from.page() == page && to.page() != page) {
                boxes.add(markBox(from.exit().out(from)));
            }
            if (to.page() == page && from.page() != page) {
                boxes.add(markBox(to.entry().out(to)));
            }
        }
        for (Panel p : panels) {
            if (p.page() == page) {
                cuts.on(p)
                        .forEach(m ->
                                boxes.add(MatchMarks.box(CuttingPainter.markAt(p, m), CuttingPainter.isBeside(p, m))));
            }
        }
        return boxes;
    }

    /** Between the cuttings of a path run its connectors. */
    private Margins margins(int page, Rectangle2D area) {
        if (job.subject().isPath()) {
            return Margins.none();
        }
        List<Rectangle2D> taken = new ArrayList<>();
        for (Rectangle2D o : obstacles(page)) {
            taken.add(new Rectangle2D.Double(
                    area.getX() + o.getX(), area.getY() + o.getY(), o.getWidth(), o.getHeight()));
        }
        return new Margins(area, taken);
    }

    /** What stands on a page, from the corner of its picture. */
    private List<Rectangle2D> obstacles(int page) {
        List<Rectangle2D> obstacles = panels.stream()
                .filter(p -> p.page() == page)
                .flatMap(p -> Stream.of(p.frame(), p.captionBox()))
                .collect(Collectors.toCollection(ArrayList::new));
        obstacles.addAll(markBoxes(page));
        return obstacles;
    }

    private static Rectangle2D markBox(List<Point2D> stub) {
        return MatchMarks.box(stub.get(1), stub.get(0).getY() == stub.get(1).getY());
    }

    private void nameFarConnectors() {
        for (int i = 1; i < links(); i++) {
            Panel from = panelOf(i - 1, stays.get(i - 1).exit());
            Panel to = panelOf(i, stays.get(i).entry());
            if (from.page() != to.page()) {
                connectors.add(between(i, from, to, null));
            }
        }
    }

    private Connector between(int i, Panel from, Panel to, LaneRouter router) {
        return Connector.between(from, to, router, marks, "crossing " + i);
    }

    private Panel panelOf(int stay, Reference r) {
        Panel first = null;
        for (Panel p : panels) {
            if (p.stay() == stay) {
                first = first == null ? p : first;
                if (p.shows(p.view().map(r.place()))) {
                    return p;
                }
            }
        }
        return first;
    }

    @Override
    public int pages() {
        return panels.isEmpty() ? 1 : panels.get(panels.size() - 1).page() + 1;
    }

    @Override
    public boolean leavesRoomForWords() {
        return true;
    }

    @Override
    public void paint(int page, Page on, Rectangle2D area) throws IOException {
        Canvas c = on.canvas();
        CuttingPainter painter =
                new CuttingPainter(job, new CuttingDoubts(job, doubts), sources, on, area, margins(page, area));
        for (Panel p : panels) {
            if (p.page() == page) {
                painter.paint(p, cuts.on(p), links.on(p));
            }
        }
        new ConnectorPainter(job, c, area, page).paint(connectors, stays, panels, markBoxes(page));
    }

    @Override
    public Map<String, Rectangle2D> places(int page, Rectangle2D area) {
        Map<String, Rectangle2D> places = new HashMap<>();
        for (Panel p : panels) {
            for (Leg.Through t : p.view().stay.parts()) {
                Rectangle2D outline = p.view().map(Stay.anchor(t));
                if (p.page() == page && p.shows(ViewCuts.center(outline))) {
                    AffineTransform at = AffineTransform.getTranslateInstance(area.getX(), area.getY());
                    at.concatenate(p.fromView());
                    places.putIfAbsent(
                            t.component().id(),
                            at.createTransformedShape(outline).getBounds2D());
                }
            }
        }
        return places;
    }

    @Override
    public boolean marks(Doubts.Doubt doubt) {
        CuttingDoubts marked = new CuttingDoubts(job, doubts);
        return panels.stream().flatMap(p -> marked.on(p).stream()).anyMatch(s -> s.doubt()
                .equals(doubt));
    }

    @Override
    public List<Mark> legend() {
        return CuttingsLegend.of(job, doubts, !connectors.isEmpty(), !marks.isEmpty());
    }

    @Override
    public List<String> remarks() {
        List<String> remarks = new ArrayList<>();
        Words words = new Words(job);
        List<PageKey> missing = new ArrayList<>();
        for (Stay s : stays) {
            s.alongs().stream()
                    .filter(a -> !isTraced(s, a))
                    .forEach(a -> remarks.add(Words.capital(words.called(a.line())) + " on "
                            + job.set().address(s.page(), a.from().place())
                            + " was never traced on the drawing and is not drawn over."));
            if (!missing.contains(s.page()) && sources.original(s.page()).isEmpty()) {
                missing.add(s.page());
                remarks.add(
                        "The original of sheet " + job.set().getSheet(s.page()).name() + " (" + s.page()
                                + ") is missing or cannot be read: its cutting is empty.");
            }
        }
        return remarks;
    }

    private boolean isTraced(Stay s, Leg.Along a) {
        return job.subject().isPath()
                ? s.courses().values().stream().anyMatch(c -> runs(c, a))
                : !a.line().runs().isEmpty();
    }

    private static boolean runs(List<linewalk.drawing.Point> course, Leg.Along a) {
        return course.get(0).distancePt(a.from().place()) < 5
                && course.get(course.size() - 1).distancePt(a.to().place()) < 5;
    }
}
