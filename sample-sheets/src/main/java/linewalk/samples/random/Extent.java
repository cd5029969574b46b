package linewalk.samples.random;

import java.util.ArrayList;
import java.util.List;
import linewalk.samples.symbol.Ink;
import linewalk.samples.symbol.Lettering;
import linewalk.samples.symbol.Pen;
import linewalk.samples.symbol.Place;
import linewalk.samples.symbol.PlacedInk;
import linewalk.samples.symbol.Spot;
import linewalk.samples.symbol.Symbol;

/** How far a drawing reaches; the room for texts is what the widest of the fonts takes. */
final class Extent implements Ink {
    private static final double WIDEST = 0.66;
    private static final double WIDEST_BOLD = 0.74;

    private final List<Spot> spots = new ArrayList<>();

    static Area of(Symbol symbol, Place place) {
        Extent extent = new Extent();
        symbol.draw(new PlacedInk(extent, place));
        return Area.of(extent.spots);
    }

    static double width(String text, double height, boolean bold) {
        return text.length() * height * (bold ? WIDEST_BOLD : WIDEST);
    }

    /** Room for a text that starts there. */
    static Area text(String text, double height, boolean bold, double x, double y) {
        return new Area(x, y - height * 0.42, x + width(text, height, bold), y + height * 0.42);
    }

    @Override
    public void line(Pen pen, double... xy) {
        for (int i = 0; i < xy.length; i += 2) {
            spots.add(new Spot(xy[i], xy[i + 1]));
        }
    }

    @Override
    public void closed(Pen pen, double... xy) {
        line(pen, xy);
    }

    @Override
    public void circle(Pen pen, double x, double y, double radius) {
        line(pen, x - radius, y - radius, x + radius, y + radius);
    }

    @Override
    public void fill(double... xy) {
        line(Pen.OUTLINE, xy);
    }

    @Override
    public void head(double... xy) {
        line(Pen.OUTLINE, xy);
    }

    @Override
    public void dot(double x, double y, double radius) {
        circle(Pen.OUTLINE, x, y, radius);
    }

    @Override
    public void text(Lettering lettering, double x, double y, String text) {
        double half = width(text, lettering.height(), lettering.bold()) / 2;
        line(Pen.THIN, x - half, y - lettering.height() * 0.42, x + half, y + lettering.height() * 0.42);
    }
}
