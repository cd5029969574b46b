package linewalk.samples.symbol;

/** Ink moved, mirrored and turned to where a part stands; text stays upright. */
public record PlacedInk(Ink ink, Place place) implements Ink {
    @Override
    public void line(Pen pen, double... xy) {
        ink.line(pen, moved(xy));
    }

    @Override
    public void closed(Pen pen, double... xy) {
        ink.closed(pen, moved(xy));
    }

    @Override
    public void circle(Pen pen, double x, double y, double radius) {
        Spot at = place.of(new Spot(x, y));
        ink.circle(pen, at.x(), at.y(), radius);
    }

    @Override
    public void fill(double... xy) {
        ink.fill(moved(xy));
    }

    @Override
    public void head(double... xy) {
        ink.head(moved(xy));
    }

    @Override
    public void dot(double x, double y, double radius) {
        Spot at = place.of(new Spot(x, y));
        ink.dot(at.x(), at.y(), radius);
    }

    @Override
    public void text(Lettering lettering, double x, double y, String text) {
        Spot at = place.of(new Spot(x, y));
        ink.text(lettering, at.x(), at.y(), text);
    }

    private double[] moved(double... xy) {
        double[] out = new double[xy.length];
        for (int i = 0; i < xy.length; i += 2) {
            Spot at = place.of(new Spot(xy[i], xy[i + 1]));
            out[i] = at.x();
            out[i + 1] = at.y();
        }
        return out;
    }
}
