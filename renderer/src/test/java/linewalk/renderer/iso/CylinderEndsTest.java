package linewalk.renderer.iso;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import linewalk.drawing.Origin;
import linewalk.drawing.PageKey;
import linewalk.drawing.Point;
import linewalk.drawing.Port;
import org.junit.jupiter.api.Test;

/** The rod's side is told by the outline, or not at all. */
class CylinderEndsTest {

    private static Component cylinder(Box box, Point a, Point b) {
        List<Port> ports = List.of(new Port("a", "A", a), new Port("b", "B", b));
        return new Component(
                "c",
                "1A1",
                new PageKey("s.pdf", 1),
                box.center(),
                box,
                Kind.CYLINDER,
                null,
                Origin.TEXT,
                1,
                ports,
                List.of());
    }

    @Test
    void theOutlineReachesFarPastThePortOnTheRodSide() {
        Component c = cylinder(new Box(0, 0, 200, 40), new Point(14, 40), new Point(145, 40));
        assertThat(CylinderEnds.of(c, "a")).isEqualTo(CylinderEnds.CAP);
        assertThat(CylinderEnds.of(c, "b")).isEqualTo(CylinderEnds.ROD);
    }

    @Test
    void whicheverWayTheCylinderLies() {
        Component left = cylinder(new Box(0, 0, 200, 40), new Point(55, 40), new Point(186, 40));
        assertThat(CylinderEnds.of(left, "a")).isEqualTo(CylinderEnds.ROD);
        Component upright = cylinder(new Box(0, 0, 40, 200), new Point(40, 186), new Point(40, 55));
        assertThat(CylinderEnds.of(upright, "a")).isEqualTo(CylinderEnds.CAP);
        assertThat(CylinderEnds.of(upright, "b")).isEqualTo(CylinderEnds.ROD);
    }

    @Test
    void anOutlineWithoutTheRodDoesNotTell() {
        Component c = cylinder(new Box(0, 0, 125, 28), new Point(11, 28), new Point(113, 28));
        assertThat(CylinderEnds.of(c, "a")).isEqualTo(CylinderEnds.UNTOLD);
    }

    @Test
    void portsCloseTogetherDoNotTell() {
        Component c = cylinder(new Box(0, 0, 200, 40), new Point(10, 40), new Point(50, 40));
        assertThat(CylinderEnds.of(c, "b")).isEqualTo(CylinderEnds.UNTOLD);
    }
}
