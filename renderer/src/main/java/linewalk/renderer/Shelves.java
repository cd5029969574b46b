package linewalk.renderer;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import linewalk.renderer.sheet.Lettering;

/** Divides views that are larger than the page and sets all cuttings in the order of the walk: rows, then pages. */
final class Shelves {

    /** Lanes for connectors between the cuttings. */
    static final double LANE_PT = 36;
    /** Room at the rim, for connectors and match marks. */
    static final double RIM_PT = 22;

    private final double widthPt;
    private final double heightPt;
    private final List<Panel> panels = new ArrayList<>();
    private int page;
    private double xPt = RIM_PT;
    private double yPt = RIM_PT;
    private double rowPt;

    private Shelves(double widthPt, double heightPt) {
        this.widthPt = widthPt;
        this.heightPt = heightPt;
    }

    static List<Panel> set(List<BrokenView> views, List<String> captions, double widthPt, double heightPt) {
        Shelves s = new Shelves(widthPt, heightPt);
        for (int i = 0; i < views.size(); i++) {
            s.add(i, views.get(i), captions.get(i));
        }
        return s.panels;
    }

    private void add(int stay, BrokenView view, String caption) {
        double roomX = widthPt - 2 * RIM_PT;
        double roomY = heightPt - 2 * RIM_PT - 3 * Panel.CAPTION_LINE_PT - 4;
        List<Rectangle2D> parts = ViewCuts.parts(view, roomX, roomY);
        for (int i = 0; i < parts.size(); i++) {
            String text = parts.size() == 1 ? caption : caption + " (part " + (i + 1) + " of " + parts.size() + ")";
            place(stay, view, parts.get(i), text);
        }
    }

    private void place(int stay, BrokenView view, Rectangle2D part, String text) {
        double w = part.getWidth();
        double captionWidth = Math.max(w, Math.min(300, widthPt - 2 * RIM_PT));
        List<String> caption = Lettering.wrap(text, Lettering.TEXT_PT, captionWidth);
        double head = caption.size() * Panel.CAPTION_LINE_PT + 4;
        double outerW = Math.max(w, captionWidth);
        double outerH = part.getHeight() + head;
        if (xPt > RIM_PT && xPt + outerW > widthPt - RIM_PT) {
            xPt = RIM_PT;
            yPt += rowPt + LANE_PT;
            rowPt = 0;
        }
        if (yPt > RIM_PT && yPt + outerH > heightPt - RIM_PT) {
            page++;
            xPt = RIM_PT;
            yPt = RIM_PT;
            rowPt = 0;
        }
        Rectangle2D frame = new Rectangle2D.Double(xPt, yPt + head, w, part.getHeight());
        panels.add(new Panel(stay, view, part, page, frame, caption));
        xPt += outerW + LANE_PT;
        rowPt = Math.max(rowPt, outerH);
    }
}
