package linewalk.importer.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What looks like a triangle where lines meet is a dot; the head of an arrow has its line at its base alone. */
class DotsTest {

    private static final Solid TRIANGLE =
            new Solid(List.of(new double[] {95, 92}, new double[] {95, 108}, new double[] {110, 100}), false);

    private static Stretch line(double x0, double y0, double x1, double y1) {
        return new Stretch(x0, y0, x1, y1, 6);
    }

    private static boolean round(Rounds.Curve curve, Stretch... lines) {
        List<Rounds.Curve> curves = curve == null ? List.of() : List.of(curve);
        return Dots.round(List.of(TRIANGLE), List.of(lines), List.of(), curves)
                .get(0)
                .dot();
    }

    @Test
    void whereALineBranchesOff() {
        assertThat(round(null, line(0, 100, 200, 100), line(100, 100, 100, 300)))
                .isTrue();
    }

    @Test
    void whereTwoLinesMeetEndToEndAndAThirdGoesOff() {
        assertThat(round(null, line(0, 100, 99, 100), line(101, 100, 200, 100), line(100, 0, 100, 100)))
                .isTrue();
    }

    @Test
    void whereAHoseBegins() {
        Rounds.Curve arc = new Rounds.Curve(
                List.of(new double[] {101, 100}, new double[] {130, 108}, new double[] {160, 130}),
                false,
                List.of(),
                null);
        assertThat(round(arc, line(0, 100, 100, 100))).isTrue();
    }

    @Test
    void anArrowOnALineIsNone() {
        assertThat(round(null, line(0, 100, 200, 100))).isFalse();
    }

    @Test
    void norOneThatPointsAtAnotherLine() {
        assertThat(round(null, line(0, 100, 108, 100), line(111, 0, 111, 200))).isFalse();
    }
}
