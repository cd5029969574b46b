package linewalk.renderer;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linewalk.drawing.Component;
import linewalk.drawing.Enclosure;
import linewalk.renderer.scheme.Layout;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;

/**
 * Chain lines (ISO 1219-1) around parts that sit in one manifold or unit, where they stand together on the print. A
 * frame never holds a part from elsewhere: the parts of one unit may have several frames.
 */
final class PlaceFrames {

    private static final double MARGIN_PT = 5;

    private static final double BEYOND_PT = 3;

    private final List<Rectangle2D> frames = new ArrayList<>();

    PlaceFrames(Layout layout, SchemeBuilder.Built built, List<Enclosure> enclosures) {
        Map<Enclosure, List<Rectangle2D>> inside = new LinkedHashMap<>();
        Map<Rectangle2D, Enclosure> all = new LinkedHashMap<>();
        layout.places().forEach((node, at) -> {
            Rectangle2D box = new Rectangle2D.Double(
                    at.getX(), at.getY(), node.figure().widthPt(), node.figure().heightPt());
            Enclosure own = of(built.parts().get(node), enclosures);
            all.put(box, own);
            if (own != null) {
                inside.computeIfAbsent(own, k -> new ArrayList<>()).add(box);
            }
        });
        inside.forEach((e, boxes) -> frames.addAll(joined(boxes, e, all)));
    }

    /** The smallest that holds the part; null where none does. */
    private static Enclosure of(Component part, List<Enclosure> enclosures) {
        if (part == null) {
            return null;
        }
        return enclosures.stream()
                .filter(e -> e.page().equals(part.page()) && e.box().contains(part.box()))
                .min(java.util.Comparator.comparingDouble(
                        e -> e.box().widthPt() * e.box().heightPt()))
                .orElse(null);
    }

    private static List<Rectangle2D> joined(List<Rectangle2D> boxes, Enclosure own, Map<Rectangle2D, Enclosure> all) {
        List<Rectangle2D> joined =
                new ArrayList<>(boxes.stream().map(PlaceFrames::grown).toList());
        for (int i = 0; i < joined.size(); i++) {
            for (int k = i + 1; k < joined.size(); k++) {
                Rectangle2D both = joined.get(i).createUnion(joined.get(k));
                boolean alone = all.entrySet().stream()
                        .allMatch(other -> own.equals(other.getValue()) || !both.intersects(other.getKey()));
                if (alone) {
                    joined.set(i, both);
                    joined.remove(k);
                    k = i;
                }
            }
        }
        return joined;
    }

    private static Rectangle2D grown(Rectangle2D r) {
        return new Rectangle2D.Double(
                r.getX() - MARGIN_PT,
                r.getY() - MARGIN_PT,
                r.getWidth() + 2 * MARGIN_PT,
                r.getHeight() + 2 * MARGIN_PT);
    }

    boolean isEmpty() {
        return frames.isEmpty();
    }

    List<Rectangle2D> frames() {
        return frames;
    }

    /** @param field that frames leave by little at most: what they hold may stand at its very edge */
    void paint(Canvas c, Rectangle2D field) {
        c.pen(Ink.GREY, Ink.dashed(0.9, 12, 3, 2, 3));
        Rectangle2D room = new Rectangle2D.Double(
                field.getX() - BEYOND_PT,
                field.getY() - BEYOND_PT,
                field.getWidth() + 2 * BEYOND_PT,
                field.getHeight() + 2 * BEYOND_PT);
        frames.stream()
                .map(room::createIntersection)
                .forEach(f -> c.rect(f.getX(), f.getY(), f.getWidth(), f.getHeight()));
    }
}
