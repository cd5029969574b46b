package linewalk.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import linewalk.samples.sheet.Box;
import linewalk.samples.sheet.DrawnReference;
import linewalk.samples.sheet.DrawnSheet;
import linewalk.samples.sheet.DrawnText;
import linewalk.samples.style.Grid;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A drafter keeps text off lines, off other text, and references off zone borders. */
class ClearSheetsTest {
    private static final double POINTS_A_MM = 72 / 25.4;

    @ParameterizedTest
    @MethodSource("linewalk.samples.Demo#all")
    void textStandsFree(Demo demo) throws IOException {
        List<String> faults = new ArrayList<>();
        for (DrawnSheet sheet : demo.sheets()) {
            List<DrawnText> texts = sheet.texts();
            for (int i = 0; i < texts.size(); i++) {
                Box box = texts.get(i).box().shrunk(0.3);
                String who =
                        "sheet " + sheet.plan().number() + " '" + texts.get(i).text() + "'";
                for (DrawnText other : texts.subList(i + 1, texts.size())) {
                    if (box.overlaps(other.box())) {
                        faults.add(who + " over '" + other.text() + "'");
                    }
                }
                if (sheet.strokes().stream().anyMatch(stroke -> crosses(stroke, box))) {
                    faults.add(who + " on a line");
                }
            }
        }
        assertThat(faults).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("linewalk.samples.Demo#all")
    void everythingStandsInTheFrame(Demo demo) throws IOException {
        Grid grid = demo.style().grid();
        double strip = grid.stripMm();
        Box frame = new Box(
                (grid.leftMm() - strip) * POINTS_A_MM,
                (grid.topMm() - strip) * POINTS_A_MM,
                (grid.rightMm() + strip) * POINTS_A_MM,
                (grid.bottomMm() + strip) * POINTS_A_MM);
        for (DrawnSheet sheet : demo.sheets()) {
            assertThat(sheet.texts()).allMatch(text -> within(text.box(), frame));
        }
    }

    @ParameterizedTest
    @MethodSource("linewalk.samples.Demo#all")
    void referencesKeepOffZoneBorders(Demo demo) throws IOException {
        List<String> faults = new ArrayList<>();
        for (DrawnSheet sheet : demo.sheets()) {
            for (DrawnReference drawn : sheet.references()) {
                Box box = drawn.textBox();
                if (cut(box.x0Pt(), box.x1Pt(), demo.style().grid().columnsMm())
                        || cut(box.y0Pt(), box.y1Pt(), demo.style().grid().rowsMm())) {
                    faults.add("sheet " + sheet.plan().number() + " " + drawn.text());
                }
            }
        }
        assertThat(faults).isEmpty();
    }

    private static boolean cut(double from, double to, List<Double> bordersMm) {
        double room = 1.5;
        return bordersMm.stream().anyMatch(mm -> mm * POINTS_A_MM > from - room && mm * POINTS_A_MM < to + room);
    }

    private static boolean within(Box box, Box frame) {
        return box.x0Pt() > frame.x0Pt()
                && box.x1Pt() < frame.x1Pt()
                && box.y0Pt() > frame.y0Pt()
                && box.y1Pt() < frame.y1Pt();
    }

    private static boolean crosses(double[] stroke, Box box) {
        Rectangle2D area =
                new Rectangle2D.Double(box.x0Pt(), box.y0Pt(), box.x1Pt() - box.x0Pt(), box.y1Pt() - box.y0Pt());
        return area.intersectsLine(new Line2D.Double(stroke[0], stroke[1], stroke[2], stroke[3]));
    }
}
