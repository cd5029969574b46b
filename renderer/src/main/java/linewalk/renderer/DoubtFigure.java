package linewalk.renderer;

import java.util.List;
import linewalk.renderer.iso.PortPlace;
import linewalk.renderer.iso.Side;
import linewalk.renderer.scheme.Figure;
import linewalk.renderer.sheet.Canvas;

/** Marks of doubt standing in a line. */
final class DoubtFigure implements Figure {

    static final String BELOW = "below";
    static final String ABOVE = "above";

    private final List<Doubts.Doubt> doubts;

    DoubtFigure(List<Doubts.Doubt> doubts) {
        this.doubts = List.copyOf(doubts);
    }

    @Override
    public double widthPt() {
        return PrintMarks.DOUBT_WIDTH_PT + 2;
    }

    @Override
    public double heightPt() {
        return doubts.size() * (PrintMarks.DOUBT_HEIGHT_PT + 2);
    }

    @Override
    public PortPlace place(String port) {
        return new PortPlace(port.equals(BELOW) ? Side.BOTTOM : Side.TOP, widthPt() / 2);
    }

    @Override
    public void paint(Canvas c, double xPt, double yPt) {
        double pitch = heightPt() / doubts.size();
        for (int i = 0; i < doubts.size(); i++) {
            PrintMarks.doubt(c, doubts.get(i).mark(), xPt + widthPt() / 2, yPt + (i + 0.5) * pitch);
        }
    }
}
