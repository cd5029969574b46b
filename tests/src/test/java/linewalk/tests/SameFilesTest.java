package linewalk.tests;

import static linewalk.tests.Run.fine;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import linewalk.samples.DemoSet;
import linewalk.samples.style.DraftingStyle;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * The same sources give the same files, byte for byte. Two processes read the demo and print it, since the orders of
 * hashed sets differ between processes only; how objects are hashed is another in each as well.
 */
class SameFilesTest {

    private static final List<String> ACTUATOR = List.of("circuit", "--actuator", "1A1");

    /** Name of the file and the command that writes it. */
    private static final Map<String, List<String>> FILES = new TreeMap<>(Map.of(
            "path.pdf", with(List.of("trace", "--from", "0P1", "--via", "1A1", "--step", "3"), "--job-card"),
            "path.svg", List.of("trace", "--from", "4M1", "--step", "7"),
            "path-cuttings.pdf", List.of("trace", "--from", "4M1", "--step", "7", "--look", "cuttings"),
            "path-cuttings.png", List.of("trace", "--from", "0P1", "--look", "cuttings", "--dpi", "50"),
            "step.pdf", with(ACTUATOR, "--step", "3", "--job-card"),
            "step-cuttings.svg", with(ACTUATOR, "--step", "3", "--look", "cuttings"),
            "all-steps.pdf", with(ACTUATOR, "--all-steps", "--hide", "pilot,drain"),
            "pump.pdf", List.of("circuit", "--pump", "0P1", "--paper", "A1"),
            "whole.pdf", List.of("circuit", "--paper", "A0"),
            "linked.pdf", List.of("link", "--trace", "0P1", "--via", "1A1", "--step", "3")));

    @TempDir
    static Path folder;

    private static List<String> with(List<String> command, String... more) {
        return Stream.concat(command.stream(), Stream.of(more)).toList();
    }

    /** One run; arguments are the folders of the demo's sources, of the set and of the files. */
    public static void main(String[] args) throws IOException {
        Path sources = Path.of(args[0]);
        Path set = Path.of(args[1]);
        Path out = Path.of(args[2]);
        fine("import", sources.resolve("link-span.pdf"), "--into", set);
        for (String file : List.of("cycle.csv", "parts.csv")) {
            Files.copy(sources.resolve(file), set.resolve(file));
        }
        Files.writeString(out.resolve("export.json"), fine("export", set).out());
        FILES.forEach(
                (file, command) -> fine(Stream.concat(command.stream(), Stream.of(set, "--out", out.resolve(file)))
                        .toArray()));
    }

    @BeforeAll
    static void readAndPrintTwice() throws Exception {
        LocalDate day = LocalDate.now();
        DemoSet.write(folder.resolve("sources"), DraftingStyle.ISO);
        List<Process> runs = List.of(start("one", 0), start("two", 3));
        for (Process run : runs) {
            assertThat(run.waitFor()).isZero();
        }
        Assumptions.assumeTrue(day.equals(LocalDate.now()), "prints bear the date, and a new day began meanwhile");
    }

    /** @param hashing which of the ways the hash of an object is made up in; ignored by a machine that has none */
    private static Process start(String name, int hashing) throws IOException {
        Path out = Files.createDirectories(folder.resolve(name).resolve("files"));
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:+IgnoreUnrecognizedVMOptions",
                        "-XX:+UnlockExperimentalVMOptions",
                        "-XX:hashCode=" + hashing,
                        "-XX:TieredStopAtLevel=1",
                        "-Djava.awt.headless=true",
                        "-cp",
                        System.getProperty("java.class.path"),
                        SameFilesTest.class.getName(),
                        folder.resolve("sources").toString(),
                        folder.resolve(name).resolve("ramp").toString(),
                        out.toString())
                .inheritIO()
                .start();
    }

    private static List<String> names(String run) throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve(run).resolve("files"))) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void asManyFiles() throws IOException {
        assertThat(names("one")).containsAll(FILES.keySet()).contains("export.json");
        assertThat(names("two")).isEqualTo(names("one"));
    }

    @TestFactory
    Stream<DynamicTest> theSameBytes() throws IOException {
        return names("one").stream()
                .map(file -> DynamicTest.dynamicTest(file, () -> assertThat(
                                folder.resolve("two").resolve("files").resolve(file))
                        .hasSameBinaryContentAs(
                                folder.resolve("one").resolve("files").resolve(file))));
    }
}
