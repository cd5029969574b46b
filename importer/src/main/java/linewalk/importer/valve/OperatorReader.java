package linewalk.importer.valve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.drawing.Position.How;
import linewalk.importer.page.Segment;

/** Reads what touches one end of a row: solenoids, springs, notches, pilots, levers. */
final class OperatorReader {

    /** How far operators reach out from the row, and above and below it, in heights. */
    private static final double REACH = 2.2;

    private static final double ASIDE = 0.45;

    private final Row row;
    private final double edgePt;
    private final double sidePt;
    private final double tolPt;
    private final List<Ink> parts = new ArrayList<>();
    private final List<Ink> dashed;
    private final List<Box> boxes = new ArrayList<>();

    OperatorReader(Row row, boolean left, List<Ink> ink, double tolPt) {
        this.row = row;
        this.tolPt = tolPt;
        this.sidePt = Math.min(row.heightPt(), row.pitchPt());
        this.edgePt = left ? row.x0Pt() : row.x1Pt();
        double far = edgePt + (left ? -1 : 1) * REACH * row.heightPt();
        Box region = new Box(
                Math.min(edgePt, far),
                row.y0Pt() - ASIDE * row.heightPt(),
                Math.max(edgePt, far),
                row.y1Pt() + ASIDE * row.heightPt());
        List<Ink> solid =
                SquareInk.whole(region, ink.stream().filter(Ink::solid).toList(), tolPt);
        dashed = ink.stream().filter(k -> !k.solid()).toList();
        flood(solid);
    }

    /** From the end of the row along everything that touches, then what lies between. */
    private void flood(List<Ink> solid) {
        List<Ink> left = new ArrayList<>(solid);
        Segment edge = new Segment(new Point(edgePt, row.y0Pt()), new Point(edgePt, row.y1Pt()));
        double near = Math.max(tolPt, 0.05 * row.heightPt());
        take(left, k -> touches(k, edge, near));
        int known = 0;
        while (known < parts.size()) {
            int from = known;
            known = parts.size();
            List<Ink> last = List.copyOf(parts.subList(from, known));
            take(left, k -> last.stream().anyMatch(p -> touch(p, k)));
        }
        box().ifPresent(b -> take(left, k -> b.contains(k.box())));
        findBoxes();
    }

    private void take(List<Ink> left, java.util.function.Predicate<Ink> wanted) {
        List<Ink> found = left.stream().filter(wanted).toList();
        parts.addAll(found);
        left.removeAll(found);
    }

    private static boolean touches(Ink k, Segment edge, double near) {
        return k.points().stream().anyMatch(p -> edge.distancePt(p) <= near)
                || k.segments().stream().anyMatch(s -> s.crossing(edge) != null);
    }

    private boolean touch(Ink a, Ink b) {
        return a.box().grow(tolPt).intersects(b.box())
                && (b.points().stream().anyMatch(p -> a.distancePt(p) <= tolPt)
                        || a.points().stream().anyMatch(p -> b.distancePt(p) <= tolPt)
                        || a.segments().stream()
                                .anyMatch(s -> b.segments().stream().anyMatch(o -> s.crossing(o) != null)));
    }

    private Optional<Box> box() {
        return parts.stream().map(Ink::box).reduce(Box::union);
    }

    private void findBoxes() {
        List<Ruling> level = Ruling.level(parts, tolPt);
        List<Ruling> upright = new ArrayList<>(Ruling.upright(parts, tolPt));
        upright.add(new Ruling(edgePt, row.y0Pt(), row.y1Pt()));
        for (Ruling a : level) {
            for (Ruling b : level) {
                for (Ruling l : upright) {
                    for (Ruling r : upright) {
                        Box box = new Box(l.atPt(), a.atPt(), r.atPt(), b.atPt());
                        boolean sized = box.widthPt() > 0.15 * sidePt && box.heightPt() > 0.15 * sidePt;
                        if (sized
                                && a.spans(l.atPt(), r.atPt(), tolPt)
                                && b.spans(l.atPt(), r.atPt(), tolPt)
                                && l.spans(a.atPt(), b.atPt(), tolPt)
                                && r.spans(a.atPt(), b.atPt(), tolPt)) {
                            boxes.add(box);
                        }
                    }
                }
            }
        }
    }

    Operator read() {
        List<Ink> zigzags = parts.stream().filter(k -> k.zigzag(0.05 * sidePt)).toList();
        List<Ink> springs = zigzags.stream().filter(k -> !onBase(k)).toList();
        boolean detent = springs.size() < zigzags.size() || parts.stream().anyMatch(k -> k.notched(0.04 * sidePt));
        List<Ink> rest = parts.stream().filter(k -> !springs.contains(k)).toList();
        HeadFinder heads = new HeadFinder(rest, sidePt, tolPt);
        List<Segment> oblique = oblique(rest.stream()
                .filter(k -> !k.closed() && !heads.used().contains(k))
                .toList());
        boolean solenoid = oblique.stream().anyMatch(s -> boxes.stream().anyMatch(b -> inside(b, s)));
        boolean through = !heads.heads().isEmpty()
                && oblique.stream().anyMatch(s -> boxes.stream().anyMatch(b -> pierces(b, s)));
        boolean triangle =
                rest.stream().anyMatch(k -> triangle(k) && !heads.used().contains(k));
        List<Ink> other = rest.stream().filter(k -> !plate(k, springs)).toList();
        boolean pilot = triangle || other.isEmpty() && piloted() || !boxes.isEmpty() && !solenoid && piloted();
        boolean manual = !other.isEmpty() && boxes.isEmpty() && !detent;
        boolean lever = !solenoid && !pilot && (manual || !boxes.isEmpty() && !oblique.isEmpty());
        How how = solenoid ? How.SOLENOID : pilot ? How.PILOT : lever ? How.LEVER : null;
        boolean present = how != null || !boxes.isEmpty() && !detent;
        return new Operator(how, present, !springs.isEmpty(), detent, solenoid && through, around(springs));
    }

    /** Notches hang on a rule that runs all along them. */
    private boolean onBase(Ink zigzag) {
        Box b = zigzag.box();
        return Ruling.level(parts, tolPt).stream()
                .filter(r -> r.spans(b.x0Pt(), b.x1Pt(), tolPt))
                .anyMatch(r -> Math.min(Math.abs(r.atPt() - b.y0Pt()), Math.abs(r.atPt() - b.y1Pt())) <= tolPt);
    }

    /** The operator without its spring, else the row's end. */
    private Box around(List<Ink> springs) {
        Optional<Box> found =
                parts.stream().filter(k -> !springs.contains(k)).map(Ink::box).reduce(Box::union);
        return found.orElse(new Box(edgePt, row.y0Pt(), edgePt, row.y1Pt()));
    }

    private List<Segment> oblique(List<Ink> ink) {
        return ink.stream()
                .filter(k -> !k.curved())
                .flatMap(k -> k.segments().stream())
                .filter(s -> s.lengthPt() > 0.15 * sidePt)
                .filter(s -> Math.min(s.box().widthPt(), s.box().heightPt()) > 0.2 * s.lengthPt())
                .toList();
    }

    private boolean inside(Box b, Segment s) {
        return b.grow(tolPt).contains(s.box())
                && Math.max(s.box().widthPt() / b.widthPt(), s.box().heightPt() / b.heightPt()) > 0.4;
    }

    private boolean pierces(Box b, Segment s) {
        Box inner = b.grow(-tolPt);
        Point middle = new Point((s.a().xPt() + s.b().xPt()) / 2, (s.a().yPt() + s.b().yPt()) / 2);
        return inner.x0Pt() < inner.x1Pt()
                && inner.y0Pt() < inner.y1Pt()
                && inner.contains(middle)
                && (!b.contains(s.a()) || !b.contains(s.b()) || s.box().widthPt() > 0.8 * b.widthPt());
    }

    private boolean triangle(Ink k) {
        return k.closed() && k.points().size() == 3 && k.sizePt() < 0.8 * sidePt;
    }

    /** A short rule at the end of a spring belongs to it. */
    private boolean plate(Ink k, List<Ink> springs) {
        return k.points().size() == 2
                && !k.closed()
                && springs.stream().anyMatch(s -> k.distancePt(s.first()) <= tolPt || k.distancePt(s.last()) <= tolPt);
    }

    /** A dashed line ends at the row's end or at what stands there. */
    private boolean piloted() {
        Segment edge = new Segment(new Point(edgePt, row.y0Pt()), new Point(edgePt, row.y1Pt()));
        return dashed.stream()
                .filter(k -> !k.closed())
                .flatMap(k -> List.of(k.first(), k.last()).stream())
                .anyMatch(p -> edge.distancePt(p) <= 1.5 * tolPt
                        || boxes.stream().anyMatch(b -> b.grow(tolPt).contains(p)));
    }
}
