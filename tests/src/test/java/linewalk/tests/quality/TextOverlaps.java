package linewalk.tests.quality;

import java.awt.geom.Area;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/**
 * What lies on lettering or shows behind it. A plate or a tint that lies wholly behind a text is none, nor is what such
 * a plate hides, nor an outline around it.
 */
final class TextOverlaps {

    /** Less is rounding. */
    private static final double TOUCH_PT = 0.1;

    private final PrintPage page;
    private final List<Overlap> found = new ArrayList<>();

    private TextOverlaps(PrintPage page) {
        this.page = page;
    }

    static List<Overlap> of(PrintPage page) {
        TextOverlaps o = new TextOverlaps(page);
        for (int i = 0; i < page.texts().size(); i++) {
            Text t = page.texts().get(i);
            page.texts().subList(i + 1, page.texts().size()).forEach(u -> o.compare(t, u));
            o.compare(t);
        }
        return o.found;
    }

    private void compare(Text t, Text u) {
        Rectangle2D both = t.ink().createIntersection(u.ink());
        if (isSeen(both)) {
            found.add(new Overlap("text-text", page.number(), both, '"' + t.words() + "\" and \"" + u.words() + '"'));
        }
    }

    private static boolean isSeen(Rectangle2D r) {
        return r.getWidth() > TOUCH_PT && r.getHeight() > TOUCH_PT;
    }

    /** One finding for each kind of thing on a text, however many strokes it is made of. */
    private void compare(Text t) {
        List<Paint> near = page.paints().stream().filter(p -> p.isNear(t.ink())).toList();
        List<String> kinds = new ArrayList<>();
        for (Paint p : near) {
            String kind = kind(p);
            if (!kinds.contains(kind) && disturbs(p, t, near)) {
                kinds.add(kind);
                found.add(new Overlap(kind, page.number(), t.ink(), '"' + t.words() + "\" and " + named(p)));
            }
        }
    }

    private static String kind(Paint p) {
        if (p.inCutting()) {
            return "text-cutting";
        }
        return p.owner() instanceof Thing.Line
                ? "text-line"
                : p.owner() instanceof Thing.Symbol ? "text-symbol" : "text-stroke";
    }

    private static String named(Paint p) {
        String what = p.isFill() ? "a fill" : "a stroke of " + p.pen().getLineWidth() + " pt";
        return p.owner() == null || p.owner().name().isEmpty()
                ? what
                : what + " of " + p.owner().name();
    }

    private static boolean disturbs(Paint p, Text t, List<Paint> near) {
        boolean isBehind = p.order() < t.order();
        if (isBehind && (p.isLight() || p.contains(t.ink()))) {
            return false;
        }
        Area seen = p.within(t.ink());
        for (Paint plate : near) {
            boolean hides =
                    plate.isFill() && plate.isOpaque() && plate.order() > p.order() && plate.order() < t.order();
            if (hides && !seen.isEmpty()) {
                seen.subtract(plate.within(t.ink()));
            }
        }
        return isSeen(seen.getBounds2D());
    }
}
