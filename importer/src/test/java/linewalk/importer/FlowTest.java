package linewalk.importer;

import static org.assertj.core.api.Assertions.assertThat;

import linewalk.drawing.Flow;
import linewalk.drawing.ReferenceReading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which way the oil goes at a reference, seen from its own sheet. */
class FlowTest {

    /** A line from the left that ends at x = 500. */
    private static Drawn fromTheLeft() {
        return Drawn.page().rect(200, 280, 240, 320).text(205, 272, "1V2").line(240, 300, 500, 300);
    }

    /** A line from the right that ends at x = 500. */
    private static Drawn fromTheRight() {
        return Drawn.page().rect(800, 280, 840, 320).text(805, 272, "1V2").line(800, 300, 500, 300);
    }

    private static ReferenceReading only(Drawn d) {
        var found = d.read().references();
        assertThat(found).hasSize(1);
        return found.get(0);
    }

    private static Flow flow(Drawn d) {
        return only(d).flow();
    }

    @Test
    void noMarkNoFlow() {
        assertThat(flow(fromTheLeft().rect(500, 290, 560, 310).text(507, 303, "2/B4")))
                .isEqualTo(Flow.UNKNOWN);
    }

    @Test
    void aFilledTriangleInTheFlag() {
        Drawn out = fromTheLeft().rect(500, 290, 560, 310).filled(503, 295, 503, 305, 511, 300);
        Drawn in = fromTheLeft().rect(500, 290, 560, 310).filled(511, 295, 511, 305, 503, 300);

        assertThat(flow(out.text(517, 303, "2/B4"))).isEqualTo(Flow.OUT);
        assertThat(flow(in.text(517, 303, "2/B4"))).isEqualTo(Flow.IN);
    }

    @Test
    void aFilledArrowheadOnTheLine() {
        assertThat(flow(fromTheLeft().filled(480, 296, 480, 304, 492, 300).text(504, 303, "2.B4")))
                .isEqualTo(Flow.OUT);
        assertThat(flow(fromTheLeft().filled(492, 296, 492, 304, 480, 300).text(504, 303, "2.B4")))
                .isEqualTo(Flow.IN);
    }

    @Test
    void anOpenArrowheadAtTheLinesEnd() {
        Drawn one = fromTheLeft().line(492, 296, 500, 300, 492, 304).text(504, 303, "2.B4");
        Drawn two =
                fromTheLeft().line(492, 296, 500, 300).line(492, 304, 500, 300).text(504, 303, "2.B4");

        assertThat(flow(one)).isEqualTo(Flow.OUT);
        assertThat(flow(two)).isEqualTo(Flow.OUT);
    }

    @ParameterizedTest
    @CsvSource({"TO SHEET 2, OUT", "FROM SHEET 2, IN", "TO 2/B4, OUT", "FROM 2/B4, IN", "SHEET 2, UNKNOWN"})
    void words(String text, Flow flow) {
        assertThat(flow(fromTheLeft().text(504, 303, text))).isEqualTo(flow);
    }

    @Test
    void anArrowCharacterPointsAlongTheText() {
        assertThat(flow(fromTheLeft().text(504, 303, "\u2192 2/B4"))).isEqualTo(Flow.OUT);
        assertThat(flow(fromTheLeft().text(504, 303, "\u2190 2/B4"))).isEqualTo(Flow.IN);
        assertThat(flow(fromTheRight().text(462, 303, "2/B4 \u2190"))).isEqualTo(Flow.OUT);
        assertThat(flow(fromTheRight().text(462, 303, "2/B4 \u2192"))).isEqualTo(Flow.IN);
    }

    @Test
    void theFlagsTipIsKeptApartForTheWholeSetToJudge() {
        ReferenceReading away = only(fromTheLeft().flag(500, 290, 570, 310).text(507, 303, "2/B4"));
        ReferenceReading towards = only(fromTheLeft().flag(570, 290, 500, 310).text(515, 303, "2/B4"));

        assertThat(away.flow()).isEqualTo(Flow.UNKNOWN);
        assertThat(away.tip()).isEqualTo(Flow.OUT);
        assertThat(towards.tip()).isEqualTo(Flow.IN);
    }

    @Test
    void aBoxHasNoTip() {
        assertThat(only(fromTheLeft().rect(500, 290, 560, 310).text(507, 303, "2/B4"))
                        .tip())
                .isEqualTo(Flow.UNKNOWN);
    }
}
