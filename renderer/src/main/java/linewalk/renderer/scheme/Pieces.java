package linewalk.renderer.scheme;

import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/**
 * Lays schemes out piece by piece, a piece being what nets join, and sets the pieces on shelves. A piece that was laid out
 * is kept: it is wanted again for other papers and other pages. Several threads may ask at once.
 */
public final class Pieces {

    private final Map<Shape, Layering> laidOut = new ConcurrentHashMap<>();
    private final Map<BitSet, List<Size>> alone = new ConcurrentHashMap<>();

    /** @param mostPt width that shelves may take; a piece that is wider has one of its own */
    Layout layOut(Scheme scheme, double mostPt) {
        List<Layout> pieces = of(scheme).stream().map(this::layout).toList();
        return pieces.size() == 1 ? pieces.get(0) : onShelves(pieces, mostPt);
    }

    /** The sizes of the pieces of a part of the picture, each laid out once. */
    List<Size> alone(BitSet part, Supplier<Scheme> scheme) {
        List<Size> known = alone.get(part);
        if (known == null) {
            known = of(scheme.get()).stream()
                    .map(piece -> laidOut(piece).size())
                    .toList();
            alone.put(part, known);
        }
        return known;
    }

    private Layout layout(Scheme piece) {
        Layering known = laidOut(piece);
        return known.scheme() == piece ? known.layout() : Shape.carried(known.layout(), known.scheme(), piece);
    }

    /** The scheme that was laid out first in the shape of a piece. */
    private Layering laidOut(Scheme piece) {
        Shape shape = Shape.of(piece);
        Layering known = laidOut.get(shape);
        if (known == null) {
            // not within the map, which would keep other threads from pieces of their own
            known = Layering.of(piece);
            laidOut.put(shape, known);
        }
        return known;
    }

    /** On a shelf they keep the order of the scheme. */
    private static Layout onShelves(List<Layout> pieces, double mostPt) {
        Layout all = new Layout(0, 0, Map.of(), List.of(), List.of());
        for (Shelves.Shelf shelf : Shelves.of(pieces.stream().map(Layout::size).toList(), mostPt)) {
            all = with(all, shelf, pieces);
        }
        return all;
    }

    private static Layout with(Layout above, Shelves.Shelf shelf, List<Layout> pieces) {
        double top = above.heightPt() == 0 ? 0 : above.heightPt() + Shelves.BETWEEN_PT;
        Map<Node, Point2D> places = new LinkedHashMap<>(above.places());
        List<Layout.Course> courses = new ArrayList<>(above.courses());
        List<Point2D> dots = new ArrayList<>(above.dots());
        double x = 0;
        for (int i : shelf.pieces.stream().sorted().toList()) {
            Layout moved =
                    pieces.get(i).moved(x, top + shelf.heightPt - pieces.get(i).heightPt());
            places.putAll(moved.places());
            courses.addAll(moved.courses());
            dots.addAll(moved.dots());
            x += moved.widthPt() + Shelves.BETWEEN_PT;
        }
        return new Layout(Math.max(above.widthPt(), shelf.widthPt), top + shelf.heightPt, places, courses, dots);
    }

    /** In the order of their first nodes. */
    private static List<Scheme> of(Scheme scheme) {
        Map<Node, List<Net>> nets = new HashMap<>();
        scheme.nets().forEach(net -> net.meetings().forEach(m -> nets.computeIfAbsent(m.node(), k -> new ArrayList<>())
                .add(net)));
        Map<Node, Integer> piece = new HashMap<>();
        int count = 0;
        for (Node first : scheme.nodes()) {
            if (piece.putIfAbsent(first, count) == null) {
                List<Node> open = new ArrayList<>(List.of(first));
                for (int i = 0; i < open.size(); i++) {
                    for (Net net : nets.getOrDefault(open.get(i), List.of())) {
                        for (Net.Meeting m : net.meetings()) {
                            if (piece.putIfAbsent(m.node(), count) == null) {
                                open.add(m.node());
                            }
                        }
                    }
                }
                count++;
            }
        }
        List<Scheme> pieces = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int number = i;
            pieces.add(new Scheme(
                    scheme.nodes().stream().filter(n -> piece.get(n) == number).toList(),
                    scheme.nets().stream()
                            .filter(n -> piece.get(n.meetings().get(0).node()) == number)
                            .toList()));
        }
        return pieces;
    }
}
