package linewalk.renderer.iso;

import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import linewalk.drawing.Point;

/**
 * The side of a cylinder that a port feeds, told by where the ports stand in the part's outline: the barrel's ports stand
 * close to its ends, so the outline reaches much farther past one of them only where the rod sticks out. Where the
 * outline does not show that, the side stays untold: a cylinder drawn the wrong way round would be believed.
 */
public enum CylinderEnds {
    CAP,
    ROD,
    UNTOLD;

    /** Shares of the outline's length. */
    private static final double MOST_PAST_CAP = 0.12;

    private static final double LEAST_PAST_ROD = 0.15;
    private static final double LEAST_BETWEEN_PORTS = 0.3;

    public static CylinderEnds of(Component c, String portId) {
        if (c.kind() != Kind.CYLINDER || c.findPort(portId).isEmpty()) {
            return UNTOLD;
        }
        Box box = c.box();
        boolean level = box.widthPt() >= box.heightPt();
        double length = level ? box.widthPt() : box.heightPt();
        List<Double> ports = c.ports().stream()
                .map(p -> along(box, p.place(), level))
                .sorted()
                .toList();
        double before = ports.get(0);
        double after = length - ports.get(ports.size() - 1);
        double between = length - before - after;
        double near = Math.min(before, after) / length;
        double far = Math.max(before, after) / length;
        if (near < 0 || near > MOST_PAST_CAP || far < LEAST_PAST_ROD || far < 2 * near) {
            return UNTOLD;
        }
        if (between / length < LEAST_BETWEEN_PORTS) {
            return UNTOLD;
        }
        double at = along(box, c.findPort(portId).get().place(), level);
        boolean atStart = at - before < between / 3;
        boolean atEnd = length - after - at < between / 3;
        if (atStart == atEnd) {
            return UNTOLD;
        }
        return atStart == before > after ? ROD : CAP;
    }

    private static double along(Box box, Point p, boolean level) {
        return level ? p.xPt() - box.x0Pt() : p.yPt() - box.y0Pt();
    }
}
