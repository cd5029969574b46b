package linewalk.importer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.stream.Collectors;
import linewalk.drawing.SheetReading;
import org.junit.jupiter.api.Test;

/** Line numbers stand along their lines; beside an upright line also level. */
class LineNumberTest {

    private static Drawn page() {
        return Drawn.page()
                .rect(180, 180, 220, 220)
                .text(180, 174, "1V1")
                .rect(580, 180, 620, 220)
                .text(580, 174, "1V2")
                .line(220, 200, 580, 200)
                .text(300, 197, "HP-101")
                .rect(380, 380, 420, 420)
                .text(340, 404, "1V3")
                .rect(380, 680, 420, 720)
                .text(340, 704, "1V4")
                .line(400, 420, 400, 680);
    }

    private static Map<String, String> numbers(SheetReading r) {
        return r.lines().stream()
                .collect(Collectors.toMap(l -> Said.line(l, r), l -> l.label() == null ? "none" : l.label()));
    }

    @Test
    void levelBesideAnUprightLineWhereOthersOfTheSheetAreLikeIt() {
        assertThat(numbers(page().text(404, 550, "HP-102").read()))
                .containsOnly(Map.entry("1V1 - 1V2", "HP-101"), Map.entry("1V3 - 1V4", "HP-102"));
    }

    /** Most that look like it name figures. */
    @Test
    void aDesignationBesideItsFigureAndALineIsNoNumber() {
        SheetReading r = Drawn.page()
                .rect(180, 180, 220, 220)
                .text(180, 174, "V101")
                .rect(380, 180, 420, 220)
                .text(380, 174, "V102")
                .rect(180, 380, 220, 420)
                .text(232, 412, "V103")
                .rect(580, 380, 620, 420)
                .text(632, 412, "V104")
                .line(220, 400, 380, 400, 380, 470)
                .line(620, 400, 800, 400, 800, 470)
                .rect(360, 470, 400, 510)
                .text(404, 493, "V105")
                .rect(780, 470, 820, 510)
                .text(824, 493, "V106")
                .read();

        assertThat(Said.tags(r)).contains("V103", "V104");
        assertThat(r.lines()).allMatch(l -> l.label() == null);
    }

    /** Ports of a manifold, printed outside of its edge. */
    @Test
    void whatStandsWhereLinesLeaveAnEnclosureIsNoNumber() {
        SheetReading r = Drawn.page()
                .pen(0.7, 18, 3, 3, 3)
                .rect(150, 150, 500, 500)
                .pen(1)
                .rect(200, 180, 240, 220)
                .text(200, 174, "1V1")
                .rect(700, 180, 740, 220)
                .text(700, 174, "1V2")
                .rect(200, 380, 240, 420)
                .text(200, 374, "1V3")
                .rect(700, 380, 740, 420)
                .text(700, 374, "1V4")
                .line(240, 200, 700, 200)
                .line(240, 400, 700, 400)
                .text(504, 197, "A1")
                .text(504, 397, "B1")
                .read();

        assertThat(numbers(r)).containsOnly(Map.entry("1V1 - 1V2", "none"), Map.entry("1V3 - 1V4", "none"));
    }

    /** Nearer to a line than to the box that it names. */
    @Test
    void aSolenoidsNameBetweenItsBoxAndALineIsNoNumber() {
        SheetReading r = Drawn.page()
                .rect(180, 180, 220, 220)
                .text(180, 236, "1V1")
                .text(180, 170, "Y31a")
                .line(200, 180, 200, 175)
                .line(100, 160, 300, 160, 300, 380)
                .rect(280, 380, 320, 420)
                .text(330, 404, "1V2")
                .rect(580, 180, 620, 220)
                .text(580, 236, "1V3")
                .text(580, 170, "Y31b")
                .line(500, 160, 700, 160, 700, 380)
                .rect(680, 380, 720, 420)
                .text(730, 404, "1V4")
                .read();
        assertThat(r.lines()).isNotEmpty().allMatch(l -> l.label() == null);
    }

    @Test
    void notWithOtherLetters() {
        assertThat(numbers(page().text(404, 550, "TP-102").read())).containsEntry("1V3 - 1V4", "none");
    }

    @Test
    void notFarOff() {
        assertThat(numbers(page().text(425, 550, "HP-102").read())).containsEntry("1V3 - 1V4", "none");
    }
}
