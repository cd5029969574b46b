package linewalk.renderer;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** What is left of a page between cuttings, their captions and their letters. */
final class Margins {

    private final Rectangle2D area;
    private final List<Rectangle2D> taken;

    /** @param taken frames of cuttings and all that stands between them */
    Margins(Rectangle2D area, List<Rectangle2D> taken) {
        this.area = area;
        this.taken = new ArrayList<>(taken);
    }

    /** A page that lends nothing. */
    static Margins none() {
        return new Margins(new Rectangle2D.Double(), List.of());
    }

    /** Whether a note may stand here, in part over the cutting that it belongs to. */
    boolean isFree(Rectangle2D note, Rectangle2D own) {
        return area.contains(note)
                && taken.stream()
                        .filter(t -> !t.contains(own.getCenterX(), own.getCenterY()))
                        .noneMatch(note::intersects);
    }

    void take(Rectangle2D note) {
        taken.add(note);
    }
}
