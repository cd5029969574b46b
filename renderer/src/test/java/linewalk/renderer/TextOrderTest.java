package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import linewalk.drawing.Part;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Words of a print can be taken out again, in reading order. */
class TextOrderTest {

    @TempDir
    Path folder;

    @Test
    void tableRowsAndWalkFollowOneAnother() {
        for (Look look : Look.values()) {
            Bench bench = new Bench().roundTrip().drawnTo(folder.resolve("bench.pdf"), 0);
            bench.look = look;
            bench.parts.put("0P1", new Part("0P1", "Gear pump", null, "28 cm3", null));
            assertThat(Prints.text(Prints.print(bench.job(), "order-" + look)))
                    .containsSubsequence(
                            "Before you open anything",
                            "Parts on this path",
                            "1 0P1 1, C1 Gear pump 28 cm3",
                            "3 1V1 2, C2 Directional valve",
                            "4 1A1 3, B2 Cylinder",
                            "2 TANK 1, D3 Tank",
                            "Marks on this print",
                            "The walk in words",
                            "1. From pump 0P1 (item 1; sheet 1, C1)",
                            "12. Ends at TANK");
        }
    }

    @Test
    void titleBlockNamesSetPathStateSheetsPageAndDate() {
        Bench bench = new Bench().roundTrip();
        bench.step = Bench.step("3", "Press down", "Y1A");
        assertThat(Prints.text(Prints.print(bench.job(), "title")))
                .contains("Test bench press")
                .contains("0P1 via 1A1 to TANK")
                .contains("Step 3 Press down; energised: Y1A")
                .contains("1, 3 rev B; 2 without revision")
                .contains("Step 3, page 1 of");
    }

    @Test
    void atRestIsSaid() {
        assertThat(Prints.text(Prints.print(new Bench().roundTrip().job(), "rest")))
                .contains("At rest, as drawn");
    }
}
