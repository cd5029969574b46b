package linewalk.importer.stroke;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Shapes, each once, and what they may be. */
final class ShapeBook {

    /** Votes that make a letter a shape's own. */
    private static final double SURE = 0.6;

    /** How strange a shape may be that passes for another, and how much stranger to any other letter's. */
    private static final double NEAR = 0.07;

    private static final double CLEAR = 2;

    /** More votes than a letter reader will ever cast against it. */
    private static final double CERTAIN = 50;

    private final List<ShapeClass> classes = new ArrayList<>();

    private double blank;

    /** From which gap on, in heights of a capital, words end. */
    double blank() {
        return blank;
    }

    void blank(double limit) {
        blank = limit;
    }

    ShapeClass of(Placed sign, Row row) {
        Shape shape = Shape.of(sign, row);
        ShapeClass known = find(shape);
        if (known != null) {
            return known;
        }
        ShapeClass c = new ShapeClass(classes.size(), shape);
        classes.add(c);
        String arrow = ArrowSign.of(sign, row);
        if (arrow != null) {
            c.vote(arrow, CERTAIN);
        }
        return c;
    }

    /** Null where the shape is new. */
    ShapeClass find(Shape shape) {
        for (ShapeClass c : classes) {
            if (c.shape.like(shape)) {
                return c;
            }
        }
        return null;
    }

    /** The shape of a sure letter that this one all but is, and no other letter's nearly as much; or null. */
    ShapeClass nearest(Shape shape) {
        ShapeClass nearest = null;
        double least = NEAR;
        for (ShapeClass c : classes) {
            double off = shape.strangeness(c.shape);
            if (c.best() != null && c.share(c.best()) > SURE && off < least) {
                nearest = c;
                least = off;
            }
        }
        String text = nearest == null ? null : nearest.best();
        double limit = CLEAR * least;
        return text != null
                        && classes.stream()
                                .noneMatch(c -> c.best() != null
                                        && !c.best().equals(text)
                                        && shape.strangeness(c.shape) < limit)
                ? nearest
                : null;
    }

    /** The shape that is this letter most surely, or null. */
    private Map<String, ShapeClass> owners() {
        Map<String, ShapeClass> owner = new HashMap<>();
        for (ShapeClass c : classes) {
            String best = c.best();
            if (best != null && c.share(best) > SURE) {
                owner.merge(best, c, (a, b) -> b.votesFor(best) > a.votesFor(best) ? b : a);
            }
        }
        return owner;
    }

    /**
     * What each shape may be: the reading with most votes, and others with a fair share of them that are no other
     * shape's own. A 5 that was now and then taken for an S is no S, since the S looks different.
     */
    void settle() {
        Map<String, ShapeClass> owner = owners();
        for (ShapeClass c : classes) {
            c.settle(text -> owner.getOrDefault(text, c) == c);
        }
    }

    /** The succession of shapes in a row: rows with one key look alike. */
    String key(List<ShapeClass> shapes, Row row, double blank) {
        StringBuilder b = new StringBuilder();
        for (int i = 0; i < shapes.size(); i++) {
            b.append(shapes.get(i).id).append(i + 1 < shapes.size() && row.gap(i) >= blank ? ' ' : ',');
        }
        return b.toString();
    }
}
