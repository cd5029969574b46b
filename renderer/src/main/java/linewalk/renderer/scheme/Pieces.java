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

    /** @param of the scheme that was laid out first in its shape */
    private record Known(Scheme of, Layout layout) {}

    private final Map<Shape, Known> laidOut = new ConcurrentHashMap<>();
    private final Map<BitSet, List<Layout>> alone = new ConcurrentHashMap<>();

    /** @param mostPt width that shelves may take; a piece that is wider has one of its own */
    Layout layOut(Scheme scheme, double mostPt) {
        List<Layout> pieces = each(scheme);
        return pieces.size() == 1 ? pieces.get(0) : onShelves(pieces, mostPt);
    }

    /** The pieces of a part of the picture, laid out once. */
    List<Layout> alone(BitSet part, Supplier<Scheme> scheme) {
        List<Layout> known = alone.get(part);
        if (known == null) {
            known = each(scheme.get());
            alone.put(part, known);
        }
        return known;
    }

    private List<Layout> each(Scheme scheme) {
        return of(scheme).stream().map(this::laidOut).toList();
    }

    private Layout laidOut(Scheme piece) {
        Shape shape = Shape.of(piece);
        Known known = laidOut.get(shape);
        if (known == null) {
            // not within the map, which would keep other threads from pieces of their own
            known = new Known(piece, Layering.of(piece));
            laidOut.put(shape, known);
        }
        return known.of == piece ? known.layout : Shape.carried(known.layout, known.of, piece);
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
