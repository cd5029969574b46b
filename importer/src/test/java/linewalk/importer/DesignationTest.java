package linewalk.importer;

import static org.assertj.core.api.Assertions.assertThat;

import linewalk.drawing.SheetReading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Designations, settings and port letters beside symbols. */
class DesignationTest {

    private static Drawn valve(String text) {
        return Drawn.page().rect(380, 380, 420, 420).text(380, 374, text);
    }

    /** ISO 1219-2:1995: installation, where there are several, circuit number, letter, number; supply is circuit 0. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "1V2", "0P1", "2A1", "0M1", "3S4", "0Z12", "12V10", "1V2A", "3-1V2", "12-0P1", "11.2-V4", "9.10-P1"
            })
    void iso1219of1995(String tag) {
        assertThat(Said.tags(valve(tag).read())).containsExactly(tag);
    }

    /** ISO 1219-2:2012: {@code [system-][medium]circuit.component} without function letter, medium H hydraulic. */
    @ParameterizedTest
    @ValueSource(strings = {"1.2", "1-1.2", "H1.2", "1-H1.2", "2.10"})
    void iso1219of2012(String tag) {
        assertThat(Said.tags(valve(tag).read())).containsExactly(tag);
    }

    @ParameterizedTest
    @ValueSource(strings = {"CYL1", "V-12", "PV-101", "RV2", "FCV3", "CV-4A"})
    void lettersAndNumber(String tag) {
        assertThat(Said.tags(valve(tag).read())).containsExactly(tag);
    }

    /** V names a port of some valves too. */
    @Test
    void itIsNotTheNameOfThePortBesideWhichItStands() {
        SheetReading r = Drawn.page()
                .rect(380, 380, 420, 420)
                .line(400, 420, 400, 500)
                .text(404, 431, "V2")
                .read();
        assertThat(Said.component(r, "V2").ports()).singleElement().satisfies(p -> assertThat(p.name())
                .isNull());
    }

    /** Its own name was not read: the coil's is none of it where other valves have names. */
    @Test
    void aCoilsNameIsNoValves() {
        SheetReading r = valve("Y3")
                .rect(500, 380, 540, 420)
                .text(500, 374, "V1")
                .rect(600, 380, 640, 420)
                .text(600, 374, "V2")
                .read();
        assertThat(Said.tags(r)).containsExactlyInAnyOrder("V1", "V2");
        assertThat(Said.tags(valve("Y3").read())).containsExactly("Y3");
    }

    /** It stands nearer to the name than the valve does. */
    @Test
    void besideTheMarkOfARevision() {
        SheetReading r = valve("1V2")
                .polygon(376, 364, 392, 364, 384, 350)
                .text(382, 362, "C")
                .line(400, 420, 400, 500)
                .read();
        assertThat(r.components()).singleElement().satisfies(c -> {
            assertThat(c.tag()).isEqualTo("1V2");
            assertThat(c.ports()).hasSize(1);
        });
    }

    /** A frame drawn closely around the name is no part of its own. */
    @Test
    void inAFrameBesideItsPart() {
        SheetReading r =
                valve("1V2").rect(377, 365, 397, 377).line(400, 420, 400, 500).read();
        assertThat(r.components()).singleElement().satisfies(c -> {
            assertThat(c.tag()).isEqualTo("1V2");
            assertThat(c.ports()).hasSize(1);
        });
    }

    /** The pump's name stands between both circles, nearer to the one that drives it. */
    @Test
    void thePumpIsNotTheMotorBesideIt() {
        SheetReading r = Drawn.page()
                .circle(300, 400, 28)
                .text(297, 403, "M")
                .circle(420, 400, 28)
                .filled(412, 384, 420, 372, 428, 384)
                .line(420, 372, 420, 300)
                .text(330, 370, "0P1")
                .text(290, 445, "0M1")
                .read();
        assertThat(Said.component(r, "0P1").ports()).hasSize(1);
        assertThat(Said.component(r, "0M1").ports()).isEmpty();
    }

    /** IEC 81346-2: a hyphen leads the letters of what the part does; aspects of place and function may stand before. */
    @ParameterizedTest
    @ValueSource(strings = {"-QM4", "-GP1", "=H1-MM2", "=A1+B2-CM3"})
    void iec81346(String tag) {
        assertThat(Said.tags(valve(tag).read())).containsExactly(tag);
    }

    @ParameterizedTest
    @ValueSource(strings = {"CYL 1", "PUMP 2", "FILTER 12", "V 3A"})
    void aWordAndANumber(String tag) {
        assertThat(Said.tags(valve(tag).read())).containsExactly(tag);
    }

    @ParameterizedTest
    @ValueSource(strings = {"SIZE 3", "NOTE 2", "SH 4", "DN 25", "ITEM 7"})
    void otherWordsAndNumbersAreNone(String text) {
        assertThat(valve(text).read().components()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"210 bar", "NOTE", "38 x 4", "P", "T", "M", "DETAIL A", "SEE NOTE 4"})
    void noDesignations(String text) {
        assertThat(valve(text).read().components()).isEmpty();
    }

    /** A solenoid's name stands nearer to its valve than the valve's own, and is not it. */
    @ParameterizedTest
    @ValueSource(strings = {"Y1A", "1Y1", "SOL1", "S1A", "Y1", "-Y1", "-MB3"})
    void aSolenoidsNameIsNotItsValves(String solenoid) {
        SheetReading r = Drawn.page()
                .rect(380, 380, 420, 420)
                .rect(420, 380, 460, 420)
                .rect(360, 390, 380, 410)
                .text(345, 385, solenoid)
                .text(400, 362, "1V2")
                .read();

        assertThat(Said.tags(r)).containsExactly("1V2");
    }

    @Test
    void aTextOfDesignationAndValueGivesBoth() {
        assertThat(valve("1V2 210 bar").read().components()).singleElement().satisfies(c -> {
            assertThat(c.tag()).isEqualTo("1V2");
            assertThat(c.setting()).isEqualTo("210 bar");
        });
    }

    @Test
    void aRemarkThatStartsWithAnotherPartsNameIsNone() {
        assertThat(valve("1A1 BORE").read().components()).isEmpty();
    }

    @Test
    void theSettingStandsBelowOrBehind() {
        SheetReading behind = valve("1V2").text(408, 374, "210 bar").read();
        SheetReading below = Drawn.page()
                .rect(380, 380, 420, 420)
                .text(426, 390, "1V2")
                .text(426, 401, "63 L/min")
                .read();

        assertThat(Said.component(behind, "1V2").setting()).isEqualTo("210 bar");
        assertThat(Said.component(below, "1V2").setting()).isEqualTo("63 L/min");
    }

    @Test
    void ofTwoValvesEachTakesTheNearestName() {
        SheetReading r = Drawn.page()
                .rect(380, 380, 420, 420)
                .text(380, 374, "1V2")
                .rect(460, 380, 500, 420)
                .text(460, 374, "1V3")
                .read();

        assertThat(Said.component(r, "1V2").box().x1Pt()).isLessThan(430);
        assertThat(Said.component(r, "1V3").box().x0Pt()).isGreaterThan(450);
    }

    @Test
    void oneNameServesOneFigureOnly() {
        SheetReading r = Drawn.page()
                .rect(380, 380, 420, 420)
                .text(424, 403, "1V2")
                .rect(450, 380, 490, 420)
                .read();

        assertThat(r.components()).hasSize(1);
    }

    @Test
    void tooFarAwayIsNoName() {
        assertThat(Drawn.page()
                        .rect(380, 380, 420, 420)
                        .text(380, 300, "1V2")
                        .read()
                        .components())
                .isEmpty();
    }

    /** ISO 9461: P pressure, T tank, A and B working ports. */
    @Test
    void portLettersStandBesideTheirLines() {
        SheetReading r = Drawn.page()
                .rect(380, 380, 420, 420)
                .rect(420, 380, 460, 420)
                .text(464, 403, "1V2")
                .line(390, 380, 390, 200)
                .line(410, 380, 410, 250, 700, 250)
                .line(390, 420, 390, 600)
                .line(410, 420, 410, 550, 700, 550)
                .text(382, 376, "A")
                .text(413, 376, "B")
                .text(382, 430, "P")
                .text(413, 430, "T")
                .text(380, 196, 270, "2.A1")
                .text(704, 253, "2.B2")
                .text(382, 610, "2.C3")
                .text(704, 553, "2.D4")
                .read();

        assertThat(Said.lines(r))
                .containsExactly("1V2:A - to 2/A1", "1V2:B - to 2/B2", "1V2:P - to 2/C3", "1V2:T - to 2/D4");
    }

    @Test
    void aDesignationIsLessSureTheFartherItStands() {
        double near = Said.component(valve("1V2").read(), "1V2").confidence();
        double far = Said.component(
                        Drawn.page()
                                .rect(380, 380, 420, 420)
                                .text(380, 340, "1V2")
                                .read(),
                        "1V2")
                .confidence();

        assertThat(near).isGreaterThan(far);
    }

    @ParameterizedTest
    @CsvSource({
        "N.C., true",
        "N.C. LOWER BY HAND, true",
        "NORMALLY CLOSED, true",
        "LOCKED SHUT, true",
        "N.O., false",
        "NORMALLY OPEN, false"
    })
    void aShutOffValveSaysHowItStands(String words, boolean closed) {
        SheetReading r = Drawn.page()
                .line(300, 400, 380, 400)
                .line(420, 400, 500, 400)
                .line(380, 380, 380, 420, 420, 380, 420, 420, 380, 380)
                .text(382, 360, "BV-2")
                .text(382, 371, words)
                .read();

        assertThat(Said.component(r, "BV-2").setting()).isEqualTo(words);
        assertThat(Said.component(r, "BV-2").normallyClosed()).isEqualTo(closed);
    }
}
