package linewalk.importer.line;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.page.Near;
import linewalk.importer.page.Segment;
import linewalk.importer.page.Stroke;
import linewalk.importer.symbol.Body;
import linewalk.importer.symbol.Outline;

/** Cuts line work at the outlines of figures: what lies inside belongs to the figure. */
final class Clip {

    private final Near<Body> bodies;

    Clip(List<Body> bodies) {
        List<Body> closed = bodies.stream().filter(b -> !b.reservoir()).toList();
        this.bodies = new Near<>(closed, Body::box);
    }

    /** The parts of the stroke outside all figures. */
    List<List<Point>> outside(Stroke s) {
        List<Point> points = new ArrayList<>(s.points());
        if (s.closed()) {
            points.add(s.first());
        }
        List<Body> near = bodies.touching(Box.around(points));
        if (near.isEmpty()) {
            return List.of(points);
        }
        List<List<Point>> pieces = new ArrayList<>();
        List<Point> piece = new ArrayList<>();
        for (int i = 1; i < points.size(); i++) {
            Segment segment = new Segment(points.get(i - 1), points.get(i));
            List<Double> cuts = cuts(segment, near);
            for (int k = 1; k < cuts.size(); k++) {
                Point a = at(segment, cuts.get(k - 1));
                Point b = at(segment, cuts.get(k));
                Point middle = at(segment, (cuts.get(k - 1) + cuts.get(k)) / 2);
                if (near.stream().anyMatch(body -> body.covers(middle))) {
                    keep(piece, pieces);
                    piece = new ArrayList<>();
                } else {
                    append(piece, a);
                    append(piece, b);
                }
            }
        }
        keep(piece, pieces);
        return pieces;
    }

    private static void append(List<Point> piece, Point p) {
        if (piece.isEmpty() || piece.get(piece.size() - 1).distancePt(p) > 1e-6) {
            piece.add(p);
        }
    }

    private static void keep(List<Point> piece, List<List<Point>> pieces) {
        if (piece.size() > 1) {
            pieces.add(piece);
        }
    }

    private static Point at(Segment s, double t) {
        return new Point(s.a().xPt() + t * (s.b().xPt() - s.a().xPt()), s.a().yPt() + t * (s.b().yPt() - s.a().yPt()));
    }

    private static List<Double> cuts(Segment s, List<Body> near) {
        List<Double> cuts = new ArrayList<>(List.of(0.0, 1.0));
        Box box = s.box();
        for (Body b : near) {
            for (Outline o : b.outlines()) {
                if (o.box().intersects(box)) {
                    cutAt(s, o, cuts);
                }
            }
        }
        cuts.sort(null);
        return cuts;
    }

    private static void cutAt(Segment s, Outline o, List<Double> cuts) {
        List<Point> ring = o.stroke().points();
        for (int i = 0; i < ring.size(); i++) {
            Point x = s.crossing(new Segment(ring.get(i), ring.get((i + 1) % ring.size())));
            if (x != null) {
                cuts.add(s.position(x));
            }
        }
    }
}
