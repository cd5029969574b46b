package linewalk.importer.kind;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.lettering.Label;
import linewalk.importer.page.Fill;
import linewalk.importer.page.Marks;
import linewalk.importer.page.Near;
import linewalk.importer.page.Segment;
import linewalk.importer.page.Stroke;
import linewalk.importer.symbol.Arc;
import linewalk.importer.symbol.Arrowhead;
import linewalk.importer.symbol.Body;
import linewalk.importer.symbol.Motif;
import linewalk.importer.symbol.Outline;
import linewalk.importer.symbol.Symbols;

/** Collects what stands in and around a figure from the page's marks. */
final class PictureMaker {

    /** How far around a figure its own marks may stand, as a share of its size. */
    private static final double REACH = 0.8;

    private final Symbols symbols;
    private final Near<Body> nameless;
    private final Near<Stroke> lineWork;
    private final Near<Fill> fills;
    private final Near<Arrowhead> heads;
    private final Near<Label> labels;
    private final boolean scanned;

    /**
     * @param named figures that are parts of their own
     * @param scanned springs may have come apart
     */
    PictureMaker(Marks marks, List<Label> labels, Symbols symbols, Set<Body> named, boolean scanned) {
        this.symbols = symbols;
        this.scanned = scanned;
        this.nameless = new Near<>(
                symbols.bodies().stream()
                        .filter(b -> !named.contains(b) && !b.reservoir())
                        .toList(),
                Body::box);
        this.lineWork = new Near<>(symbols.lineWork(), Stroke::box);
        this.fills = new Near<>(marks.fills().stream().filter(f -> !f.light()).toList(), Fill::box);
        this.heads = new Near<>(symbols.arrows(), Arrowhead::box);
        this.labels = new Near<>(labels, Label::box);
    }

    /** @param bodies the figure, and what hangs on it by a stub */
    Picture of(List<Body> bodies, List<Contact> contacts) {
        Box core = bodies.stream().map(Body::core).reduce(Box::union).orElseThrow();
        double size =
                Math.min(Math.max(core.widthPt(), core.heightPt()), 2 * Math.min(core.widthPt(), core.heightPt()));
        Box reach = bodies.stream().map(Body::box).reduce(core.grow(REACH * size + symbols.tolerancePt()), Box::union);
        List<Triangle> notches = new ArrayList<>();
        List<Shape> shapes = shapes(bodies, notches);
        List<Body> others = nameless.touching(reach).stream()
                .filter(b -> !bodies.contains(b))
                .toList();
        Set<Stroke> strokes = new LinkedHashSet<>();
        bodies.forEach(b -> strokes.addAll(b.marks()));
        strokes.addAll(lineWork.touching(reach));
        Pieces pieces = new Pieces(reach);
        strokes.forEach(pieces::add);
        pieces.finish(symbols.tolerancePt());
        if (scanned && pieces.springs.isEmpty()) {
            Fragments fragments = new Fragments(pieces.solid, shapes, symbols.tolerancePt());
            List.copyOf(shapes).stream()
                    .filter(s -> s.form() == Form.SQUARE || s.form() == Form.BOX)
                    .filter(s -> shapes.stream().noneMatch(s::holds))
                    .forEach(s -> fragments.springOn(s).ifPresent(pieces.springs::add));
        }
        List<Triangle> triangles = triangles(shapes, reach);
        triangles.addAll(notches);
        List<Arrow> arrows =
                new ArrowFinder(triangles, heads.touching(reach), pieces.solid, symbols.tolerancePt()).find();
        List<String> words = labels.touching(core).stream()
                .filter(l -> core.contains(l.center()))
                .map(Label::text)
                .toList();
        return new Picture(
                core,
                shapes,
                shapes(others, new ArrayList<>()),
                triangles,
                arrows,
                pieces.springs,
                pieces.solid,
                pieces.dashed,
                pieces.arcs,
                pieces.bends.stream().filter(Stroke::curved).toList(),
                words,
                contacts,
                symbols.tolerancePt());
    }

    private static List<Shape> shapes(List<Body> bodies, List<Triangle> notches) {
        List<Shape> shapes = new ArrayList<>();
        for (Body b : bodies) {
            for (Outline o : b.outlines()) {
                Shape s = o.corners() < 3 ? null : Shape.of(o);
                NotchedCircle round = s != null && s.form() == Form.OTHER
                        ? NotchedCircle.of(o).orElse(null)
                        : null;
                if (round != null) {
                    notches.addAll(round.notches());
                    shapes.add(Shape.of(round.circle()));
                } else if (s != null) {
                    shapes.add(s);
                }
            }
        }
        return shapes;
    }

    private List<Triangle> triangles(List<Shape> shapes, Box reach) {
        List<Triangle> found = new ArrayList<>();
        for (Fill f : fills.touching(reach)) {
            Shape s = Shape.of(new Outline(
                    new Stroke(f.outline(), true, f.curved(), 0, linewalk.importer.page.Dash.SOLID, true),
                    f.box(),
                    false));
            if (s.form() == Form.TRIANGLE) {
                found.add(new Triangle(s.corners()));
            }
        }
        for (Shape s : shapes) {
            boolean known = found.stream().anyMatch(t -> t.center().distancePt(s.center()) < 0.3 * s.sizePt());
            if (s.form() == Form.TRIANGLE && !known) {
                found.add(new Triangle(s.corners()));
            }
        }
        return found;
    }

    /** Strokes taken apart, as far as they lie within reach. */
    private static final class Pieces {
        private final Box reach;
        private final List<Spring> springs = new ArrayList<>();
        private final List<Segment> solid = new ArrayList<>();
        private final List<Segment> dashed = new ArrayList<>();
        private final List<Stroke> bends = new ArrayList<>();
        private final List<Arc> arcs = new ArrayList<>();
        private final double longestPt;
        private double longestDashPt;

        Pieces(Box reach) {
            this.reach = reach;
            this.longestPt = Math.min(reach.widthPt(), reach.heightPt());
        }

        /** Puts together what a program took apart. */
        void finish(double tolPt) {
            if (longestDashPt > 0) {
                new Dashes(longestDashPt).move(solid, dashed);
            }
            for (Stroke s : new Bends(0.3 * tolPt).zigzags(bends)) {
                springs.add(Spring.of(s));
                for (int i = 1; i < s.points().size(); i++) {
                    Segment piece =
                            new Segment(s.points().get(i - 1), s.points().get(i));
                    solid.removeIf(x -> piece.distancePt(x.a()) < 0.1 && piece.distancePt(x.b()) < 0.1);
                }
            }
            new Bends(0.3 * tolPt).join(bends).forEach(s -> Arc.of(s).ifPresent(arcs::add));
        }

        void add(Stroke s) {
            if (s.dash().chain()) {
                return;
            }
            if (Motif.zigzag(s)) {
                if (reach.intersects(s.box())) {
                    springs.add(Spring.of(s));
                }
                return;
            }
            boolean open = !s.closed() && s.dash().solid();
            if (open && reach.contains(s.box()) && (s.curved() || s.lengthPt() < longestPt)) {
                bends.add(s);
            }
            if (reach.intersects(s.box())) {
                longestDashPt = Math.max(longestDashPt, s.dash().onPt());
            }
            if (!s.curved()) {
                List<Point> p = s.points();
                int n = p.size();
                for (int i = 1; i < n + (s.closed() ? 1 : 0); i++) {
                    clipped(new Segment(p.get(i - 1), p.get(i % n)), s.dash().solid() ? solid : dashed);
                }
            }
        }

        private void clipped(Segment s, List<Segment> to) {
            double from = 0;
            double until = 1;
            double dx = s.b().xPt() - s.a().xPt();
            double dy = s.b().yPt() - s.a().yPt();
            double[] p = {-dx, dx, -dy, dy};
            double[] q = {
                s.a().xPt() - reach.x0Pt(),
                reach.x1Pt() - s.a().xPt(),
                s.a().yPt() - reach.y0Pt(),
                reach.y1Pt() - s.a().yPt()
            };
            for (int i = 0; i < 4; i++) {
                if (p[i] == 0) {
                    if (q[i] < 0) {
                        return;
                    }
                } else if (p[i] < 0) {
                    from = Math.max(from, q[i] / p[i]);
                } else {
                    until = Math.min(until, q[i] / p[i]);
                }
            }
            if (until - from > 0 && (until - from) * s.lengthPt() > 0.2) {
                to.add(new Segment(s.a().plus(from * dx, from * dy), s.a().plus(until * dx, until * dy)));
            }
        }
    }
}
