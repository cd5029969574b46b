package linewalk.importer;

import java.util.HashSet;
import java.util.Set;
import linewalk.drawing.Point;

/** Ids from kind and place: the same drawing read again gives the same ids. */
final class Ids {

    private final Set<String> given = new HashSet<>();

    String of(String kind, Point p) {
        String id = kind + Math.round(p.xPt()) + "-" + Math.round(p.yPt());
        String free = id;
        for (int n = 2; !given.add(free); n++) {
            free = id + "-" + n;
        }
        return free;
    }
}
