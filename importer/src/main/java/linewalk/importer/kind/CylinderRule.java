package linewalk.importer.kind;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linewalk.drawing.Box;
import linewalk.drawing.Kind;
import linewalk.drawing.Point;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Segment;

/** A barrel with a piston across and a rod that leaves it: cylinders, brakes, intensifiers; or with a plunger, which is both. */
final class CylinderRule {

    private final Picture p;
    private final boolean scanned;

    /** @param scanned sides may be taken apart where others cross them */
    CylinderRule(Picture picture, boolean scanned) {
        this.p = picture;
        this.scanned = scanned;
    }

    Optional<Verdict> read() {
        for (Box barrel : barrels()) {
            for (boolean level : new boolean[] {true, false}) {
                Optional<Verdict> v = read(barrel, level);
                if (v.isPresent()) {
                    return v;
                }
            }
        }
        return plunger();
    }

    /** A box that stands in another, stops before its bottom and leaves it at the other end. */
    private Optional<Verdict> plunger() {
        List<Shape> boxes = p.of(Form.BOX, Form.SQUARE);
        boolean alone = p.shapes().size() == 2
                && p.springs().isEmpty()
                && p.arrows().stream().noneMatch(a -> p.core().grow(-p.tolPt()).contains(a.middle()));
        return alone
                        && boxes.size() == 2
                        && (isPlunger(boxes.get(0).box(), boxes.get(1).box())
                                || isPlunger(boxes.get(1).box(), boxes.get(0).box()))
                ? Optional.of(Verdict.of(Kind.CYLINDER, 0.9, "barrel with a plunger"))
                : Optional.empty();
    }

    private boolean isPlunger(Box q, Box barrel) {
        boolean upright = barrel.heightPt() > barrel.widthPt();
        double start = upright ? barrel.y0Pt() : barrel.x0Pt();
        double end = upright ? barrel.y1Pt() : barrel.x1Pt();
        double from = upright ? q.y0Pt() : q.x0Pt();
        double to = upright ? q.y1Pt() : q.x1Pt();
        double bore = upright ? barrel.widthPt() : barrel.heightPt();
        double thick = upright ? q.widthPt() : q.heightPt();
        double aside = upright
                ? q.center().xPt() - barrel.center().xPt()
                : q.center().yPt() - barrel.center().yPt();
        boolean leaves = from < start - p.tolPt() && to < end - p.tolPt() && to > start + p.tolPt()
                || to > end + p.tolPt() && from > start + p.tolPt() && from < end - p.tolPt();
        return leaves && Math.abs(aside) < 0.1 * bore && thick > 0.3 * bore && thick < 0.97 * bore;
    }

    /** Single boxes, and chambers side by side as one. */
    private List<Box> barrels() {
        List<Shape> boxes =
                p.of(Form.SQUARE, Form.BOX).stream().filter(s -> !s.broken()).toList();
        List<Box> found = new ArrayList<>();
        for (Shape b : boxes) {
            Box row = b.box();
            Box column = b.box();
            for (Shape o : boxes) {
                double off = 0.04 * b.sizePt();
                boolean sameRow = Math.abs(o.box().y0Pt() - b.box().y0Pt()) < off
                        && Math.abs(o.box().y1Pt() - b.box().y1Pt()) < off;
                boolean sameColumn = Math.abs(o.box().x0Pt() - b.box().x0Pt()) < off
                        && Math.abs(o.box().x1Pt() - b.box().x1Pt()) < off;
                row = sameRow ? row.union(o.box()) : row;
                column = sameColumn ? column.union(o.box()) : column;
            }
            found.add(row);
            if (!column.equals(row)) {
                found.add(column);
            }
        }
        found.sort((x, y) -> Double.compare(y.widthPt() * y.heightPt(), x.widthPt() * x.heightPt()));
        return found;
    }

    private Optional<Verdict> read(Box b, boolean level) {
        double length = level ? b.widthPt() : b.heightPt();
        double bore = level ? b.heightPt() : b.widthPt();
        if (length < 0.9 * bore) {
            return Optional.empty();
        }
        List<Segment> drawn = new ArrayList<>(p.drawn().toList());
        if (scanned) {
            drawn.addAll(goingOn(drawn, b, level));
        }
        List<Double> pistons = drawn.stream()
                .filter(s -> piston(s, b, level, length, bore))
                .map(s -> level ? s.a().xPt() : s.a().yPt())
                .toList();
        if (pistons.isEmpty()) {
            return Optional.empty();
        }
        List<Segment> rods = drawn.stream()
                .filter(s -> rod(s, b, level, length, bore, pistons))
                .toList();
        boolean spring = p.springs().stream()
                .anyMatch(s -> b.contains(s.middle())
                        && Math.abs(level ? s.axis().dx() : s.axis().dy()) > 0.8);
        if (rods.isEmpty()) {
            return Optional.empty();
        }
        boolean plate = rods.stream().anyMatch(r -> plate(r, b, level, bore));
        if (spring && plate) {
            return Optional.of(Verdict.of(Kind.BRAKE, 0.85, "cylinder with a spring and a brake shoe on its rod")
                    .or(Kind.CYLINDER, 0.15));
        }
        String with = spring ? " and a spring" : "";
        Verdict v = Verdict.of(Kind.CYLINDER, 0.93, "barrel with a piston, a rod" + with);
        return Optional.of(spring ? v.or(Kind.BRAKE, 0.07) : v);
    }

    /** Sides that go on beyond the barrel's end, and were taken apart there. */
    private List<Segment> goingOn(List<Segment> drawn, Box b, boolean level) {
        List<Segment> along = drawn.stream()
                .filter(s -> level ? s.horizontal() : s.vertical())
                .toList();
        List<Segment> whole = new ArrayList<>();
        for (Segment in : along) {
            for (Segment out : along) {
                Point far = in.a().distancePt(b.center()) > in.b().distancePt(b.center()) ? in.a() : in.b();
                Point near = out.a().distancePt(b.center()) < out.b().distancePt(b.center()) ? out.a() : out.b();
                boolean inside = b.grow(p.tolPt()).contains(in.box());
                if (inside
                        && in != out
                        && far.distancePt(near) < p.tolPt()
                        && !b.contains(out.box().center())) {
                    whole.add(new Segment(far == in.a() ? in.b() : in.a(), near == out.a() ? out.b() : out.a()));
                }
            }
        }
        return whole;
    }

    /** Across the whole bore, not at an end. */
    private boolean piston(Segment s, Box b, boolean level, double length, double bore) {
        boolean across = level ? s.vertical() : s.horizontal();
        if (!across || s.lengthPt() < 0.85 * bore || s.lengthPt() > 1.1 * bore) {
            return false;
        }
        double at = level ? s.a().xPt() - b.x0Pt() : s.a().yPt() - b.y0Pt();
        return at > 0.02 * length && at < 0.98 * length && b.grow(0.1 * bore).contains(s.box());
    }

    /** Along the barrel from the piston through an end. */
    private boolean rod(Segment s, Box b, boolean level, double length, double bore, List<Double> pistons) {
        boolean along = level ? s.horizontal() : s.vertical();
        if (!along) {
            return false;
        }
        double aside = level
                ? s.a().yPt() - b.center().yPt()
                : s.a().xPt() - b.center().xPt();
        double u = level ? Math.min(s.a().xPt(), s.b().xPt()) : Math.min(s.a().yPt(), s.b().yPt());
        double v = level ? Math.max(s.a().xPt(), s.b().xPt()) : Math.max(s.a().yPt(), s.b().yPt());
        double start = level ? b.x0Pt() : b.y0Pt();
        double end = level ? b.x1Pt() : b.y1Pt();
        double out = 0.08 * bore;
        boolean leaves = v > end + out && u < end - 0.02 * length || u < start - out && v > start + 0.02 * length;
        double near = 0.06 * length + p.tolPt();
        boolean atPiston =
                pistons.stream().anyMatch(x -> Math.abs(u - x) < near || Math.abs(v - x) < near || u < x && v > x);
        return leaves && atPiston && Math.abs(aside) < 0.42 * bore;
    }

    /** A bar across the rod's far end, longer than the rod is thick. */
    private boolean plate(Segment rod, Box b, boolean level, double bore) {
        Point c = b.center();
        Point tip = rod.a().distancePt(c) > rod.b().distancePt(c) ? rod.a() : rod.b();
        return p.drawnAround().anyMatch(s -> {
            boolean across = level ? s.vertical() : s.horizontal();
            return across
                    && !b.grow(-0.01 * bore).intersects(s.box())
                    && s.lengthPt() > 0.5 * bore
                    && s.distancePt(tip) < 0.12 * bore + p.tolPt()
                    && Math.abs(Direction.of(rod.a(), rod.b()).ahead(tip, s.a())) < 0.15 * bore + p.tolPt();
        });
    }
}
