package linewalk.importer.symbol;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.page.Segment;
import linewalk.importer.page.Stroke;

/**
 * The drawn figure of one part: closed outlines that touch or hold one another, and the small strokes that belong to
 * them (springs, arrows, levers). A reservoir is open at the top; lines end inside it.
 */
public final class Body {

    private final List<Outline> outlines = new ArrayList<>();
    private final List<Stroke> marks = new ArrayList<>();
    private final boolean reservoir;
    private Box box;

    Body(boolean reservoir) {
        this.reservoir = reservoir;
    }

    void add(Outline o) {
        outlines.add(o);
        box = box == null ? o.box() : box.union(o.box());
    }

    void add(Stroke mark) {
        marks.add(mark);
        box = box == null ? mark.box() : box.union(mark.box());
    }

    void addAll(Body other) {
        other.outlines.forEach(this::add);
        other.marks.forEach(this::add);
    }

    public Box box() {
        return box;
    }

    public List<Outline> outlines() {
        return outlines;
    }

    public List<Stroke> marks() {
        return marks;
    }

    public boolean reservoir() {
        return reservoir;
    }

    /** The box of the closed outlines alone; of the marks where there are none. */
    public Box core() {
        return outlines.isEmpty()
                ? box
                : outlines.stream().map(Outline::box).reduce(Box::union).orElse(box);
    }

    public boolean covers(Point p) {
        return reservoir ? box.contains(p) : outlines.stream().anyMatch(o -> o.covers(p));
    }

    /** Zero inside, else the distance to the nearest drawn piece. */
    public double distancePt(Point p) {
        if (covers(p)) {
            return 0;
        }
        double least = Double.MAX_VALUE;
        for (Outline o : outlines) {
            if (o.box().distancePt(p) < least) {
                least = Math.min(least, o.edgeDistancePt(p));
            }
        }
        for (Stroke m : marks) {
            Box around = m.box();
            if (Motif.zigzag(m)) {
                // a line may meet a spring anywhere on its side
                least = Math.min(least, around.distancePt(p));
            } else if (around.distancePt(p) < least) {
                for (int i = 1; i < m.points().size(); i++) {
                    least = Math.min(
                            least, new Segment(m.points().get(i - 1), m.points().get(i)).distancePt(p));
                }
            }
        }
        return least;
    }
}
