package linewalk.importer.valve;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Segment;

/** Pieces of a square that lead to no side: throttle marks on both sides of a passage, bars that block a port. */
final class LooseMarks {

    /** How far from a passage its throttle marks stand, in sizes of the square. */
    private static final double BESIDE = 0.3;

    private final double sidePt;
    private final double tolPt;
    private final List<Box> loose = new ArrayList<>();

    LooseMarks(double sidePt, double tolPt) {
        this.sidePt = sidePt;
        this.tolPt = tolPt;
    }

    void add(List<Ink> group) {
        loose.add(group.stream().map(Ink::box).reduce(Box::union).orElseThrow());
    }

    /** Two loose marks face each other across a straight piece of the passage; they are used up. */
    boolean throttle(List<Ink> passage) {
        for (Ink k : passage) {
            for (Segment s : k.segments()) {
                Direction d = Direction.of(s.a(), s.b());
                for (Box a : List.copyOf(loose)) {
                    for (Box b : List.copyOf(loose)) {
                        if (a != b && facing(s, d, a, b)) {
                            loose.remove(a);
                            loose.remove(b);
                            return true;
                        }
                    }
                }
            }
        }
        return false;
    }

    private boolean facing(Segment s, Direction d, Box a, Box b) {
        double sa = side(s, d, a.center());
        double sb = side(s, d, b.center());
        boolean opposite = sa * sb < 0 && Math.abs(Math.abs(sa) - Math.abs(sb)) < 0.08 * sidePt;
        boolean level = Math.abs(d.ahead(s.a(), a.center()) - d.ahead(s.a(), b.center())) < 0.1 * sidePt;
        boolean between = s.position(a.center()) > 0.05 && s.position(a.center()) < 0.95;
        boolean alike = Math.abs(a.widthPt() - b.widthPt()) + Math.abs(a.heightPt() - b.heightPt()) < 0.12 * sidePt;
        return opposite && level && between && alike && Math.abs(sa) < BESIDE * sidePt;
    }

    private static double side(Segment s, Direction d, Point p) {
        return (p.xPt() - s.a().xPt()) * -d.dy() + (p.yPt() - s.a().yPt()) * d.dx();
    }

    /** A bar by itself before a port place blocks it; it is used up. */
    boolean bar(double xPt, double sideYPt) {
        return loose.removeIf(b -> b.heightPt() < 0.1 * sidePt
                && b.widthPt() > 1.5 * b.heightPt()
                && b.widthPt() < 0.5 * sidePt
                && Math.abs(b.center().xPt() - xPt) < 0.08 * sidePt
                && Math.abs(b.center().yPt() - sideYPt) < 0.4 * sidePt);
    }

    /** Something is left that says what is not understood. */
    boolean left() {
        return loose.stream().anyMatch(b -> Math.max(b.widthPt(), b.heightPt()) > Math.max(0.12 * sidePt, 2 * tolPt));
    }
}
