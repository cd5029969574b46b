package linewalk.importer.line;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Point;
import linewalk.importer.symbol.Body;
import linewalk.importer.symbol.Outline;

/** A place where runs of line work meet or end. */
public final class Node {

    private final Point place;
    private final List<Run> runs = new ArrayList<>();
    private Body body;
    private Outline flag;

    Node(Point place) {
        this.place = place;
    }

    public Point place() {
        return place;
    }

    public List<Run> runs() {
        return runs;
    }

    /** The figure that the line ends at, or null. */
    public Body body() {
        return body;
    }

    void body(Body b) {
        body = b;
    }

    /** The flag or bubble that the line ends at, or null. */
    public Outline flag() {
        return flag;
    }

    void flag(Outline f) {
        flag = f;
    }

    /** One run ends here and nothing else is here. */
    public boolean free() {
        return runs.size() == 1 && body == null && flag == null;
    }

    /** The only run of a line end. */
    public Run run() {
        return runs.get(0);
    }
}
