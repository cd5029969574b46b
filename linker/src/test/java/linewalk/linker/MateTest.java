package linewalk.linker;

import static linewalk.linker.Drawn.findings;
import static linewalk.linker.Drawn.mates;
import static linewalk.linker.Drawn.ref;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.SheetReading;
import org.junit.jupiter.api.Test;

/** Which references are the two ends of one line. The far end must point back (IEC 61082-1, as transcribed). */
class MateTest {

    @Test
    void twoThatNameEachOthersZoneAreMates() {
        DrawingSet set = Drawn.of("""
                        sheet 1
                        ref a B4 > 2/C1 L-101 out
                        sheet 2
                        ref b C1 > 1/B4 L-101 in
                        """).link();
        assertThat(mates(set, "a")).containsExactly("b");
        assertThat(mates(set, "b")).containsExactly("a");
        assertThat(ref(set, "a").mateConfidence()).isGreaterThan(0.98);
        assertThat(findings(set)).isEmpty();
    }

    /** The neighbours' zones are next to each other, but each names its own; a name at one end takes nothing from that. */
    @Test
    void aNameThatIsPrintedAtOneEndAloneRaisesNoDoubt() {
        DrawingSet set = Drawn.of("""
                        sheet 2
                        ref a B2 > 3/B4
                        ref b A2 > 3/B4 T3
                        sheet 3
                        ref c B4 > 2/B2 P3
                        ref d B4 > 2/A2
                        """).link();
        assertThat(mates(set, "a")).containsExactly("c");
        assertThat(mates(set, "b")).containsExactly("d");
        assertThat(ref(set, "a").mateConfidence()).isGreaterThan(0.9);
        assertThat(ref(set, "b").mateConfidence()).isGreaterThan(0.9);
    }

    @Test
    void oneHeaderMayGoOnToTwoSheets() {
        DrawingSet set = Drawn.of("""
                        sheet 2
                        ref a D3 > 3/C1,6/D1 L-120 out
                        sheet 3
                        ref b C1 > 2/D3 L-120 in
                        sheet 6
                        ref c D1 > 2/D3 L-120 in
                        """).link();
        assertThat(mates(set, "a")).containsExactlyInAnyOrder("b", "c");
        assertThat(findings(set)).isEmpty();
    }

    @Test
    void aLetterGoesByItsNameAlone() {
        DrawingSet set = Drawn.of("""
                        sheet 3
                        ref k3 D2 > 4 K
                        ref h3 C2 > 4 H
                        sheet 4
                        ref k4 A1 > 3 K
                        ref h4 A2 > 3 H
                        """).link();
        assertThat(mates(set, "k3")).containsExactly("k4");
        assertThat(mates(set, "h4")).containsExactly("h3");
        assertThat(ref(set, "k3").mateConfidence()).isGreaterThan(0.9);
        assertThat(findings(set)).isEmpty();
    }

    @Test
    void listsOfSheetsMakeChainsAndCliques() {
        DrawingSet set = Drawn.of("""
                        sheet 3
                        ref a B1 > 6,17 PS_POR_L
                        sheet 6
                        ref b B2 > 3,17 PS_POR_L
                        sheet 17
                        ref c B3 > 3,6 PS_POR_L
                        """).link();
        assertThat(mates(set, "a")).containsExactlyInAnyOrder("b", "c");
        assertThat(mates(set, "b")).containsExactlyInAnyOrder("a", "c");
        assertThat(findings(set)).isEmpty();
    }

    @Test
    void aNumberedConnectorGoesOnInAnotherDrawing() {
        DrawingSet set = Drawn.of("""
                        sheet UER-1234567
                        ref a B1 > UER-2345678 280
                        ref b C1 > UER-9999999 281
                        sheet UER-2345678
                        ref c B4 > UER-1234567 280
                        """).link();
        assertThat(mates(set, "a")).containsExactly("c");
        assertThat(findings(set)).containsExactly("not-in-set b");
    }

    @Test
    void labelsTellTwoInOneZoneApart() {
        DrawingSet set = Drawn.of("""
                        sheet 1
                        ref a B4 > 2/C1 L-1
                        ref b B4+0,20 > 2/C1 L-2
                        sheet 2
                        ref c C1 > 1/B4 L-2
                        ref d C1+0,20 > 1/B4 L-1
                        """).link();
        assertThat(mates(set, "a")).containsExactly("d");
        assertThat(mates(set, "b")).containsExactly("c");
        assertThat(findings(set)).containsExactly("same-place a b c d");
    }

    @Test
    void whatNothingTellsApartIsNeverSure() {
        DrawingSet set = Drawn.of("""
                        sheet 1
                        ref a B4 > 2/C1
                        ref b B4+0,20 > 2/C1
                        sheet 2
                        ref c C1 > 1/B4
                        ref d C1+0,20 > 1/B4
                        """).link();
        assertThat(set.references()).allMatch(r -> r.mateConfidence() < 0.5);
    }

    @Test
    void severalThatShareANameAnswerOneSlot() {
        DrawingSet set = Drawn.of("""
                        sheet 1
                        ref a B4 > 2/C1 L-5 in
                        ref b B4+0,20 > 2/C1 L-5 in
                        sheet 2
                        ref c C1 > 1/B4 L-5 out
                        """).link();
        assertThat(mates(set, "c")).containsExactlyInAnyOrder("a", "b");
        assertThat(ref(set, "c").mateConfidence()).isGreaterThan(0.9);
        assertThat(findings(set)).isEmpty();
    }

    @Test
    void withoutAnyGridMatesGoBySheetAndLabel() {
        DrawingSet set = Drawn.of("""
                        sheet 1 nogrid
                        ref a B4 > 2/A1 OUT+
                        ref b C4 > 2/A1 OUT-
                        sheet 2 nogrid
                        ref c A1 > 1/B4 OUT-
                        ref d B1 > 1/B4 OUT+
                        """).link();
        assertThat(mates(set, "a")).containsExactly("d");
        assertThat(mates(set, "b")).containsExactly("c");
        assertThat(findings(set)).isEmpty();
    }

    @Test
    void aConnectorJustOverAZonesBorderStandsInBoth() {
        DrawingSet set = Drawn.of("""
                        sheet 1
                        ref a B4+-48,0 > 2/C1 L-1
                        sheet 2
                        ref b C1 > 1/B3 L-1
                        """).link();
        assertThat(mates(set, "a")).containsExactly("b");
        assertThat(findings(set)).containsExactly("next-zone b");
        DrawingSet straddling = Drawn.of("""
                        sheet 1
                        ref a B4+-49,0 > 2/C1 L-1
                        sheet 2
                        ref b C1 > 1/B3 L-1
                        """).link();
        assertThat(findings(straddling)).isEmpty();
    }

    @Test
    void thinEvidenceMakesNoMate() {
        DrawingSet set = Drawn.of("""
                        sheet 1
                        ref a B4 > 2/C1 L-1
                        sheet 2
                        ref b D4 > 1/A1 L-9
                        """).link();
        assertThat(mates(set, "a")).isEmpty();
    }

    @Test
    void theOrderOfPagesDoesNotMatter() {
        Drawn drawn = Drawn.of("""
                sheet 1
                ref a B4 > 2/C1 L-1
                ref x B1 > 3/C1
                sheet 2
                ref b C1 > 1/B4 L-1
                sheet 3
                ref y C2 > 1/B1
                """);
        List<SheetReading> reversed = new ArrayList<>(drawn.readings());
        Collections.reverse(reversed);
        assertThat(drawn.link(reversed)).isEqualTo(drawn.link());
    }
}
