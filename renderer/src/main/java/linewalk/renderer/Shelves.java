package linewalk.renderer;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import linewalk.drawing.Point;
import linewalk.drawing.Reference;
import linewalk.linker.Leg;
import linewalk.renderer.sheet.Lettering;

/**
 * Divides views that are larger than the page and sets all cuttings: those of a path in the order of the walk, page after
 * page, those of a circuit on the first page that has room.
 */
final class Shelves {

    /** Lanes for connectors between the cuttings. */
    private static final double LANE_PT = 46;
    /** What two parts side by side need more than a lane, so that the letters between them keep apart. */
    private static final double LETTERS_PT = 2 * (MatchMarks.STUB_PT + MatchMarks.HALF_PT) - LANE_PT;
    /** Room at the rim, for connectors and match marks. */
    private static final double RIM_PT = 40;

    /** A cutting is divided no further than this to save a page. */
    private static final int MOST_PARTS = 3;

    private static final double LEAST_PART_PT = 200;

    private final PrintAreas areas;
    private final boolean inOrder;
    private final boolean byColumns;
    private final List<Panel> panels = new ArrayList<>();
    /** By page. */
    private final List<List<Rectangle2D>> taken = new ArrayList<>(List.of(new ArrayList<>()));

    private Shelves(PrintAreas areas, boolean inOrder, boolean byColumns) {
        this.areas = areas;
        this.inOrder = inOrder;
        this.byColumns = byColumns;
    }

    /**
     * By rows or by columns, whichever takes fewer pages.
     *
     * @param inOrder no cutting stands on a page before that of its forerunner
     * @return page by page
     */
    static List<Panel> set(List<BrokenView> views, List<String> captions, PrintAreas areas, boolean inOrder) {
        Shelves rows = filled(new Shelves(areas, inOrder, false), views, captions);
        Shelves columns = filled(new Shelves(areas, inOrder, true), views, captions);
        return (columns.taken.size() < rows.taken.size() ? columns : rows)
                .panels.stream().sorted(Comparator.comparingInt(Panel::page)).toList();
    }

    private static Shelves filled(Shelves s, List<BrokenView> views, List<String> captions) {
        for (int i = 0; i < views.size(); i++) {
            s.add(i, views.get(i), captions.get(i));
        }
        return s;
    }

    private int lastPage() {
        return taken.size() - 1;
    }

    private List<Rectangle2D> onLastPage() {
        return taken.get(lastPage());
    }

    private double widthPt(int page) {
        return areas.on(page).getWidth();
    }

    private double heightPt(int page) {
        return areas.on(page).getHeight();
    }

    /** Whole where there is room; else in few parts there, where a letter is found sooner; else on the next page. */
    private void add(int stay, BrokenView view, String caption) {
        double roomX = widthPt(lastPage()) - 2 * RIM_PT;
        double roomY = heightPt(lastPage()) - 2 * RIM_PT - 3 * Panel.Caption.LINE_PT - 4 * MatchMarks.RADIUS_PT;
        List<Rectangle2D> whole = ViewCuts.parts(view, roomX, roomY);
        if (onLastPage().isEmpty()) {
            place(stay, view, caption, whole);
            return;
        }
        if (takesNoPage(stay, view, caption, whole)) {
            return;
        }
        for (double[] room : rooms(roomX, roomY)) {
            List<Rectangle2D> parts = ViewCuts.parts(view, room[0], room[1]);
            if (parts.size() <= MOST_PARTS && takesNoPage(stay, view, caption, parts)) {
                return;
            }
        }
        place(stay, view, caption, whole);
    }

    /** What is left beside and below the cuttings of the last page, widths and heights. */
    private List<double[]> rooms(double roomX, double roomY) {
        List<double[]> rooms = new ArrayList<>();
        for (Rectangle2D t : onLastPage()) {
            double beside = widthPt(lastPage()) - RIM_PT - t.getMaxX() - LANE_PT;
            double below = heightPt(lastPage())
                    - RIM_PT
                    - t.getMaxY()
                    - LANE_PT
                    - 3 * Panel.Caption.LINE_PT
                    - 4 * MatchMarks.RADIUS_PT;
            rooms.add(new double[] {beside, roomY});
            rooms.add(new double[] {roomX, below});
            rooms.add(new double[] {beside, roomY / 2});
        }
        rooms.removeIf(r -> r[0] < LEAST_PART_PT || r[1] < LEAST_PART_PT);
        return rooms;
    }

    /** Places the parts if that takes no further page, else leaves all as it was. */
    private boolean takesNoPage(int stay, BrokenView view, String caption, List<Rectangle2D> parts) {
        List<Panel> panelsBefore = List.copyOf(panels);
        List<List<Rectangle2D>> takenBefore = taken.stream().map(List::copyOf).toList();
        place(stay, view, caption, parts);
        if (taken.size() == takenBefore.size()) {
            return true;
        }
        panels.clear();
        panels.addAll(panelsBefore);
        taken.clear();
        takenBefore.forEach(t -> taken.add(new ArrayList<>(t)));
        return false;
    }

    private void place(int stay, BrokenView view, String caption, List<Rectangle2D> parts) {
        for (int i = 0; i < parts.size(); i++) {
            String text = parts.size() == 1 ? caption : caption + " (part " + (i + 1) + " of " + parts.size() + ")";
            place(stay, view, parts.get(i), text, parts.size() > 1);
        }
    }

    private void place(int stay, BrokenView view, Rectangle2D part, String text, boolean divided) {
        CuttingPort entry = port(view, part, view.stay.entry(), true);
        CuttingPort exit = port(view, part, view.stay.exit(), false);
        boolean below = uses(entry, exit, CuttingPort.Edge.TOP) && !uses(entry, exit, CuttingPort.Edge.BOTTOM);
        CuttingPort.Edge captionEdge = below ? CuttingPort.Edge.BOTTOM : CuttingPort.Edge.TOP;
        Panel.Caption caption = caption(text, part.getWidth(), below, divided);
        double w = Math.max(part.getWidth(), caption.widthPt());
        double h = part.getHeight() + caption.heightPt();
        double beside = divided ? LETTERS_PT : 0;
        int page = page(w, h, beside);
        Point2D at = room(page, w, h, beside).orElse(new Point2D.Double(RIM_PT, RIM_PT));
        double top = below ? at.getY() : at.getY() + caption.heightPt();
        panels.add(new Panel(
                stay,
                view,
                part,
                page,
                new Rectangle2D.Double(at.getX(), top, part.getWidth(), part.getHeight()),
                caption,
                entry == null ? null : entry.avoiding(captionEdge, part),
                exit == null ? null : exit.avoiding(captionEdge, part)));
        taken.get(page).add(new Rectangle2D.Double(at.getX(), at.getY(), w + beside, h));
    }

    private Panel.Caption caption(String text, double frameWidth, boolean below, boolean divided) {
        double most = Math.max(frameWidth, Math.min(240, widthPt(lastPage()) - 2 * RIM_PT));
        List<String> lines = Lettering.wrap(text, Lettering.TEXT_PT, most);
        double w = lines.stream()
                .mapToDouble(l -> Lettering.widthPt(l, Lettering.TEXT_PT))
                .max()
                .orElse(0);
        return new Panel.Caption(lines, w, below, divided ? 2 * MatchMarks.RADIUS_PT + 6 : 4);
    }

    /** The first that has room for a cutting, a new one at last; a path never turns back. */
    private int page(double w, double h, double beside) {
        for (int page = inOrder ? lastPage() : 0; page <= lastPage(); page++) {
            if (taken.get(page).isEmpty() || room(page, w, h, beside).isPresent()) {
                return page;
            }
        }
        taken.add(new ArrayList<>());
        return lastPage();
    }

    /**
     * The first corner on a page where the cutting has its lanes free.
     *
     * @param beside room on its right that others keep free besides
     */
    private Optional<Point2D> room(int page, double w, double h, double beside) {
        List<Double> xs = new ArrayList<>(List.of(RIM_PT));
        List<Double> ys = new ArrayList<>(List.of(RIM_PT));
        for (Rectangle2D t : taken.get(page)) {
            xs.add(t.getMaxX() + LANE_PT);
            ys.add(t.getMaxY() + LANE_PT);
        }
        xs.sort(null);
        ys.sort(null);
        for (double a : byColumns ? xs : ys) {
            for (double b : byColumns ? ys : xs) {
                double x = byColumns ? a : b;
                double y = byColumns ? b : a;
                if (isFree(page, x, y, w, h, beside)) {
                    return Optional.of(new Point2D.Double(x, y));
                }
            }
        }
        return Optional.empty();
    }

    private boolean isFree(int page, double x, double y, double w, double h, double beside) {
        Rectangle2D lanes = new Rectangle2D.Double(
                x - LANE_PT + 1, y - LANE_PT + 1, w + beside + 2 * LANE_PT - 2, h + 2 * LANE_PT - 2);
        return x + w <= widthPt(page) - RIM_PT
                && y + h <= heightPt(page) - RIM_PT
                && taken.get(page).stream().noneMatch(lanes::intersects);
    }

    private static boolean uses(CuttingPort a, CuttingPort b, CuttingPort.Edge edge) {
        return a != null && a.edge() == edge || b != null && b.edge() == edge;
    }

    private static CuttingPort port(BrokenView view, Rectangle2D part, Reference reference, boolean entry) {
        if (reference == null) {
            return null;
        }
        List<Leg.Along> alongs = view.stay.alongs();
        if (alongs.isEmpty()) {
            return CuttingPort.of(view, part, reference, null, null);
        }
        Leg.Along along = entry ? alongs.get(0) : alongs.get(alongs.size() - 1);
        Point end = (entry ? along.from() : along.to()).place();
        // lettering may stand beside the line: its last straight part says which way it goes
        return view.stay
                .lastBend(end)
                .map(bend -> CuttingPort.of(view, part, reference, bend, end))
                .orElseGet(() -> CuttingPort.of(
                        view, part, reference, end, reference.box().center()));
    }
}
