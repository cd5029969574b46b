package linewalk.renderer;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import linewalk.drawing.Component;
import linewalk.drawing.Line;
import linewalk.renderer.scheme.Layout;
import linewalk.renderer.scheme.Paging;
import linewalk.renderer.sheet.Marked;
import linewalk.renderer.sheet.Page;

/** The path or circuit drawn anew in layers; lines from page to page are joined by letters. */
final class DrawnPicture implements Picture {

    private static final double MOST_SCALE = 1.25;

    private final PrintJob job;
    private final Doubts doubts;
    private final DrawnScheme scheme;
    private final SchemeBuilder.Built built;
    private final List<Layout> layouts;
    private final boolean leavesRoom;
    private final MatchMarks marks;
    private final FlowWays ways;
    private final DrilledLines drilled;

    private DrawnPicture(PrintJob job, Doubts doubts, DrawnScheme scheme, PrintAreas areas, MatchMarks marks) {
        this.job = job;
        this.doubts = doubts;
        this.marks = marks;
        this.scheme = scheme;
        built = scheme.built();
        ways = new FlowWays(job, built);
        drilled = new DrilledLines(job.subject().excerpt(), job.set().enclosures());
        List<Layout> single = scheme.onOnePage(areas.beside());
        leavesRoom = !single.isEmpty();
        layouts = leavesRoom ? single : pages(areas.whole());
    }

    private List<Layout> pages(Rectangle2D area) {
        return Paging.of(
                built.scheme(),
                scheme.pieces(),
                area.getWidth(),
                area.getHeight(),
                (net, here, pages, above) ->
                        new MatchFigure(() -> marks.letter(net.name()), here, pages, above, () -> built.caution(net)
                                .isPresent()));
    }

    static Picture layOut(PrintJob job, Doubts doubts, DrawnScheme scheme, PrintAreas areas, MatchMarks marks) {
        return new DrawnPicture(job, doubts, scheme, areas, marks);
    }

    @Override
    public int pages() {
        return layouts.size();
    }

    @Override
    public boolean leavesRoomForWords() {
        return leavesRoom;
    }

    @Override
    public void paint(int page, Page on, Rectangle2D area) {
        Layout layout = layouts.get(page);
        AffineTransform at = onPage(layout, area);
        double scale = at.getScaleX();
        Rectangle2D field = new Rectangle2D.Double(
                (area.getX() - at.getTranslateX()) / scale,
                (area.getY() - at.getTranslateY()) / scale,
                area.getWidth() / scale,
                area.getHeight() / scale);
        SchemePainter painter = new SchemePainter(job, layout, built, ways, drilled);
        Marked.field(
                on.canvas(),
                area,
                c -> c.in(at.getTranslateX(), at.getTranslateY(), scale, in -> painter.paint(in, field)));
    }

    /** Enlarged a little where there is room, in the middle of the area. */
    private static AffineTransform onPage(Layout layout, Rectangle2D area) {
        double scale = Math.min(
                MOST_SCALE, Math.min(area.getWidth() / layout.widthPt(), area.getHeight() / layout.heightPt()));
        double x = area.getX() + (area.getWidth() - scale * layout.widthPt()) / 2;
        double y = area.getY() + (area.getHeight() - scale * layout.heightPt()) / 2;
        return new AffineTransform(scale, 0, 0, scale, x, y);
    }

    @Override
    public Map<String, Rectangle2D> places(int page, Rectangle2D area) {
        Map<String, Rectangle2D> places = new HashMap<>();
        Layout layout = layouts.get(page);
        AffineTransform at = onPage(layout, area);
        layout.places().forEach((node, corner) -> {
            Component part = built.parts().get(node);
            if (part != null) {
                Rectangle2D box = new Rectangle2D.Double(
                        corner.getX(),
                        corner.getY(),
                        node.figure().widthPt(),
                        node.figure().heightPt());
                places.putIfAbsent(part.id(), at.createTransformedShape(box).getBounds2D());
            }
        });
        return places;
    }

    @Override
    public boolean marks(Doubts.Doubt doubt) {
        return built.marked().contains(doubt);
    }

    @Override
    public List<Mark> legend() {
        boolean framed = layouts.stream()
                .anyMatch(l -> !new PlaceFrames(l, built, job.set().enclosures()).isEmpty());
        boolean aside = layouts.stream().anyMatch(l -> !new SideLines(l).isEmpty());
        return DrawnLegend.of(job, built, doubts, matchMarks(), !drilled.isEmpty(), framed, aside);
    }

    private List<MatchFigure> matchMarks() {
        return layouts.stream()
                .flatMap(l -> l.places().keySet().stream())
                .filter(n -> n.figure() instanceof MatchFigure)
                .map(n -> (MatchFigure) n.figure())
                .toList();
    }

    @Override
    public List<String> remarks() {
        List<String> remarks = new ArrayList<>();
        for (Line line : job.subject().excerpt().lines()) {
            if (line.runs().isEmpty()) {
                remarks.add("A line was joined by hand (" + new Words(job).called(line)
                        + "): nobody has followed its course on the drawing.");
            }
        }
        for (Layer layer : job.form().hidden()) {
            remarks.add(Words.capital(layer.words()) + " are left out of the picture.");
        }
        return remarks;
    }
}
