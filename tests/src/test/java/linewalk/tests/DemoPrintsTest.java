package linewalk.tests;

import static linewalk.tests.Run.fine;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** The demo's own prints, from the drawn sheets to the paper in the technician's hand. */
class DemoPrintsTest {

    /** Each print's path and parts that its table and its walk must name. */
    private static final Map<String, List<String>> PATHS = Map.of(
            "pump-to-tank-at-rest", List.of("0P1", "TANK"),
            "hoist-cylinder-raise", List.of("0P1", "1A1", "TANK"),
            "winch-motor-return", List.of("4M1", "TANK"));

    @TempDir
    static Path folder;

    private static final Map<Path, Print> READ = new HashMap<>();

    private static Path demo;

    @BeforeAll
    static void writeTheDemo() {
        demo = folder.resolve("demo");
        Run run = fine("demo", demo);
        assertThat(run.err()).isEmpty();
    }

    /** Read once for all tests. */
    private static Print read(Path print) {
        return READ.computeIfAbsent(print, p -> Print.of(p, demo.resolve("link-span.pdf")));
    }

    private static Stream<Path> prints() {
        return PATHS.keySet().stream().sorted().flatMap(p -> Stream.of("-drawn.pdf", "-cuttings.pdf")
                .map(look -> demo.resolve("prints").resolve(p + look)));
    }

    @Test
    void threePathsInTwoLooks() throws Exception {
        try (Stream<Path> files = Files.list(demo.resolve("prints"))) {
            assertThat(files).containsExactlyInAnyOrderElementsOf(prints().toList());
        }
    }

    @TestFactory
    Stream<DynamicTest> isSoundForAnotherProgram() {
        return prints().map(p -> DynamicTest.dynamicTest(name(p), () -> Print.isSound(p)));
    }

    private static String name(Path print) {
        return print.getFileName().toString();
    }

    @TestFactory
    Stream<DynamicTest> namesItsPartsInTableAndWalk() {
        return prints().map(p -> DynamicTest.dynamicTest(name(p), () -> {
            String text = read(p).text();
            String path = name(p).replaceFirst("-(drawn|cuttings)\\.pdf$", "");
            for (String tag : PATHS.get(path)) {
                assertThat(text.split("\\b" + tag + "\\b", -1)).as(tag).hasSizeGreaterThan(3);
            }
            assertThat(text).contains("L-1").containsPattern("sheet \\d+, [A-Z]\\d+");
        }));
    }

    @TestFactory
    Stream<DynamicTest> warnsOfWhatKills() {
        return prints().map(p -> DynamicTest.dynamicTest(name(p), () -> assertThat(read(p).text())
                .contains(
                        "Locking out is not enough",
                        "Discharge accumulators",
                        "Block every load that oil holds up",
                        "Oil under pressure goes through skin",
                        "may be wrong: check them on the machine",
                        "Local codes")));
    }

    @TestFactory
    Stream<DynamicTest> isReadableAtArmsLength() {
        return prints().map(p -> DynamicTest.dynamicTest(
                name(p),
                () -> assertThat(read(p).capitalsMm()).hasSizeGreaterThan(1000).allMatch(mm -> mm >= 2.5)));
    }

    @TestFactory
    Stream<DynamicTest> marksThePathOnTheOriginalsOwnLines() {
        return prints().filter(p -> name(p).endsWith("-cuttings.pdf"))
                .map(p -> DynamicTest.dynamicTest(name(p), () -> assertThat(read(p).overlays())
                        .as("more than the legend's sample")
                        .isGreaterThan(5)));
    }
}
