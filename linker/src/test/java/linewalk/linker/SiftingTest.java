package linewalk.linker;

import static linewalk.linker.Drawn.findings;
import static linewalk.linker.Drawn.mates;
import static linewalk.linker.Drawn.ref;
import static org.assertj.core.api.Assertions.assertThat;

import linewalk.drawing.DrawingSet;
import org.junit.jupiter.api.Test;

/** Which candidates are references, and what they say, with the whole set in view. */
class SiftingTest {

    @Test
    void anUnlikelyCandidateIsDroppedSilently() {
        DrawingSet set = Drawn.of("sheet 1\nref a B4 > 7/C2 p=0.3").link();
        assertThat(set.references()).isEmpty();
        assertThat(findings(set)).isEmpty();
    }

    @Test
    void oneThatIsAnsweredIsAReferenceHoweverUnlikelyItLooks() {
        DrawingSet set = Drawn.of("sheet 1\nref a B4 > 2/C1 p=0.3\nsheet 2\nref b C1 > 1/B4")
                .link();
        assertThat(mates(set, "a")).containsExactly("b");
    }

    @Test
    void oneInDoubtIsKeptAndTold() {
        DrawingSet set =
                Drawn.of("sheet 1\nref a B4 > 1/C2 p=0.45\nref b C2 > 1/D4").link();
        assertThat(findings(set)).contains("doubtful-reading a");
    }

    @Test
    void theSetChoosesAmongWhatTheImageFindsLikely() {
        DrawingSet set = Drawn.of("""
                        sheet 1
                        ref a B4 > 2/C4 ocr or=2/C1:0.35
                        sheet 2
                        ref b C1 > 1/B4
                        """).link();
        assertThat(ref(set, "a").targets()).hasToString("[2/C1]");
        assertThat(findings(set)).isEmpty();
    }

    @Test
    void clampsOfDevicesAreNoZonesOfSheets() {
        String references = """
                        sheet 1
                        ref a B4 > 2/C1
                        ref b B3 > 2/C2
                        ref c B2 > 2/C3
                        ref x1 D1 > 26/X1 form=AN:N
                        ref x2 D2 > 27/X1 form=AN:N
                        ref x3 D3 > 3/X2 form=AN:NAN:N
                        sheet 2
                        ref d C1 > 1/B4
                        ref e C2 > 1/B3
                        ref f C3 > 1/B2
                        """;
        assertThat(Drawn.of(references).link().references())
                .extracting(r -> r.id())
                .containsExactly("1:a", "1:b", "1:c", "2:d", "2:e", "2:f");
    }

    @Test
    void oneOfThemMayStillBeAnErrorOfTheUsualForm() {
        DrawingSet set = Drawn.of("sheet 1\nref a B4 > 2/C1\nref b B3 > 8/C2\nsheet 2\nref d C1 > 1/B4")
                .link();
        assertThat(findings(set)).containsExactly("no-such-sheet b");
    }

    @Test
    void aTextLayerIsNeverTalkedOutOfADraftingError() {
        DrawingSet set = Drawn.of("""
                        sheet 1
                        ref a B4 > 2/C4 L-1 or=2/C1:0.05
                        sheet 2
                        ref b C1 > 1/B4 L-1
                        """).link();
        assertThat(ref(set, "a").targets()).hasToString("[2/C4]");
        assertThat(findings(set)).containsExactly("nothing-there a");
    }
}
