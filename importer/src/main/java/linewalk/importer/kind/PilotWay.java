package linewalk.importer.kind;

import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.EnumSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import linewalk.drawing.Point;
import linewalk.importer.kind.Control.PilotFrom;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Segment;

/** Follows the dashed line that touches a side of a square back to where it starts. */
final class PilotWay {

    private final Picture picture;
    private final Shape square;
    private final Direction arrow;
    private final double tolPt;

    PilotWay(Picture picture, Shape square, Direction arrow) {
        this.picture = picture;
        this.square = square;
        this.arrow = arrow;
        this.tolPt = 1.5 * picture.tolPt();
    }

    Set<PilotFrom> from() {
        Set<PilotFrom> seen = EnumSet.noneOf(PilotFrom.class);
        for (Segment s : picture.dashed()) {
            for (Point end : List.of(s.a(), s.b())) {
                if (atFlank(end) && !onSpringSide(end)) {
                    seen.addAll(starts(s, end));
                }
            }
        }
        return seen;
    }

    /** On a side that the arrow does not run to. */
    private boolean atFlank(Point p) {
        double half = square.sizePt() / 2;
        double aside = arrow.aside(square.center(), p);
        return Math.abs(arrow.ahead(square.center(), p)) < 1.02 * half && Math.abs(aside - half) < tolPt + 0.08 * half;
    }

    private boolean onSpringSide(Point p) {
        Point c = square.center();
        return picture.springs().stream()
                .filter(s -> s.box().distancePt(square.box()) < 0.3 * square.sizePt())
                .anyMatch(s -> Direction.of(c, s.middle()).along(Direction.of(c, p)) > 0.6);
    }

    private Set<PilotFrom> starts(Segment first, Point at) {
        Set<PilotFrom> found = EnumSet.noneOf(PilotFrom.class);
        Set<Segment> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        Deque<Segment> open = new ArrayDeque<>(List.of(first));
        seen.add(first);
        while (!open.isEmpty()) {
            Segment s = open.pop();
            for (Point end : List.of(s.a(), s.b())) {
                boolean on = false;
                for (Segment o : picture.dashed()) {
                    if (o != s
                            && (o.distancePt(end) < tolPt
                                    || s.distancePt(o.a()) < tolPt
                                    || s.distancePt(o.b()) < tolPt)) {
                        on |= o.distancePt(end) < tolPt;
                        if (seen.add(o)) {
                            open.push(o);
                        }
                    }
                }
                if (!on && end.distancePt(at) > tolPt) {
                    side(end).ifPresent(found::add);
                }
            }
        }
        return found;
    }

    private Optional<PilotFrom> side(Point end) {
        double half = square.sizePt() / 2;
        double ahead = arrow.ahead(square.center(), end);
        double aside = arrow.aside(square.center(), end);
        if (aside < 1.1 * half && Math.abs(ahead) > 0.95 * half) {
            return Optional.of(ahead < 0 ? PilotFrom.INLET : PilotFrom.OUTLET);
        }
        boolean outside =
                picture.pilots().stream().anyMatch(c -> c.port().place().distancePt(end) < 4 * tolPt);
        return outside || aside > 1.5 * half ? Optional.of(PilotFrom.OUTSIDE) : Optional.empty();
    }
}
