package linewalk.tests.truth;

import static linewalk.tests.Run.fine;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import linewalk.samples.DemoSet;
import linewalk.samples.style.DraftingStyle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A confidence is a promise: of what is told at 0.9 and above, at least 995 in 1,000 are right. Prints the table. */
class CalibrationTest {

    private static final double PROMISE = 0.995;

    @TempDir
    Path folder;

    private final Calibration calibration = new Calibration();

    @Test
    void sureMeansRight() throws IOException {
        for (DraftingStyle style : DraftingStyle.ALL) {
            Path drawn = folder.resolve("drawn-" + style.name());
            DemoSet.write(drawn, style);
            add("demo-" + style.name(), drawn.resolve("link-span.pdf"), drawn.resolve("truth.json"));
        }
        for (Path set : Sets.own()) {
            add(set.getFileName().toString(), set.resolve("set.pdf"), set.resolve("truth.json"));
        }
        for (String shared : Sets.SHARED) {
            Path pdf = Sets.shared(shared + ".pdf").orElse(null);
            if (pdf != null) {
                Path truth = Sets.shared(shared + ".truth.json")
                        .or(() -> Sets.shared(
                                Path.of(shared).resolveSibling("truth.json").toString()))
                        .orElseThrow();
                add(pdf.getFileName().toString(), pdf, truth);
            }
        }
        System.out.println(calibration.table());
        assertThat(calibration.things()).containsExactly("components", "joins", "mates", "ports");
        assertThat(calibration.things()).allSatisfy(what -> {
            assertThat(calibration.sure(what).told()).as(what).isGreaterThan(200);
            assertThat(calibration.sure(what).share()).as(what).isGreaterThanOrEqualTo(PROMISE);
        });
    }

    private void add(String set, Path pdf, Path truth) throws IOException {
        Path made = Files.createDirectories(folder.resolve(set));
        fine("import", pdf, "--into", made);
        calibration.add(new Truth(Sets.json(truth)), fine("export", made).json());
    }
}
