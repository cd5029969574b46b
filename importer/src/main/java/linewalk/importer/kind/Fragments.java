package linewalk.importer.kind;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Segment;

/**
 * Springs of a scan whose legs run into each other: what is left are short bits, most of them slanting or across, in a
 * heap on the middle of a square's side.
 */
final class Fragments {

    private static final int LEAST = 4;

    /** Sizes in sides of the square: of a bit, of the heap across and outwards. */
    private static final double BIT = 0.45;

    private static final double ACROSS = 0.42;
    private static final double OUT = 0.9;
    private static final double DEEP = 0.2;

    private final List<Segment> solid;
    private final List<Shape> shapes;
    private final double tolPt;

    /**
     * @param solid straight pieces
     * @param shapes closed outlines, of which those between two legs of a spring are none
     */
    Fragments(List<Segment> solid, List<Shape> shapes, double tolPt) {
        this.solid = solid;
        this.shapes = shapes;
        this.tolPt = tolPt;
    }

    /** Takes the bits out of the pieces and the outlines. */
    Optional<Spring> springOn(Shape square) {
        return Stream.of(new Direction(1, 0), new Direction(-1, 0), new Direction(0, 1), new Direction(0, -1))
                .flatMap(out -> heap(square, out).stream())
                .findFirst();
    }

    private Optional<Spring> heap(Shape square, Direction out) {
        double side = square.smallPt();
        double half = (out.dx() != 0 ? square.box().widthPt() : square.box().heightPt()) / 2;
        Point m = square.center();
        Predicate<Segment> inHeap = s -> s.lengthPt() < BIT * side
                && Stream.of(s.a(), s.b()).allMatch(p -> {
                    double ahead = out.ahead(m, p) - half;
                    return ahead > -tolPt / 2 && ahead < OUT * side && out.aside(m, p) < ACROSS * side;
                });
        List<Shape> between = shapes.stream()
                .filter(s -> s.form() != Form.CIRCLE && s.sides().stream().allMatch(inHeap))
                .toList();
        List<Segment> bits = Stream.concat(solid.stream(), between.stream().flatMap(s -> s.sides().stream()))
                .filter(inHeap)
                .toList();
        long slanting = bits.stream()
                .filter(s -> Math.abs(Direction.of(s.a(), s.b()).along(out)) < 0.9)
                .count();
        if (bits.size() < LEAST || slanting < LEAST) {
            return Optional.empty();
        }
        Box heap = bits.stream().map(Segment::box).reduce(Box::union).orElseThrow();
        double deep = out.dx() != 0 ? heap.widthPt() : heap.heightPt();
        double broad = out.dx() != 0 ? heap.heightPt() : heap.widthPt();
        boolean touches =
                bits.stream().anyMatch(s -> Math.min(out.ahead(m, s.a()), out.ahead(m, s.b())) - half < DEEP * side);
        if (!touches || deep < DEEP * side || broad < DEEP * side) {
            return Optional.empty();
        }
        solid.removeAll(bits);
        shapes.removeAll(between);
        Point from = m.plus(out.dx() * half, out.dy() * half);
        return Optional.of(new Spring(from, from.plus(out.dx() * deep, out.dy() * deep), heap));
    }
}
