package linewalk.importer.symbol;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.page.Segment;
import linewalk.importer.page.Stroke;

/**
 * A brake's shoe or a piston's head: a thin empty plate at the end of a figure's rod is part of the figure. So is the knob
 * of a lever, a small empty circle at the end of an oblique stroke.
 */
final class Plates {

    private static final double THIN = 0.25;
    private static final double ASPECT = 2.2;

    /** How large a knob is at most, in sizes of its figure. */
    private static final double KNOB = 0.3;

    private final List<Body> bodies;
    private final List<Stroke> strokes;
    private final double tolPt;

    Plates(List<Body> bodies, List<Stroke> strokes, double tolPt) {
        this.bodies = bodies;
        this.strokes = strokes;
        this.tolPt = tolPt;
    }

    /** Joins each plate to its figure; returns the rods. */
    List<Stroke> join() {
        List<Stroke> rods = new ArrayList<>();
        for (Body plate : List.copyOf(bodies)) {
            if (thin(plate)) {
                join(plate, rods);
            } else if (empty(plate) && plate.outlines().get(0).circle()) {
                knob(plate, rods);
            }
        }
        return rods;
    }

    private void knob(Body knob, List<Stroke> rods) {
        List<Stroke> levers = strokes.stream()
                .filter(s -> knob.distancePt(s.first()) <= tolPt || knob.distancePt(s.last()) <= tolPt)
                .toList();
        if (levers.size() != 1 || !levers.get(0).dash().solid()) {
            return;
        }
        Stroke lever = levers.get(0);
        boolean last = knob.distancePt(lever.last()) <= tolPt;
        Point far = last ? lever.first() : lever.last();
        Point end = last ? lever.last() : lever.first();
        Point before = lever.points().get(last ? lever.points().size() - 2 : 1);
        Segment held = new Segment(before, end);
        bodies.stream()
                .filter(b -> b != knob && !b.reservoir() && small(knob, b) && b.distancePt(far) <= tolPt)
                .filter(b -> !held.horizontal() && !held.vertical())
                .findFirst()
                .ifPresent(b -> {
                    b.addAll(knob);
                    b.add(lever);
                    rods.add(lever);
                    bodies.remove(knob);
                });
    }

    private static boolean small(Body knob, Body b) {
        return knob.core().widthPt()
                < KNOB * Math.min(b.core().widthPt(), b.core().heightPt());
    }

    private static boolean empty(Body b) {
        return b.outlines().size() == 1 && b.marks().isEmpty();
    }

    private static boolean thin(Body b) {
        Box c = b.core();
        return empty(b)
                && b.outlines().get(0).corners() == 4
                && Math.max(c.widthPt(), c.heightPt()) > ASPECT * Math.min(c.widthPt(), c.heightPt());
    }

    private void join(Body plate, List<Stroke> rods) {
        for (Body b : bodies) {
            List<Stroke> rod = b == plate || !larger(b, plate) ? List.of() : rod(b, plate);
            if (!rod.isEmpty()) {
                b.addAll(plate);
                rod.forEach(b::add);
                rods.addAll(rod);
                bodies.remove(plate);
                return;
            }
        }
    }

    private static boolean larger(Body b, Body plate) {
        Box c = b.core();
        Box p = plate.core();
        double size = Math.max(c.widthPt(), c.heightPt());
        return Math.min(p.widthPt(), p.heightPt()) < THIN * Math.min(c.widthPt(), c.heightPt())
                && Math.max(p.widthPt(), p.heightPt()) < 1.2 * size
                && c.distancePt(p) < size;
    }

    /** Strokes from the figure to the middle of the plate; none where anything else touches the plate. */
    private List<Stroke> rod(Body b, Body plate) {
        List<Stroke> rod = new ArrayList<>();
        for (Stroke s : strokes) {
            if (plate.distancePt(s.first()) <= tolPt || plate.distancePt(s.last()) <= tolPt) {
                Point far = plate.distancePt(s.first()) <= tolPt ? s.last() : s.first();
                Point near = far == s.last() ? s.first() : s.last();
                Box p = plate.core();
                double third = Math.max(p.widthPt(), p.heightPt()) / 3;
                if (s.points().size() > 2 || b.distancePt(far) > tolPt || near.distancePt(p.center()) > third) {
                    return List.of();
                }
                rod.add(s);
            }
        }
        return rod;
    }
}
