package linewalk.tests.quality;

import static linewalk.tests.Run.fine;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import linewalk.tests.truth.Sets;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Prints of the demo and of a set beside the repository, measured against what they have reached. */
class PrintQualityTest {

    private static final Ratchet RATCHET = Ratchet.checkedIn();

    @TempDir
    static Path folder;

    @TestFactory
    Stream<DynamicTest> theDemo() {
        Path set = folder.resolve("demo");
        fine("demo", set);
        return tests(View.DEMO, set);
    }

    /** Drawn by others; skipped where it is missing. */
    @TestFactory
    Stream<DynamicTest> setD() throws IOException {
        Optional<Path> found = Sets.shared("set-d");
        Assumptions.assumeTrue(found.isPresent(), "shared/drawings/set-d is not there");
        Path set = folder.resolve("set-d");
        fine("import", found.get().resolve("set-d.pdf"), "--into", set);
        for (String file : List.of("cycle.csv", "parts.csv")) {
            Files.copy(found.get().resolve(file), set.resolve(file));
        }
        return tests(View.SET_D, set);
    }

    private static Stream<DynamicTest> tests(List<View> views, Path set) {
        System.out.println(Quality.head());
        return views.stream()
                .map(v -> DynamicTest.dynamicTest(v.name(), () -> {
                    Quality quality = v.measured(set, folder);
                    System.out.println(quality.row(v.name()));
                    RATCHET.gains(v.name(), quality.figures())
                            .forEach(g -> System.out.println("the row may fall: " + g));
                    assertThat(RATCHET.faults(v.name(), quality.figures()))
                            .as(() -> String.join(
                                    "\n",
                                    quality.overlaps().stream()
                                            .map(Overlap::toString)
                                            .toList()))
                            .isEmpty();
                }));
    }
}
