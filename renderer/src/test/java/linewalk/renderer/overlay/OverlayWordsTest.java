package linewalk.renderer.overlay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Enclosure;
import linewalk.drawing.Kind;
import linewalk.drawing.Point;
import linewalk.drawing.Rule;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What is written on the overlay, as text that can be found and copied. */
class OverlayWordsTest {

    private final OverlayBench bench = new OverlayBench();

    @BeforeEach
    void twoSheets() {
        bench.sheet(OverlayBench.UPRIGHT).sheet(OverlayBench.UPRIGHT);
    }

    @Test
    void namesAPartWithKindSettingAndConfidence() {
        bench.part("0V5", Kind.RELIEF_VALVE, 200, 200, 0.979);
        assertThat(OverlayBench.text(bench.print(), 2)).contains("0V5 210 bar relief valve 0.97");
    }

    @Test
    void saysWhereAReferenceGoesAndWhoAnswers() {
        bench.reference(1, "a", "S2", List.of("b"), 0.95);
        bench.reference(2, "b", "S1", List.of("a"), 0.95);
        assertThat(OverlayBench.text(bench.print(), 2)).contains("to S2/B2 L-1 out 1.00 mate: S2/B2 0.95");
    }

    @Test
    void saysThatNobodyAnswers() {
        bench.reference(1, "a", "S2", List.of(), 0);
        assertThat(OverlayBench.text(bench.print(), 2)).contains("no mate");
    }

    @Test
    void namesEnclosuresAndFields() {
        bench.enclosures.add(new Enclosure("MB1", OverlayBench.page(1), new Box(100, 100, 500, 300)));
        assertThat(OverlayBench.text(bench.print(), 2))
                .contains("enclosure MB1")
                .contains("A")
                .contains("B");
    }

    @Test
    void warnsOnEveryPageThatAProgramReadIt() {
        byte[] pdf = bench.print();
        for (int page = 1; page <= 3; page++) {
            assertThat(OverlayBench.text(pdf, page)).contains("Readings by a program: check on the machine.");
        }
    }

    @Test
    void listsFindingsAfterTheirSheetTheGravestFirst() {
        bench.finding(Rule.LOOSE_END, 1, new Point(100, 100), "A line ends in nothing.", "join it");
        bench.finding(Rule.NOT_RETURNED, 1, new Point(400, 300), "It points elsewhere.", null);
        bench.finding(Rule.LOOSE_END, 1, new Point(300, 300), "Another ends in nothing.", "join it");
        byte[] pdf = bench.print();
        assertThat(OverlayBench.text(pdf, 2)).contains("1").contains("2").contains("3");
        assertThat(OverlayBench.text(pdf, 3))
                .contains("error, not returned, B2 It points elsewhere.")
                .contains("A line ends in nothing. Likely remedy: join it.")
                .contains("Another ends in nothing. Likely remedy: as for 2.")
                .containsSubsequence("not returned", "loose end");
    }

    @Test
    void putsFindingsAboutTheWholeSetOnTheFirstPage() {
        bench.finding(Rule.SHEET_GAP, 0, null, "Number 7 is not there.", null);
        assertThat(OverlayBench.text(bench.print(), 1)).contains("sheet gap").contains("Number 7 is not there.");
    }

    @Test
    void saysThatAnOriginalIsMissing() {
        assertThat(OverlayBench.text(bench.print(), 2)).contains("ORIGINAL MISSING OR NOT READABLE: bench.pdf page 1");
    }
}
