package linewalk.renderer;

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
    /** Room at the rim, for connectors and match marks. */
    private static final double RIM_PT = 40;

    private final double widthPt;
    private final double heightPt;
    private final boolean byColumns;
    private final List<Panel> panels = new ArrayList<>();
    private int page;
    private double xPt = RIM_PT;
    private double yPt = RIM_PT;
    private double deepPt;

    private Shelves(double widthPt, double heightPt, boolean byColumns) {
        this.widthPt = widthPt;
        this.heightPt = heightPt;
        this.byColumns = byColumns;
    }

    /** By rows or by columns, whichever takes fewer pages. */
    static List<Panel> set(List<BrokenView> views, List<String> captions, double widthPt, double heightPt) {
        List<Panel> rows = set(new Shelves(widthPt, heightPt, false), views, captions);
        List<Panel> columns = set(new Shelves(widthPt, heightPt, true), views, captions);
        return last(columns).page() < last(rows).page() ? columns : rows;
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

    private void add(int stay, BrokenView view, String caption) {
        double roomX = widthPt - 2 * RIM_PT;
        double roomY = heightPt - 2 * RIM_PT - 3 * Panel.Caption.LINE_PT - 4;
        List<Rectangle2D> parts = ViewCuts.parts(view, roomX, roomY);
        for (int i = 0; i < parts.size(); i++) {
            String text = parts.size() == 1 ? caption : caption + " (part " + (i + 1) + " of " + parts.size() + ")";
            place(stay, view, parts.get(i), text);
        }
    }

    private void place(int stay, BrokenView view, Rectangle2D part, String text) {
        CuttingPort entry = port(view, part, view.stay.entry(), true);
        CuttingPort exit = port(view, part, view.stay.exit(), false);
        boolean below = uses(entry, exit, CuttingPort.Edge.TOP) && !uses(entry, exit, CuttingPort.Edge.BOTTOM);
        CuttingPort.Edge taken = below ? CuttingPort.Edge.BOTTOM : CuttingPort.Edge.TOP;
        Panel.Caption caption = caption(text, part.getWidth(), below);
        double w = Math.max(part.getWidth(), caption.widthPt());
        double h = part.getHeight() + caption.heightPt();
        makeRoom(w, h);
        double top = below ? yPt : yPt + caption.heightPt();
        panels.add(new Panel(
                stay,
                view,
                part,
                page,
                new Rectangle2D.Double(xPt, top, part.getWidth(), part.getHeight()),
                caption,
                entry == null ? null : entry.avoiding(taken, part),
                exit == null ? null : exit.avoiding(taken, part)));
        advance(w, h);
    }

    private Panel.Caption caption(String text, double frameWidth, boolean below) {
        double most = Math.max(frameWidth, Math.min(240, widthPt - 2 * RIM_PT));
        List<String> lines = Lettering.wrap(text, Lettering.TEXT_PT, most);
        double w = lines.stream()
                .mapToDouble(l -> Lettering.widthPt(l, Lettering.TEXT_PT))
                .max()
                .orElse(0);
        return new Panel.Caption(lines, w, below);
    }

    private void makeRoom(double w, double h) {
        if (byColumns) {
            if (yPt > RIM_PT && yPt + h > heightPt - RIM_PT) {
                yPt = RIM_PT;
                xPt += deepPt + LANE_PT;
                deepPt = 0;
            }
        } else if (xPt > RIM_PT && xPt + w > widthPt - RIM_PT) {
            xPt = RIM_PT;
            yPt += deepPt + LANE_PT;
            deepPt = 0;
        }
        boolean over = byColumns ? xPt + w > widthPt - RIM_PT : yPt + h > heightPt - RIM_PT;
        if (over && (byColumns ? xPt : yPt) > RIM_PT) {
            page++;
            xPt = RIM_PT;
            yPt = RIM_PT;
            deepPt = 0;
        }
    }

    private void advance(double w, double h) {
        if (byColumns) {
            yPt += h + LANE_PT;
            deepPt = Math.max(deepPt, w);
        } else {
            xPt += w + LANE_PT;
            deepPt = Math.max(deepPt, h);
        }
    }

    private static boolean uses(CuttingPort a, CuttingPort b, CuttingPort.Edge edge) {
        return a != null && a.edge() == edge || b != null && b.edge() == edge;
    }

    private static CuttingPort port(BrokenView view, Rectangle2D part, Reference reference, boolean entry) {
        if (reference == null) {
            return null;
        }
        List<Leg.Along> alongs = view.stay.alongs();
        Point end = alongs.isEmpty()
                ? null
                : entry
                        ? alongs.get(0).from().place()
                        : alongs.get(alongs.size() - 1).to().place();
        return CuttingPort.of(view, part, reference, end);
    }
}
