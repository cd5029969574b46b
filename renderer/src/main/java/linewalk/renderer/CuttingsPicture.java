package linewalk.renderer;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import linewalk.drawing.PageKey;
import linewalk.drawing.Reference;
import linewalk.drawing.Sheet;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.PdfBook;

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
    private final MatchMarks cutMarks = marks;
    private final Map<String, List<Panel>> cutPanels = new HashMap<>();

    private CuttingsPicture(PrintJob job, Doubts doubts, Rectangle2D area, SourcePages sources) {
        this.job = job;
        this.doubts = doubts;
        this.sources = sources;
        stays = Stay.of(job.trace().legs());
        List<String> captions = new ArrayList<>();
        for (Stay s : stays) {
            Sheet sheet = job.set().getSheet(s.page());
            views.add(new BrokenView(s, sheet, sources.letters(sheet)));
            captions.add(caption(s, sheet));
        }
        panels = Shelves.set(views, captions, area.getWidth(), area.getHeight());
        nameCuts();
        for (int page = 0; page < pages(); page++) {
            connect(page, area);
        }
        nameFarConnectors();
    }

    static Picture layOut(PrintJob job, Doubts doubts, Rectangle2D area, SourcePages sources) {
        return new CuttingsPicture(job, doubts, area, sources);
    }

    private String caption(Stay s, Sheet sheet) {
        Words words = new Words(job);
        String text = "Sheet " + sheet.name() + (sheet.revision() == null ? "" : " rev " + sheet.revision());
        int n = stays.indexOf(s);
        if (s.entry() != null) {
            text += ": from " + words.address(stays.get(n - 1).exit()) + " -> " + words.address(s.entry());
        }
        if (s.exit() != null) {
            text += (s.entry() == null ? ": " : "; ") + words.address(s.exit()) + " -> "
                    + words.address(stays.get(n + 1).entry());
        }
        return (n + 1) + ". " + text;
    }

    /** Where a cutting was divided, a letter for each place the path passes the division. */
    private void nameCuts() {
        for (Panel p : panels) {
            p.view().stay.courses().forEach((leg, course) -> {
                for (Clip.Cut cut : CuttingPainter.cuts(p, course)) {
                    String key = CuttingPainter.key(leg, cut);
                    marks.letter(key);
                    cutPanels.computeIfAbsent(key, k -> new ArrayList<>()).add(p);
                }
            });
        }
    }

    private void connect(int page, Rectangle2D area) {
        List<Rectangle2D> obstacles =
                panels.stream().filter(p -> p.page() == page).map(Panel::outer).toList();
        LaneRouter router = new LaneRouter(area.getWidth(), area.getHeight(), obstacles);
        for (int i = 1; i < stays.size(); i++) {
            Panel from = panelOf(i - 1, stays.get(i - 1).exit());
            Panel to = panelOf(i, stays.get(i).entry());
            if (from.page() == page && to.page() == page) {
                connectors.add(between(i, from, to, router));
            }
        }
    }

    private void nameFarConnectors() {
        for (int i = 1; i < stays.size(); i++) {
            Panel from = panelOf(i - 1, stays.get(i - 1).exit());
            Panel to = panelOf(i, stays.get(i).entry());
            if (from.page() != to.page()) {
                connectors.add(between(i, from, to, null));
            }
        }
    }

    private Connector between(int i, Panel from, Panel to, LaneRouter router) {
        return Connector.between(
                from,
                from.view().map(stays.get(i - 1).exit().box()),
                to,
                to.view().map(stays.get(i).entry().box()),
                router,
                marks,
                "crossing " + i);
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
        return panels.get(panels.size() - 1).page() + 1;
    }

    @Override
    public void paint(int page, PdfBook.Page on, Rectangle2D area) throws IOException {
        Canvas c = on.canvas();
        CuttingPainter painter = new CuttingPainter(job, doubts, sources, on, area);
        for (Panel p : panels) {
            if (p.page() == page) {
                painter.paint(p, cutMarks, cutPanels);
            }
        }
        ConnectorPainter lines = new ConnectorPainter(job, c, area, page);
        for (Connector k : connectors) {
            lines.paint(k, stays);
        }
    }

    @Override
    public List<Mark> legend() {
        return CuttingsLegend.of(doubts, !connectors.isEmpty(), !marks.isEmpty());
    }

    @Override
    public List<String> remarks() {
        List<String> remarks = new ArrayList<>();
        List<PageKey> missing = new ArrayList<>();
        for (Stay s : stays) {
            s.alongs().stream()
                    .filter(a -> s.courses().values().stream().noneMatch(c -> runs(c, a)))
                    .forEach(a -> remarks.add(Words.capital(Words.called(a.line())) + " on "
                            + job.set().address(s.page(), a.from().place())
                            + " was never traced on the drawing and is not drawn over."));
            if (!missing.contains(s.page()) && sources.form(s.page()).isEmpty()) {
                missing.add(s.page());
                remarks.add(
                        "The original of sheet " + job.set().getSheet(s.page()).name() + " (" + s.page()
                                + ") is missing or cannot be read: its cutting is empty.");
            }
        }
        return remarks;
    }

    private static boolean runs(List<linewalk.drawing.Point> course, linewalk.linker.Leg.Along a) {
        return course.get(0).distancePt(a.from().place()) < 5
                && course.get(course.size() - 1).distancePt(a.to().place()) < 5;
    }
}
