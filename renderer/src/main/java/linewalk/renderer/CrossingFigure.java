package linewalk.renderer;

import java.awt.Color;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linewalk.renderer.iso.PortPlace;
import linewalk.renderer.iso.Side;
import linewalk.renderer.scheme.Figure;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;
import linewalk.renderer.sheet.Lettering;

/**
 * Where a line goes from sheet to sheet: two fields of addresses, one above the other; each line meets the field of its
 * own sheet. Marks of doubt stand on the right.
 */
final class CrossingFigure implements Figure {

    /** One reference of the crossing: the address of its sheet and zone, and whether its line comes from above. */
    record Flag(String reference, String address, boolean above) {}

    private static final double ROW_PT = 15;
    private static final double PAD_PT = 4;
    private static final double MIDDLE_PT = 5;

    private final List<Flag> above;
    private final List<Flag> below;
    private final TextStack doubts = new TextStack(PrintMarks.DOUBT_WIDTH_PT);
    private final Map<String, PortPlace> places = new LinkedHashMap<>();

    CrossingFigure(List<Flag> flags, List<Doubts.Doubt> some) {
        above = flags.stream().filter(Flag::above).toList();
        below = flags.stream().filter(f -> !f.above()).toList();
        doubts.doubts(some);
        place(above, Side.TOP);
        place(below, Side.BOTTOM);
    }

    private void place(List<Flag> flags, Side side) {
        for (int i = 0; i < flags.size(); i++) {
            places.put(flags.get(i).reference(), new PortPlace(side, boxWidthPt() * (i + 1) / (flags.size() + 1)));
        }
    }

    private double boxWidthPt() {
        List<Flag> all = new ArrayList<>(above);
        all.addAll(below);
        double widest = all.stream()
                .mapToDouble(f -> Lettering.widthPt(f.address(), Lettering.TEXT_PT))
                .max()
                .orElse(0);
        return Math.max(widest + 2 * PAD_PT, 14 * Math.max(above.size(), below.size()));
    }

    @Override
    public double widthPt() {
        return boxWidthPt() + (doubts.widthPt() == 0 ? 0 : doubts.widthPt() + 3);
    }

    @Override
    public double heightPt() {
        return Math.max((above.size() + below.size()) * ROW_PT + MIDDLE_PT, doubts.heightPt());
    }

    @Override
    public PortPlace place(String reference) {
        return places.get(reference);
    }

    @Override
    public void paint(Canvas c, double xPt, double yPt) {
        double y = yPt;
        double bottom = yPt + heightPt();
        field(c, above, xPt, y);
        field(c, below, xPt, bottom - below.size() * ROW_PT);
        // the break between the sheets
        double m0 = y + above.size() * ROW_PT;
        double m1 = bottom - below.size() * ROW_PT;
        double x = xPt + boxWidthPt() / 2;
        c.pen(Ink.BLACK, Ink.line(1.2));
        c.line(x - 3, m0, x - 3, m1);
        c.line(x + 3, m0, x + 3, m1);
        doubts.paint(c, xPt + boxWidthPt() + 3, yPt);
    }

    private void field(Canvas c, List<Flag> flags, double x, double y) {
        if (flags.isEmpty()) {
            return;
        }
        double w = boxWidthPt();
        double h = flags.size() * ROW_PT;
        c.polygon(Color.WHITE, x, y, x + w, y, x + w, y + h, x, y + h);
        c.pen(Ink.BLACK, Ink.line(0.9));
        c.rect(x, y, w, h);
        for (int i = 0; i < flags.size(); i++) {
            c.textAround(flags.get(i).address(), x + w / 2, y + (i + 0.5) * ROW_PT, Lettering.TEXT_PT);
        }
    }
}
