package linewalk.importer.stroke;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Line work that stands beside drawn letters like more of them. */
class DashesTest {

    private static final double PEN_PT = 10 / 12.0;

    private static Written page() {
        return new Written()
                .text(100, 900, 10, 0, "PUMPS AND VALVES ON THE SOUTH SIDE")
                .text(100, 980, 10, 0, "MOTOR BASE AND BOLTED RAILS");
    }

    /** From a line on the right to beside the name, and down. */
    private static Written withPilot(Written page) {
        for (int i = 0; i < 5; i++) {
            page.line(PEN_PT, 430 + 8 * i, 295, 435 + 8 * i, 295);
            page.line(PEN_PT, 430, 295 + 8 * i, 430, 300 + 8 * i);
        }
        return page;
    }

    @Test
    void dashesDrawnOneByOneAreNoLetters() {
        assertThat(Written.texts(withPilot(page().text(388, 300, 10, 0, "BOLT")).read()))
                .contains("BOLT");
    }

    @Test
    void strokesOfLettersOneBelowTheOtherAreNoDashes() {
        Written page = page();
        for (int i = 0; i < 6; i++) {
            page.text(400, 300 + 18 * i, 10, 0, "RAIL");
        }
        assertThat(Written.texts(page.read())).filteredOn("RAIL"::equals).hasSize(6);
    }

    @Test
    void theCapOfATestPointIsNoSignBeforeItsName() {
        Written page =
                page().line(PEN_PT, 300, 293, 300, 290, 316, 290, 316, 293).text(319, 300, 10, 0, "BOLT");
        assertThat(Written.texts(page.read())).contains("BOLT");
        assertThat(page.read().strokes()).hasSize(1);
    }

    @Test
    void aLetterAloneIsTurnedLikeTheWordsNearIt() {
        Written page = page().text(700, 600, 10, 270, "BOLTED RAILS").text(726, 580, 20, 270, "E");

        assertThat(page.read().glyphs())
                .filteredOn(g -> g.sizePt() > 20)
                .singleElement()
                .satisfies(g -> assertThat(g.text() + " at " + g.angleDeg()).isEqualTo("E at 270.0"));
    }
}
