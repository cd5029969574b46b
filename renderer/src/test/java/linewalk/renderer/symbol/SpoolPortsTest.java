package linewalk.renderer.symbol;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import linewalk.drawing.Origin;
import linewalk.drawing.PageKey;
import linewalk.drawing.Point;
import linewalk.drawing.Port;
import org.junit.jupiter.api.Test;

/** Where a directional valve's ports stand in the drawn look. */
class SpoolPortsTest {

    private static final Box BOX = new Box(0, 0, 150, 40);

    /** Ports are written {@code P@70,40}. */
    private static Component valve(String... ports) {
        List<Port> made = new ArrayList<>();
        for (String p : ports) {
            String[] f = p.split("[@,]");
            made.add(new Port(f[0], f[0], new Point(Double.parseDouble(f[1]), Double.parseDouble(f[2]))));
        }
        return new Component(
                "v",
                "1V1",
                new PageKey("s.pdf", 1),
                BOX.center(),
                BOX,
                Kind.DIRECTIONAL_VALVE,
                null,
                Origin.TEXT,
                1,
                made,
                List.of());
    }

    private static SpoolPorts ports(Component valve, String in, String out) {
        return new SpoolPorts(valve, List.of(new Symbol.Use(in, in, true), new Symbol.Use(out, out, false)));
    }

    @Test
    void theSidesOfTheDrawingAreTurnedOverForThePathToEnterOnTop() {
        Component v = valve("A@65,0", "B@85,0", "P@65,40", "T@85,40");
        SpoolPorts supply = ports(v, "P", "A");
        assertThat(supply.side("P")).isEqualTo(Side.TOP);
        assertThat(supply.side("T")).isEqualTo(Side.TOP);
        assertThat(supply.side("A")).isEqualTo(Side.BOTTOM);
        SpoolPorts ret = ports(v, "B", "T");
        assertThat(ret.side("B")).isEqualTo(Side.TOP);
        assertThat(ret.side("T")).isEqualTo(Side.BOTTOM);
    }

    @Test
    void portsAboveOneAnotherStayAboveOneAnother() {
        SpoolPorts p = ports(valve("A@65,0", "B@85,0", "P@65,40", "T@85,40"), "P", "B");
        assertThat(p.share("A")).isEqualTo(p.share("P")).isLessThan(p.share("T"));
        assertThat(p.share("B")).isEqualTo(p.share("T"));
    }

    @Test
    void aValveDrawnWithPAndTOnOppositeSidesIsPassedStraight() {
        SpoolPorts p = ports(valve("P@120,0", "T@120,40"), "P", "T");
        assertThat(p.side("P")).isEqualTo(Side.TOP);
        assertThat(p.side("T")).isEqualTo(Side.BOTTOM);
        assertThat(p.share("P")).isEqualTo(p.share("T"));
    }

    @Test
    void portsOnOnePlaceGoByTheirLetters() {
        SpoolPorts p = ports(valve("P@75,20", "T@75,20", "A@75,20", "B@75,20"), "P", "A");
        assertThat(p.side("P")).isEqualTo(Side.TOP);
        assertThat(p.side("A")).isEqualTo(Side.BOTTOM);
        assertThat(p.share("A")).isLessThan(p.share("B"));
    }
}
