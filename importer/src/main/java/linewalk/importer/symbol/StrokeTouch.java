package linewalk.importer.symbol;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.page.Near;
import linewalk.importer.page.Segment;
import linewalk.importer.page.Stroke;

/** Which strokes touch which: an end of one on any piece of the other. Sets of them are in the order of drawing. */
final class StrokeTouch {

    private record Piece(Stroke stroke, Segment segment) {}

    private final Near<Piece> pieces;
    private final double tolPt;
    private final Map<Stroke, Set<Stroke>> known = new IdentityHashMap<>();
    /** Equal strokes are told apart. */
    private final Map<Stroke, Integer> numbers = new IdentityHashMap<>();

    private final Comparator<Stroke> asDrawn = Comparator.comparing(s -> numbers.getOrDefault(s, -1));

    StrokeTouch(List<Stroke> strokes, double tolPt) {
        List<Piece> all = new ArrayList<>();
        for (Stroke s : strokes) {
            numbers.putIfAbsent(s, numbers.size());
            int n = s.points().size();
            for (int i = 1; i < n; i++) {
                all.add(new Piece(
                        s, new Segment(s.points().get(i - 1), s.points().get(i))));
            }
            if (s.closed()) {
                all.add(new Piece(s, new Segment(s.points().get(n - 1), s.first())));
            }
        }
        pieces = new Near<>(all, p -> p.segment().box());
        this.tolPt = tolPt;
    }

    /** Strokes other than {@code not} that pass or end at p. */
    Set<Stroke> at(Point p, Stroke not) {
        Set<Stroke> found = new TreeSet<>(asDrawn);
        for (Piece piece : pieces.within(p, tolPt)) {
            if (piece.stroke() != not && piece.segment().distancePt(p) <= tolPt) {
                found.add(piece.stroke());
            }
        }
        return found;
    }

    /** Strokes that this one's ends lie on. */
    Set<Stroke> ofEnds(Stroke s) {
        return known.computeIfAbsent(s, k -> {
            Set<Stroke> found = at(s.first(), s);
            found.addAll(at(s.last(), s));
            return found;
        });
    }

    /** Strokes within the box. */
    Set<Stroke> in(Box box) {
        Set<Stroke> found = touching(box);
        found.removeIf(s -> !box.contains(s.box()));
        return found;
    }

    /** Strokes with an end within the box. */
    Set<Stroke> endingIn(Box box) {
        Set<Stroke> found = touching(box);
        found.removeIf(s -> !box.contains(s.first()) && !box.contains(s.last()));
        return found;
    }

    private Set<Stroke> touching(Box box) {
        Set<Stroke> found = new TreeSet<>(asDrawn);
        for (Piece piece : pieces.touching(box)) {
            found.add(piece.stroke());
        }
        return found;
    }
}
