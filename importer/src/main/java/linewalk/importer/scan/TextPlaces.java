package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;

/** Where lettering stands, in upright pixels. */
final class TextPlaces {

    /** A small arrow beside a text is at most so many letters long and so many away. */
    private static final double LONGEST = 1.6;

    private static final double AWAY = 1.3;

    /** @param along reads along the page's rows */
    private record Place(Envelope box, double cap, boolean along) {}

    private final List<Place> places = new ArrayList<>();

    TextPlaces(List<ReadRow> rows, Upright page) {
        for (ReadRow r : rows) {
            TextRow t = r.row();
            Envelope box = new Envelope();
            for (int[] c : new int[][] {{t.x0(), t.y0()}, {t.x1(), t.y0()}, {t.x1(), t.y1()}, {t.x0(), t.y1()}}) {
                box.expandToInclude(page.x(c[0], c[1]), page.y(c[0], c[1]));
            }
            places.add(new Place(box, r.cap(), r.turn() % 2 == 0));
        }
    }

    /** Whether a text has its middle in the box. */
    boolean within(Envelope box) {
        return places.stream().anyMatch(p -> box.contains(p.box.centre()));
    }

    /** Whether lettering stands at a place. */
    boolean at(double x, double y) {
        return places.stream().anyMatch(p -> p.box.contains(x, y));
    }

    /** A short stroke in the middle of the row of a text, right before or behind it: an arrow, no line work. */
    boolean leadsOn(Line l) {
        double[] a = l.end(false);
        double[] b = l.end(true);
        Envelope e = new Envelope(a[0], b[0], a[1], b[1]);
        return places.stream().anyMatch(p -> {
            double middle = p.along ? e.centre().y - p.box.centre().y : e.centre().x - p.box.centre().x;
            double thick = p.along ? e.getHeight() : e.getWidth();
            return Math.abs(middle) < 0.3 * p.cap
                    && thick < 0.3 * p.cap
                    && l.span() < LONGEST * p.cap
                    && e.distance(p.box) < AWAY * p.cap;
        });
    }
}
