package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Point2D;
import java.util.List;
import java.util.Map;
import linewalk.renderer.iso.Duty;
import linewalk.renderer.iso.PortPlace;
import linewalk.renderer.iso.Side;
import linewalk.renderer.iso.Symbol;
import linewalk.renderer.scheme.Layout;
import linewalk.renderer.scheme.Net;
import linewalk.renderer.scheme.Node;
import linewalk.renderer.sheet.Canvas;
import org.junit.jupiter.api.Test;

/** A line's way to a control port is not drawn as the way of the working oil. */
class SideLinesTest {

    /** @param duty of all its ports */
    private record Part(Duty duty) implements Symbol {

        @Override
        public boolean asks() {
            return false;
        }

        @Override
        public double widthPt() {
            return 10;
        }

        @Override
        public double heightPt() {
            return 10;
        }

        @Override
        public PortPlace place(String portId) {
            return new PortPlace(Side.TOP, 5);
        }

        @Override
        public Duty duty(String portId) {
            return duty;
        }

        @Override
        public void paint(Canvas canvas, double xPt, double yPt) {}
    }

    private static Net.Meeting meeting(String name, Duty duty) {
        PartFigure figure = new PartFigure(new Part(duty), new TextStack(100), Map.of());
        return new Net.Meeting(new Node(name, figure, 0), "1");
    }

    private final Net.Meeting pump = meeting("pump", Duty.WORKING);
    private final Net.Meeting motor = meeting("motor", Duty.WORKING);
    private final Net.Meeting pilot = meeting("pilot", Duty.CONTROL);
    private final Net.Meeting drain = meeting("drain", Duty.DRAIN);

    /** From the left to the right, and from its middle down; then to the right again. */
    private static SideLines sides(Net.Meeting left, Net.Meeting right, Net.Meeting down) {
        Net net = new Net("L", 0.5, List.of(left, right, down));
        return new SideLines(new Layout(
                200,
                100,
                Map.of(),
                List.of(across(net, left, right), down(net, left, down)),
                List.of(new Point2D.Double(50, 0))));
    }

    private static Layout.Course across(Net net, Net.Meeting left, Net.Meeting right) {
        return new Layout.Course(net, left, right, List.of(new Point2D.Double(0, 0), new Point2D.Double(100, 0)));
    }

    private static Layout.Course down(Net net, Net.Meeting left, Net.Meeting down) {
        return new Layout.Course(
                net,
                left,
                down,
                List.of(
                        new Point2D.Double(0, 0),
                        new Point2D.Double(50, 0),
                        new Point2D.Double(50, 40),
                        new Point2D.Double(80, 40)));
    }

    private List<SideLines.Run> runs(Net.Meeting left, Net.Meeting right, Net.Meeting down) {
        Net net = new Net("L", 0.5, List.of(left, right, down));
        return sides(left, right, down).of(down(net, left, down));
    }

    @Test
    void fromWhereItTurnsOffItLeadsToTheControlPort() {
        assertThat(runs(pump, motor, pilot))
                .extracting(SideLines.Run::duty)
                .containsExactly(Duty.WORKING, Duty.CONTROL);
        assertThat(runs(pump, motor, pilot).get(1).points())
                .containsExactly(new Point2D.Double(50, 0), new Point2D.Double(50, 40), new Point2D.Double(80, 40));
    }

    @Test
    void orToTheDrain() {
        assertThat(runs(pump, motor, drain)).extracting(SideLines.Run::duty).containsExactly(Duty.WORKING, Duty.DRAIN);
    }

    @Test
    void whereNothingElseIsFedAllOfItDoes() {
        assertThat(runs(pump, pilot, pilot)).extracting(SideLines.Run::duty).containsExactly(Duty.CONTROL);
    }

    @Test
    void workingOilGoesWhereAnyPartTakesIt() {
        assertThat(runs(pump, pilot, motor)).extracting(SideLines.Run::duty).containsExactly(Duty.WORKING);
        assertThat(sides(pump, motor, meeting("tank", Duty.WORKING)).isEmpty()).isTrue();
    }

    @Test
    void whereOthersJoinItThereIsAPoint() {
        // dashes and marks fill each part between points: a dash stands at the dot, not a gap
        Net net = new Net("L", 0.5, List.of(drain, drain, drain));
        assertThat(sides(drain, drain, drain)
                        .of(across(net, drain, drain))
                        .get(0)
                        .points())
                .containsExactly(new Point2D.Double(0, 0), new Point2D.Double(50, 0), new Point2D.Double(100, 0));
    }
}
