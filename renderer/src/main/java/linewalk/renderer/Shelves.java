package linewalk.renderer;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Point;
import linewalk.drawing.Reference;
import linewalk.linker.Leg;
import linewalk.renderer.sheet.Lettering;

/** Divides views that are larger than the page and sets all cuttings in the order of the walk, page after page. */
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
    private final boolean byColumns;
    private final List<Panel> panels = new ArrayList<>();
    private int page;
    private final List<Rectangle2D> taken = new ArrayList<>();

    private Shelves(PrintAreas areas, boolean byColumns) {
        this.areas = areas;
        this.byColumns = byColumns;
    }

    /** By rows or by columns, whichever takes fewer pages. */
    static List<Panel> set(List<BrokenView> views, List<String> captions, PrintAreas areas) {
        List<Panel> rows = set(new Shelves(areas, false), views, captions);
        List<Panel> columns = set(new Shelves(areas, true), views, captions);
        return last(columns).page() < last(rows).page() ? columns : rows;
    }

    private double widthPt() {
        return areas.on(page).getWidth();
    }

    private double heightPt() {
        return areas.on(page).getHeight();
    }

    private static Panel last(List<Panel> panels) {
        return panels.get(panels.size() - 1);
    }

    private static List<Panel> set(Shelves s, List<BrokenView> views, List<String> captions) {
        for (int i = 0; i < views.size(); i++) {
            s.add(i, views.get(i), captions.get(i));
        }
        return s.panels;
    }

    /** Whole on this page; else in few parts on this page, where a letter is found sooner; else on the next. */
    private void add(int stay, BrokenView view, String caption) {
        double roomX = widthPt() - 2 * RIM_PT;
        double roomY = heightPt() - 2 * RIM_PT - 3 * Panel.Caption.LINE_PT - 4 * MatchMarks.RADIUS_PT;
        List<Rectangle2D> whole = ViewCuts.parts(view, roomX, roomY);
        if (taken.isEmpty() || staysOnPage(stay, view, caption, whole)) {
            if (taken.isEmpty()) {
                place(stay, view, caption, whole);
            }
            return;
        }
        for (double[] room : rooms(roomX, roomY)) {
            List<Rectangle2D> parts = ViewCuts.parts(view, room[0], room[1]);
            if (parts.size() <= MOST_PARTS && staysOnPage(stay, view, caption, parts)) {
                return;
            }
        }
        place(stay, view, caption, whole);
    }

    /** What is left beside and below the cuttings of this page, widths and heights. */
    private List<double[]> rooms(double roomX, double roomY) {
        List<double[]> rooms = new ArrayList<>();
        for (Rectangle2D t : taken) {
            double beside = widthPt() - RIM_PT - t.getMaxX() - LANE_PT;
            double below =
                    heightPt() - RIM_PT - t.getMaxY() - LANE_PT - 3 * Panel.Caption.LINE_PT - 4 * MatchMarks.RADIUS_PT;
            rooms.add(new double[] {beside, roomY});
            rooms.add(new double[] {roomX, below});
            rooms.add(new double[] {beside, roomY / 2});
        }
        rooms.removeIf(r -> r[0] < LEAST_PART_PT || r[1] < LEAST_PART_PT);
        return rooms;
    }

    /** Places the parts if they fit on the current page, else leaves all as it was. */
    private boolean staysOnPage(int stay, BrokenView view, String caption, List<Rectangle2D> parts) {
        int pageBefore = page;
        int panelsBefore = panels.size();
        List<Rectangle2D> takenBefore = new ArrayList<>(taken);
        place(stay, view, caption, parts);
        if (page == pageBefore) {
            return true;
        }
        page = pageBefore;
        panels.subList(panelsBefore, panels.size()).clear();
        taken.clear();
        taken.addAll(takenBefore);
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
        Point2D at = room(w, h, beside);
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
        taken.add(new Rectangle2D.Double(at.getX(), at.getY(), w + beside, h));
    }

    private Panel.Caption caption(String text, double frameWidth, boolean below, boolean divided) {
        double most = Math.max(frameWidth, Math.min(240, widthPt() - 2 * RIM_PT));
        List<String> lines = Lettering.wrap(text, Lettering.TEXT_PT, most);
        double w = lines.stream()
                .mapToDouble(l -> Lettering.widthPt(l, Lettering.TEXT_PT))
                .max()
                .orElse(0);
        return new Panel.Caption(lines, w, below, divided ? 2 * MatchMarks.RADIUS_PT + 6 : 4);
    }

    /**
     * The first corner on the current page where the cutting has its lanes free; else the next page.
     *
     * @param beside room on its right that others keep free besides
     */
    private Point2D room(double w, double h, double beside) {
        List<Double> xs = new ArrayList<>(List.of(RIM_PT));
        List<Double> ys = new ArrayList<>(List.of(RIM_PT));
        for (Rectangle2D t : taken) {
            xs.add(t.getMaxX() + LANE_PT);
            ys.add(t.getMaxY() + LANE_PT);
        }
        xs.sort(null);
        ys.sort(null);
        for (double a : byColumns ? xs : ys) {
            for (double b : byColumns ? ys : xs) {
                double x = byColumns ? a : b;
                double y = byColumns ? b : a;
                if (isFree(x, y, w, h, beside)) {
                    return new Point2D.Double(x, y);
                }
            }
        }
        page++;
        taken.clear();
        return new Point2D.Double(RIM_PT, RIM_PT);
    }

    /** A page's first cutting is always taken, whatever its size. */
    private boolean isFree(double x, double y, double w, double h, double beside) {
        Rectangle2D lanes = new Rectangle2D.Double(
                x - LANE_PT + 1, y - LANE_PT + 1, w + beside + 2 * LANE_PT - 2, h + 2 * LANE_PT - 2);
        boolean fits = x + w <= widthPt() - RIM_PT && y + h <= heightPt() - RIM_PT;
        return taken.isEmpty() || fits && taken.stream().noneMatch(lanes::intersects);
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
