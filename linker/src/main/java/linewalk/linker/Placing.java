package linewalk.linker;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import linewalk.drawing.Box;
import linewalk.drawing.End;
import linewalk.drawing.Line;
import linewalk.drawing.LineKind;
import linewalk.drawing.Point;
import linewalk.drawing.ReferenceReading;
import linewalk.drawing.Zone;
import linewalk.drawing.ZoneGrid;

/** Where one page's candidates stand, and which lines they end. */
final class Placing {

    /** A box that lies in a zone by this part stands there too: connectors straddle borders. */
    private static final double MOSTLY = 0.35;
    /** Of a field's width. */
    private static final double UNPRINTED_SLACK = 0.1;

    private record AtLine(Point place, LineKind kind) {}

    private final PageDraft page;
    private final Map<String, AtLine> lineEnds = new HashMap<>();

    private final Map<String, Set<Zone>> touched = new HashMap<>();

    Placing(PageDraft page) {
        this.page = page;
        for (Line l : page.lines) {
            for (End e : l.ends()) {
                if (e instanceof End.AtReference r) {
                    lineEnds.putIfAbsent(r.reference(), new AtLine(e.place(), l.kind()));
                }
            }
        }
    }

    LineKind kind(String id) {
        AtLine end = lineEnds.get(id);
        return end == null ? null : end.kind();
    }

    boolean atLine(String id) {
        return lineEnds.containsKey(id);
    }

    Set<Zone> touched(ReferenceReading r) {
        return touched.computeIfAbsent(r.id(), id -> find(r));
    }

    private Set<Zone> find(ReferenceReading r) {
        Set<Zone> zones = new LinkedHashSet<>();
        if (page.grid() == null) {
            return zones;
        }
        page.zoneAt(r.place()).ifPresent(zones::add);
        AtLine end = lineEnds.get(r.id());
        if (end != null) {
            page.zoneAt(end.place()).ifPresent(zones::add);
        }
        // where fields were not printed but assumed, their borders are only about right
        boolean printed = page.grid().printed();
        ZoneGrid.Band column = page.grid().columns().get(0);
        double slackPt = printed ? 0 : UNPRINTED_SLACK * (column.toPt() - column.fromPt());
        Box b = r.box().grow(slackPt);
        for (Point corner : new Point[] {
            new Point(b.x0Pt(), b.y0Pt()),
            new Point(b.x1Pt(), b.y0Pt()),
            new Point(b.x0Pt(), b.y1Pt()),
            new Point(b.x1Pt(), b.y1Pt())
        }) {
            page.zoneAt(corner).filter(z -> !printed || mostly(b, z)).ifPresent(zones::add);
        }
        return zones;
    }

    private boolean mostly(Box b, Zone zone) {
        Box z = page.grid().box(zone).orElseThrow();
        double w = Math.min(b.x1Pt(), z.x1Pt()) - Math.max(b.x0Pt(), z.x0Pt());
        double h = Math.min(b.y1Pt(), z.y1Pt()) - Math.max(b.y0Pt(), z.y0Pt());
        return w > 0 && h > 0 && w * h >= MOSTLY * b.widthPt() * b.heightPt();
    }
}
