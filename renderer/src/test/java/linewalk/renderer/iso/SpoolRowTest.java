package linewalk.renderer.iso;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import linewalk.drawing.Kind;
import org.junit.jupiter.api.Test;

/** The order of squares: each beside what brings it about. */
class SpoolRowTest {

    private static SpoolRow row(String... positions) {
        Sketch s = new Sketch(Kind.DIRECTIONAL_VALVE, "P_ T_ A^ B^");
        for (String p : positions) {
            s.position(p);
        }
        return new SpoolRow(s.part().positions());
    }

    private static String order(SpoolRow row) {
        StringBuilder order = new StringBuilder();
        for (int i = 0; i < row.size(); i++) {
            row.all(i).forEach(p -> order.append(p.by().get(0)).append('+'));
            order.setCharAt(order.length() - 1, ' ');
        }
        return order.toString().strip();
    }

    @Test
    void asListedWhereTheRestLiesBetween() {
        assertThat(order(row("Y9 solenoid: P-A", "rest spring:", "Y8 solenoid: P-B")))
                .isEqualTo("Y9 rest Y8");
    }

    @Test
    void theRestListedFirstOrLastComesBetween() {
        assertThat(order(row("rest spring:", "Y1A solenoid: P-A", "Y1B solenoid: P-B")))
                .isEqualTo("Y1A rest Y1B");
        assertThat(order(row("rest spring:", "Y1B solenoid: P-B", "Y1A solenoid: P-A")))
                .isEqualTo("Y1A rest Y1B");
        assertThat(order(row("Y1A solenoid: P-A", "Y1B solenoid: P-B", "rest spring:")))
                .isEqualTo("Y1A rest Y1B");
    }

    @Test
    void aSingleSolenoidStandsAtTheLeftUnlessItIsB() {
        assertThat(order(row("rest spring: P-A", "Y2 solenoid: P-B"))).isEqualTo("Y2 rest");
        assertThat(order(row("rest spring: P-A", "Y2B solenoid: P-B"))).isEqualTo("rest Y2B");
    }

    @Test
    void whatBringsTheValveBackSharesTheSquareAtRest() {
        assertThat(order(row("Y3A solenoid: P-A", "rest detent: P-B", "Y3B solenoid: P-B")))
                .isEqualTo("Y3A rest+Y3B");
        assertThat(order(row("rest: P-A", "Y3A solenoid: P-A", "Y3B solenoid: P-B")))
                .isEqualTo("rest+Y3A Y3B");
    }

    @Test
    void aSpringKeepsThreeSquaresApartEvenWhereTwoJoinTheSame() {
        assertThat(order(row("Y3A solenoid: P-A", "rest spring: P-B", "Y3B solenoid: P-B")))
                .isEqualTo("Y3A rest Y3B");
    }

    @Test
    void anUnknownPositionIsDrawnAtRest() {
        SpoolRow row = row("Y3A solenoid: P-A", "rest spring: P-B", "Y3B solenoid: P-B");
        assertThat(row.indexOf(Optional.empty())).isEqualTo(1);
        assertThat(row.indexOf(Optional.of(row.get(2)))).isEqualTo(2);
        assertThat(new SpoolRow(List.of()).indexOf(Optional.empty())).isZero();
    }
}
