package linewalk.importer.scan;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import linewalk.importer.scan.Piece.Joint;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/** Whether all sides of a field were drawn with one pen, as far as a scan tells. */
final class OnePen {

    /** How much wider one side may be than another, and how much more is forgiven beside a field of one pen. */
    private static final double SAME = 1.1;

    private static final double BESIDE = 1.2;

    /** Sine of the angle between two sides. */
    private static final double PARALLEL = 0.05;

    /** How well the width of a long side is known, and how much less that of a short one, in pixels. */
    private static final double KNOWN_PX = 0.25;

    private static final double UNSURE_PX = 0.7;
    private static final double UNSURE_LENGTH_PX = 20;

    /** Around text; level and upright sides may lie half a pixel on or off. */
    private static final double AROUND_TEXT_PX = 0.5;

    private final Sides sides;
    private final Map<Piece, Line> lineOf;
    private final ToDoubleFunction<Piece> width;
    private final Predicate<Envelope> lettered;

    OnePen(Sides sides, Map<Piece, Line> lineOf, ToDoubleFunction<Piece> width, Predicate<Envelope> lettered) {
        this.sides = sides;
        this.lineOf = lineOf;
        this.width = width;
        this.lettered = lettered;
    }

    boolean around(Polygon field) {
        return within(field, SAME);
    }

    boolean nearlyAround(Polygon field) {
        return within(field, BESIDE);
    }

    /** The shorter a side, the less is its width known: pixels count whole. */
    private boolean within(Polygon field, double most) {
        double knownPx = lettered.test(field.getEnvelopeInternal()) ? AROUND_TEXT_PX : KNOWN_PX;
        double least = Double.MAX_VALUE;
        double greatest = 0;
        for (Piece p : sides.of(field)) {
            double wide = width.applyAsDouble(p);
            if (p.length() > 4 * wide && !isDivider(p)) {
                double unsure = knownPx + Math.min(UNSURE_PX, UNSURE_LENGTH_PX / p.length());
                least = Math.min(least, wide + unsure);
                greatest = Math.max(greatest, wide - unsure);
            }
        }
        return greatest <= most * least;
    }

    /** A line from side to side of a figure, where the squares of a valve meet, is drawn twice and may look heavier. */
    private boolean isDivider(Piece p) {
        Line l = lineOf.get(p);
        if (l == null || l.straight == null) {
            return false;
        }
        Line one = passing(l, false);
        Line other = passing(l, true);
        return one != null && other != null && one != other && one.straight.sine(other.straight) < PARALLEL;
    }

    /** The line that goes straight on past one end of another; null where none does. */
    private Line passing(Line l, boolean far) {
        Joint end = l.pieces.stream()
                .flatMap(p -> Stream.of(p.a, p.b))
                .max(Comparator.comparingDouble(j -> far ? l.along(j) : -l.along(j)))
                .orElseThrow();
        List<Line> others = end.pieces.stream()
                .map(lineOf::get)
                .filter(o -> o != null && o != l)
                .toList();
        return others.stream()
                .filter(o -> o.straight != null && others.indexOf(o) != others.lastIndexOf(o))
                .findFirst()
                .orElse(null);
    }
}
