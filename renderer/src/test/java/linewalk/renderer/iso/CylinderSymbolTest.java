package linewalk.renderer.iso;

import static org.assertj.core.api.Assertions.assertThat;

import linewalk.drawing.Kind;
import org.junit.jupiter.api.Test;

/** The rod is at the right, or nowhere. */
class CylinderSymbolTest {

    @Test
    void capAtTheLeftAndRodAtTheRightWhereverTheyAreDrawn() {
        Symbol left = new Sketch(Kind.CYLINDER, "A_ B_").drawnAt(5, 50, 55, 50).symbol();
        assertThat(left.place("A").offsetPt()).isLessThan(left.place("B").offsetPt());
        Symbol right =
                new Sketch(Kind.CYLINDER, "A_ B_").drawnAt(45, 50, 95, 50).symbol();
        assertThat(right.place("B").offsetPt()).isLessThan(right.place("A").offsetPt());
        assertThat(InkLog.of(right).shows("?")).isFalse();
    }

    @Test
    void withoutRodWhereItIsNotTold() {
        Symbol told = new Sketch(Kind.CYLINDER, "A_ B_").drawnAt(5, 50, 55, 50).symbol();
        Symbol untold =
                new Sketch(Kind.CYLINDER, "A_ B_").drawnAt(5, 50, 95, 50).symbol();
        assertThat(untold.widthPt()).isLessThan(told.widthPt());
        assertThat(InkLog.of(untold).shows("?")).isTrue();
    }

    @Test
    void allPortsOfAnEndLieAtThatEnd() {
        Symbol s = new Sketch(Kind.CYLINDER, "A_ B_ C_ D_")
                .drawnAt(5, 50, 55, 50, 8, 0, 52, 0)
                .symbol();
        double middle = s.widthPt() / 3;
        assertThat(s.place("A").offsetPt()).isLessThan(middle);
        assertThat(s.place("C").offsetPt()).isLessThan(middle);
        assertThat(s.place("B").offsetPt()).isGreaterThan(middle);
        assertThat(s.place("D").offsetPt()).isGreaterThan(middle);
    }
}
