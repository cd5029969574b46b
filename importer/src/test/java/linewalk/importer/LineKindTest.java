package linewalk.importer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.stream.Collectors;
import linewalk.drawing.Line;
import linewalk.drawing.LineKind;
import linewalk.drawing.SheetReading;
import org.junit.jupiter.api.Test;

/** ISO 1219-1: solid lines are working lines, long dashes pilot, short dashes drain lines; chain lines enclose. */
class LineKindTest {

    /** Valves 1V1 to 1V3 on the left, 1V4 to 1V6 on the right, on three levels. */
    private static Drawn rows() {
        Drawn d = Drawn.page();
        for (int i = 0; i < 3; i++) {
            double y = 200 + 150 * i;
            d.rect(180, y - 20, 220, y + 20).text(180, y - 26, "1V" + (i + 1));
            d.rect(580, y - 20, 620, y + 20).text(580, y - 26, "1V" + (i + 4));
        }
        return d;
    }

    private static Map<String, LineKind> kinds(SheetReading r) {
        return r.lines().stream().collect(Collectors.toMap(l -> Said.line(l, r), Line::kind));
    }

    @Test
    void solidLongAndShortDashes() {
        SheetReading r = rows().line(220, 200, 580, 200)
                .pen(0.7, 9, 3)
                .line(220, 350, 580, 350)
                .pen(0.7, 3, 2)
                .line(220, 500, 580, 500)
                .read();

        assertThat(kinds(r))
                .containsOnly(
                        Map.entry("1V1 - 1V4", LineKind.WORKING),
                        Map.entry("1V2 - 1V5", LineKind.PILOT),
                        Map.entry("1V3 - 1V6", LineKind.DRAIN));
    }

    @Test
    void aPilotLineThatBranchesFromAWorkingLineJoinsIt() {
        SheetReading r = rows().line(220, 200, 580, 200)
                .pen(0.7, 9, 3)
                .line(400, 200, 400, 350, 580, 350)
                .read();

        assertThat(Said.lines(r)).containsExactly("1V1 - 1V4 - 1V5");
        assertThat(r.lines().get(0).kind()).isEqualTo(LineKind.WORKING);
    }

    @Test
    void aChainLineJoinsNothing() {
        SheetReading r = rows().pen(0.7, 18, 3, 3, 3).line(220, 200, 580, 200).read();

        assertThat(r.lines()).isEmpty();
    }

    /** Some programs draw each dash as a stroke of its own. */
    @Test
    void dashesDrawnOneByOneAreOneLine() {
        Drawn d = rows();
        for (double x = 220; x < 580; x += 12) {
            d.line(x, 350, Math.min(580, x + 9), 350);
        }

        assertThat(Said.lines(d.read())).containsExactly("1V2 - 1V5");
    }

    /** A plotter's driver may cut each dash in two. */
    @Test
    void dashesCutInPiecesAreOneLine() {
        Drawn d = rows().pen(0.7);
        for (double x = 220; x < 580; x += 20) {
            d.line(x, 350, x + 7, 350).line(x + 7, 350, x + 14, 350);
        }
        assertThat(Said.lines(d.read())).containsExactly("1V2 - 1V5");
    }

    /** The gap that is left for another line is longer than those between dashes. */
    @Test
    void aDashedLineGoesOnBehindALineThatCrossesIt() {
        Drawn d = rows().line(220, 200, 580, 200).line(400, 200, 400, 500).line(220, 500, 580, 500);
        d.pen(0.7);
        for (double x = 220; x < 580; x += 12) {
            if (x < 380 || x > 410) {
                d.line(x, 350, Math.min(580, x + 9), 350);
            }
        }
        d.line(388, 350, 395, 350).line(405, 350, 412, 350);

        assertThat(Said.lines(d.read())).containsExactly("1V1 - 1V3 - 1V4 - 1V6", "1V2 - 1V5");
    }

    @Test
    void sizeAndNumberAreToldApart() {
        Line l = rows().line(220, 200, 580, 200)
                .text(300, 196, "DN25")
                .text(400, 196, "L-101")
                .read()
                .lines()
                .get(0);

        assertThat(l.size()).isEqualTo("DN25");
        assertThat(l.label()).isEqualTo("L-101");
    }
}
