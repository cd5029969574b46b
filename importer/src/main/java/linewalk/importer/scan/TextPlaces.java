package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;

/** Where lettering stands, in upright pixels. */
final class TextPlaces {

    /** A small arrow beside a text is at most so many letters long and so many away. */
    private static final double LONGEST = 1.6;

    private static final double AWAY = 1.3;

    /** How far off the middle of the row it may lie, and how thick its shaft and its head are, in letters. */
    private static final double MIDDLE = 0.3;

    private static final double SHAFT = 0.3;

    private static final double HEAD = 0.6;

    /** @param along reads along the page's rows */
    private record Place(Envelope box, double cap, boolean along) {}

    private final List<Place> places = new ArrayList<>();
    private final Upright page;

    TextPlaces(List<ReadRow> rows, Upright page) {
        this.page = page;
        for (ReadRow r : rows) {
            TextRow t = r.row();
            Envelope box = box(page, t.x0(), t.y0(), t.x1(), t.y1());
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
        return leadsOn(new Envelope(a[0], b[0], a[1], b[1]), SHAFT);
    }

    /** A small arrow with its head, likewise. */
    boolean leadsOn(Blob b) {
        return leadsOn(box(page, b.x0(), b.y0(), b.x1(), b.y1()), HEAD);
    }

    private boolean leadsOn(Envelope e, double most) {
        double length = Math.max(e.getWidth(), e.getHeight());
        return places.stream().anyMatch(p -> {
            double middle = p.along ? e.centre().y - p.box.centre().y : e.centre().x - p.box.centre().x;
            double thick = p.along ? e.getHeight() : e.getWidth();
            return Math.abs(middle) < MIDDLE * p.cap
                    && thick < most * p.cap
                    && length < LONGEST * p.cap
                    && e.distance(p.box) < AWAY * p.cap;
        });
    }

    private static Envelope box(Upright page, int x0, int y0, int x1, int y1) {
        Envelope box = new Envelope();
        for (int[] c : new int[][] {{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}}) {
            box.expandToInclude(page.x(c[0], c[1]), page.y(c[0], c[1]));
        }
        return box;
    }
}
