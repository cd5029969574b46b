package linewalk.importer.kind;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Segment;
import linewalk.importer.symbol.Outline;

/**
 * A closed outline and its form.
 *
 * @param corners without those that lie on a straight side
 * @param broken drawn with dashes: an enclosure inside the figure
 */
record Shape(Form form, List<Point> corners, Box box, boolean broken, Outline outline) {

    /** How far from its ideal a side or radius may be, as a share. */
    private static final double OFF = 0.12;

    private static final double SQUARE_OFF = 0.12;

    static Shape of(Outline o) {
        List<Point> corners = corners(o.stroke().points());
        Form form = form(o, corners);
        return new Shape(form, corners, o.box(), !o.stroke().dash().solid(), o);
    }

    Point center() {
        return box.center();
    }

    double sizePt() {
        return Math.max(box.widthPt(), box.heightPt());
    }

    double smallPt() {
        return Math.min(box.widthPt(), box.heightPt());
    }

    boolean covers(Point p) {
        return outline.covers(p);
    }

    /** The distance from a place to the drawn edge. */
    double edgePt(Point p) {
        return outline.edgeDistancePt(p);
    }

    boolean holds(Shape o) {
        return o != this && box.grow(0.02 * sizePt()).contains(o.box) && sizePt() > 1.05 * o.sizePt();
    }

    List<Segment> sides() {
        List<Segment> sides = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            sides.add(new Segment(corners.get(i), corners.get((i + 1) % corners.size())));
        }
        return sides;
    }

    private static List<Point> corners(List<Point> all) {
        List<Point> apart = new ArrayList<>();
        for (Point p : all) {
            if (apart.isEmpty() || apart.get(apart.size() - 1).distancePt(p) > 0.05) {
                apart.add(p);
            }
        }
        if (apart.size() > 1 && apart.get(0).distancePt(apart.get(apart.size() - 1)) < 0.05) {
            apart.remove(apart.size() - 1);
        }
        List<Point> corners = new ArrayList<>();
        int n = apart.size();
        for (int i = 0; i < n; i++) {
            Point before = apart.get((i + n - 1) % n);
            Point at = apart.get(i);
            Point after = apart.get((i + 1) % n);
            if (Direction.of(before, at).along(Direction.of(at, after)) < 0.995) {
                corners.add(at);
            }
        }
        return corners.size() < 3 ? apart : corners;
    }

    private static Form form(Outline o, List<Point> c) {
        if (o.circle()) {
            return Form.CIRCLE;
        } else if (c.size() == 3) {
            return Form.TRIANGLE;
        } else if (c.size() == 4) {
            return ofFour(c);
        } else if (o.corners() >= 8 && capsule(o)) {
            return Form.CAPSULE;
        } else if (o.corners() >= 6 && halfDisc(o)) {
            return Form.HALF_DISC;
        }
        return crosses(c) && c.size() <= 8 ? Form.BOWTIE : Form.OTHER;
    }

    private static Form ofFour(List<Point> c) {
        if (crosses(c)) {
            return Form.BOWTIE;
        }
        double ab = c.get(0).distancePt(c.get(1));
        double bc = c.get(1).distancePt(c.get(2));
        double cd = c.get(2).distancePt(c.get(3));
        double da = c.get(3).distancePt(c.get(0));
        boolean parallel = like(ab, cd) && like(bc, da);
        Direction side = Direction.of(c.get(0), c.get(1));
        boolean right = Math.abs(side.along(Direction.of(c.get(1), c.get(2)))) < 0.1;
        boolean level = Math.min(Math.abs(side.dx()), Math.abs(side.dy())) < 0.25;
        if (parallel && like(ab, bc) && !level) {
            return Form.DIAMOND;
        } else if (parallel && right) {
            return Math.abs(ab - bc) < SQUARE_OFF * Math.max(ab, bc) ? Form.SQUARE : Form.BOX;
        }
        return Form.OTHER;
    }

    private static boolean like(double a, double b) {
        return Math.abs(a - b) < OFF * Math.max(a, b);
    }

    private static boolean crosses(List<Point> c) {
        int n = c.size();
        for (int i = 0; i < n; i++) {
            for (int j = i + 2; j < n; j++) {
                Segment a = new Segment(c.get(i), c.get(i + 1));
                Segment b = new Segment(c.get(j), c.get((j + 1) % n));
                if ((j + 1) % n != i && a.crossing(b) != null) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean capsule(Outline o) {
        Box b = o.box();
        double w = b.widthPt();
        double h = b.heightPt();
        double r = Math.min(w, h) / 2;
        if (Math.max(w, h) < 2.4 * r || Math.max(w, h) > 10 * r) {
            return false;
        }
        Point m = b.center();
        double half = Math.max(w, h) / 2 - r;
        Segment axis =
                w > h ? new Segment(m.plus(-half, 0), m.plus(half, 0)) : new Segment(m.plus(0, -half), m.plus(0, half));
        boolean round = o.stroke().points().stream().allMatch(p -> Math.abs(axis.distancePt(p) - r) < OFF * r);
        boolean oval = o.stroke().points().stream()
                .allMatch(p ->
                        Math.abs(Math.hypot((p.xPt() - m.xPt()) / (w / 2), (p.yPt() - m.yPt()) / (h / 2)) - 1) < OFF);
        return round || oval;
    }

    private static boolean halfDisc(Outline o) {
        List<Point> p = o.stroke().points();
        int n = p.size();
        Segment chord = new Segment(p.get(n - 1), p.get(0));
        for (int i = 1; i < n; i++) {
            Segment s = new Segment(p.get(i - 1), p.get(i));
            chord = s.lengthPt() > chord.lengthPt() ? s : chord;
        }
        Point m = new Point(
                (chord.a().xPt() + chord.b().xPt()) / 2,
                (chord.a().yPt() + chord.b().yPt()) / 2);
        double r = chord.lengthPt() / 2;
        return p.stream().allMatch(x -> Math.abs(x.distancePt(m) - r) < OFF * r);
    }
}
