package linewalk.linker;

import static linewalk.linker.Drawn.finding;
import static linewalk.linker.Drawn.findings;
import static linewalk.linker.Drawn.mates;
import static linewalk.linker.Drawn.ref;
import static org.assertj.core.api.Assertions.assertThat;

import linewalk.drawing.DrawingSet;
import linewalk.drawing.Rule;
import org.junit.jupiter.api.Test;

/** Each drafting error is one finding, with its evidence and, where there is one, a remedy. */
class FindingTest {

    private static DrawingSet pair(String a, String b) {
        return Drawn.of("sheet 1\nref a " + a + "\nsheet 2\nref b " + b).link();
    }

    @Test
    void aSheetThatTheSetDoesNotHave() {
        DrawingSet set = pair("B4 > 8/C1", "C1 > 1/A1");
        assertThat(findings(set)).containsExactly("no-such-sheet a", "nothing-there b");
    }

    @Test
    void aSheetThatDoesNotExistButSomethingPointsBack() {
        DrawingSet set = pair("B4 > 8/C1 L-7", "C1 > 1/B4 L-7");
        assertThat(findings(set)).containsExactly("no-such-sheet a");
        assertThat(finding(set, Rule.NO_SUCH_SHEET).remedy()).contains("sheet 2, C1", "L-7");
    }

    @Test
    void aZoneThatTheGridDoesNotHave() {
        DrawingSet set = pair("B4 > 2/H9 L-7", "C1 > 1/B4 L-7");
        assertThat(findings(set)).containsExactly("no-such-zone a");
        assertThat(mates(set, "a")).containsExactly("b");
    }

    @Test
    void aZoneWithNothingInIt() {
        DrawingSet set = pair("B4 > 2/A1", "D4 > 2/D4");
        assertThat(findings(set)).contains("nothing-there a");
    }

    @Test
    void aSheetThatAnswersNoneOfManyIsToldOnce() {
        DrawingSet set = Drawn.of("""
                        sheet 3
                        sheet 4
                        ref a B1 > 3/A1
                        ref b B2 > 3/A2
                        ref c B3 > 3/A3
                        ref d B4 > 3/A4
                        """).link();
        assertThat(findings(set)).containsExactly("nothing-there a b c d");
        assertThat(finding(set, Rule.NOTHING_THERE).message())
                .contains("on sheet 4 lead to sheet 3", "'3/A1', '3/A2', '3/A3', '3/A4'");
    }

    @Test
    void somethingThatPointsElsewhere() {
        DrawingSet set = Drawn.of("""
                        sheet 1
                        ref a B4 > 2/C1
                        sheet 2
                        ref b C1 > 3/D2 L-3
                        sheet 3
                        ref c D2 > 2/C1 L-3
                        """).link();
        assertThat(findings(set)).containsExactly("not-returned a");
        assertThat(mates(set, "b")).containsExactly("c");
    }

    @Test
    void theMateOneZoneAwayIsFoundAndMatedAllTheSame() {
        DrawingSet set = pair("B4 > 2/C2 L-1", "C1 > 1/B4 L-1");
        assertThat(findings(set)).containsExactly("next-zone a");
        assertThat(finding(set, Rule.NEXT_ZONE).remedy()).contains("C1");
        assertThat(ref(set, "a").mateConfidence()).isGreaterThan(0.9);
    }

    @Test
    void theMateFarAwayIsNamedInTheRemedy() {
        DrawingSet set = pair("B4 > 2/A4 L-1", "D1 > 1/B4 L-1");
        assertThat(findings(set)).containsExactly("nothing-there a");
        assertThat(finding(set, Rule.NOTHING_THERE).remedy()).contains("sheet 2, D1", "same label");
    }

    @Test
    void aSheetNumberGoneStale() {
        DrawingSet set = Drawn.of("""
                        sheet 1
                        sheet 3
                        ref a B4 > 5/C1 PE
                        sheet 5
                        ref b C1 > 1/B4
                        """).link();
        assertThat(mates(set, "a")).containsExactly("b");
        assertThat(findings(set)).containsExactly("nothing-there b");
    }

    @Test
    void labelsThatDisagree() {
        DrawingSet set = pair("B4 > 2/C1 L-151", "C1 > 1/B4 L-115");
        assertThat(findings(set)).containsExactly("label-differs a b");
        assertThat(ref(set, "a").mateConfidence()).isGreaterThan(0.9);
    }

    @Test
    void oilThatFlowsOutOfBothSheets() {
        assertThat(findings(pair("B4 > 2/C1 L-1 out", "C1 > 1/B4 L-1 out"))).containsExactly("flow-clash a b");
    }

    @Test
    void oilThatFlowsIntoTwoSheetsOutOfAThird() {
        DrawingSet set = Drawn.of("""
                        sheet 1
                        ref a B4 > 2 L-1 out
                        sheet 2
                        ref b C1 > 3/D2 L-1 in
                        sheet 3
                        ref c D2 > 2/C1 L-1 in
                        """).link();
        assertThat(mates(set, "b")).containsExactly("c");
        assertThat(findings(set)).doesNotContain("flow-clash b c");
    }

    @Test
    void aLineThatEndsInNothing() {
        DrawingSet set = Drawn.of("""
                        sheet 1
                        part V1 check-valve B2 A B
                        line V1:A open@B3
                        """).link();
        assertThat(findings(set)).containsExactly("loose-end");
        assertThat(finding(set, Rule.LOOSE_END).message()).contains("sheet 1, B3");
    }

    @Test
    void aLooseEndThatAnswersAOneWayReferenceIsOneFault() {
        DrawingSet set = Drawn.of("""
                        sheet 1
                        ref a B4 > 2/C1 L-171
                        sheet 2
                        part TANK tank D1 D
                        line L-171 TANK:D open@C1
                        """).link();
        assertThat(findings(set)).containsExactly("nothing-there a");
        assertThat(finding(set, Rule.NOTHING_THERE).message()).contains("line L-171 ends loose there");
    }

    @Test
    void aReferenceOnItsOwnSheetIsFine() {
        DrawingSet set = Drawn.of("sheet 1\nref a B4 > 1/C1\nref b C1 > 1/B4").link();
        assertThat(mates(set, "a")).containsExactly("b");
        assertThat(findings(set)).isEmpty();
    }

    @Test
    void aLineThatComesBackToItsStart() {
        DrawingSet set = Drawn.of("""
                        sheet 1
                        ref a B4 > 2/C1 L-1
                        ref b C4 > 2/D1 L-2
                        line a b
                        sheet 2
                        ref c C1 > 1/B4 L-1
                        ref d D1 > 1/C4 L-2
                        line c d
                        """).link();
        assertThat(findings(set)).hasSize(1).first().asString().startsWith("returns-to-start");
    }
}
