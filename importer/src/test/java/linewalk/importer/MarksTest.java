package linewalk.importer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import linewalk.drawing.Point;
import linewalk.importer.page.Dash;
import linewalk.importer.page.Fill;
import linewalk.importer.page.Marks;
import linewalk.importer.page.Stroke;
import org.junit.jupiter.api.Test;

/** Page content to strokes, fills and glyphs. */
class MarksTest {

    private static Stroke only(Drawn d) {
        Marks marks = d.marks();
        assertThat(marks.strokes()).hasSize(1);
        return marks.strokes().get(0);
    }

    private static Dash dash(double... pattern) {
        return only(Drawn.page().pen(1, pattern).line(100, 100, 300, 100)).dash();
    }

    @Test
    void aPolylineKeepsItsCorners() {
        Stroke s = only(Drawn.page().line(100, 100, 300, 100, 300, 250));

        assertThat(s.points()).hasSize(3);
        assertThat(s.points().get(2).distancePt(new Point(300, 250))).isLessThan(0.01);
        assertThat(s.closed()).isFalse();
        assertThat(s.widthPt()).isCloseTo(1, within(0.01));
    }

    /** A symbol painted white over a line that goes on beneath it, its outline drawn after. */
    private static Drawn maskedLine() {
        return Drawn.page()
                .line(100, 200, 400, 200)
                .color(1)
                .filled(200, 150, 300, 150, 300, 250, 200, 250)
                .color(0);
    }

    @Test
    void whatASymbolHidesOfALineIsNone() {
        assertThat(maskedLine().rect(200, 150, 300, 250).marks().strokes())
                .filteredOn(s -> !s.closed())
                .extracting(s -> Math.round(s.first().xPt()) + " to "
                        + Math.round(s.last().xPt()))
                .containsExactlyInAnyOrder("100 to 200", "300 to 400");
    }

    @Test
    void whiteBehindATextInterruptsNoLine() {
        assertThat(only(maskedLine().text(240, 204, "38x4")).lengthPt()).isCloseTo(300, within(0.1));
    }

    @Test
    void penAndDashGrowWithTheUserUnit() {
        Stroke s = only(Drawn.page().userUnit(4).pen(2, 12, 4).line(100, 100, 300, 100));

        assertThat(s.widthPt()).isCloseTo(2, within(0.01));
        assertThat(s.dash().onPt()).isCloseTo(12, within(0.01));
    }

    @Test
    void dashesOfOneLengthAreADashedLine() {
        assertThat(dash(12, 4)).isEqualTo(new Dash(12, false));
        assertThat(dash(3, 3)).isEqualTo(new Dash(3, false));
    }

    /** ISO 32000-1, 8.4.3.6: {@code [3]} is 3 on, 3 off; {@code [12 3 2]} repeats as 12 on 3 off 2 on 12 off 3 on 2 off. */
    @Test
    void anOddPatternIsRepeatedOnce() {
        assertThat(dash(3)).isEqualTo(new Dash(3, false));
        assertThat(dash(12, 3, 2)).isEqualTo(new Dash(12, true));
    }

    @Test
    void longAndShortPiecesInTurnAreAChainLine() {
        assertThat(dash(18, 3, 3, 3).chain()).isTrue();
        assertThat(dash(18, 3, 3, 3, 3, 3).chain()).isTrue();
    }

    @Test
    void noPatternOrOneWithoutGapsIsSolid() {
        assertThat(dash().solid()).isTrue();
        assertThat(dash(5, 0).solid()).isTrue();
    }

    @Test
    void aPathThatReturnsToItsStartIsClosed() {
        Stroke byOperator = only(Drawn.page().polygon(100, 100, 200, 100, 150, 180));
        Stroke byReturning = only(Drawn.page().line(100, 100, 200, 100, 150, 180, 100, 100));

        assertThat(byOperator.closed()).isTrue();
        assertThat(byReturning.closed()).isTrue();
        assertThat(byReturning.points()).isEqualTo(byOperator.points());
    }

    @Test
    void aCircleStaysWithinATenthOfAPointOfItsRadius() {
        Stroke s = only(Drawn.page().circle(300, 300, 20));

        assertThat(s.curved()).isTrue();
        assertThat(s.closed()).isTrue();
        assertThat(s.points()).hasSizeGreaterThan(20).allSatisfy(p -> assertThat(p.distancePt(new Point(300, 300)))
                .isCloseTo(20, within(0.1)));
    }

    @Test
    void whiteStrokesAreNoMarksAndWhiteFillsAreMasks() {
        Marks marks = Drawn.page()
                .color(1)
                .line(100, 100, 300, 100)
                .filled(400, 400, 500, 400, 450, 480)
                .color(0)
                .filled(600, 400, 700, 400, 650, 480)
                .marks();

        assertThat(marks.strokes()).isEmpty();
        assertThat(marks.fills()).extracting(Fill::light).containsExactly(true, false);
    }

    @Test
    void glyphsCarryPlaceSizeAndTurn() {
        Marks marks = Drawn.page().lettering(10).text(200, 300, 270, "A").marks();

        assertThat(marks.glyphs()).singleElement().satisfies(g -> {
            assertThat(g.text()).isEqualTo("A");
            assertThat(g.angleDeg()).isEqualTo(270);
            assertThat(g.sizePt()).isCloseTo(10, within(0.01));
            assertThat(g.start().distancePt(new Point(200, 300))).isLessThan(0.01);
            assertThat(g.end().yPt()).isLessThan(295);
        });
    }
}
