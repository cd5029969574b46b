package linewalk.importer.page;

import java.util.List;
import java.util.function.Function;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/** Finds things by place: an R-tree over their boxes. */
public final class Near<T> {

    private final STRtree tree = new STRtree();
    private final boolean empty;

    public Near(List<T> things, Function<T, Box> box) {
        for (T thing : things) {
            tree.insert(envelope(box.apply(thing)), thing);
        }
        empty = things.isEmpty();
        tree.build();
    }

    /** Things whose boxes touch the box, in no certain order. */
    @SuppressWarnings("unchecked")
    public List<T> touching(Box box) {
        return empty ? List.of() : tree.query(envelope(box));
    }

    public List<T> within(Point p, double pt) {
        return touching(Box.around(p).grow(pt));
    }

    private static Envelope envelope(Box b) {
        return new Envelope(b.x0Pt(), b.x1Pt(), b.y0Pt(), b.y1Pt());
    }
}
