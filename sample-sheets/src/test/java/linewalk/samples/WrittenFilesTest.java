package linewalk.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import linewalk.samples.style.DraftingStyle;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Five files, the same bytes each time, and pages set up as the style says. */
class WrittenFilesTest {
    @ParameterizedTest
    @MethodSource("linewalk.samples.Demo#all")
    void sameStyleSameBytes(Demo demo) throws IOException {
        Path again = Files.createTempDirectory("demo-again-");
        DemoSet.write(again, demo.style());
        try (Stream<Path> files = Files.list(again)) {
            List<Path> written = files.toList();
            assertThat(written).hasSize(5);
            for (Path file : written) {
                assertThat(file).hasSameBinaryContentAs(demo.folder().resolve(file.getFileName()));
            }
        }
    }

    /** Hash order differs between runs of the machine, not within one. */
    @Test
    void sameBytesInAnotherRun(@TempDir Path folder) throws Exception {
        Path java = Path.of(System.getProperty("java.home"), "bin", "java");
        Process process = new ProcessBuilder(
                        java.toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        DemoSet.class.getName(),
                        folder.toString())
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        assertThat(process.waitFor()).isZero();
        Demo.all().forEach(demo -> {
            for (String name : List.of("link-span.pdf", "truth.json", "tags.json", "cycle.csv", "parts.csv")) {
                assertThat(folder.resolve(demo.style().name()).resolve(name))
                        .hasSameBinaryContentAs(demo.folder().resolve(name));
            }
        });
    }

    @ParameterizedTest
    @MethodSource("linewalk.samples.Demo#all")
    void pagesShowThePaperOfTheStyle(Demo demo) throws IOException {
        try (PDDocument document = Loader.loadPDF(demo.pdf().toFile())) {
            assertThat(document.getNumberOfPages())
                    .isEqualTo(demo.list("sheets").size());
            document.getPages().forEach(page -> {
                boolean turned = page.getRotation() % 180 == 90;
                double across = turned
                        ? page.getCropBox().getHeight()
                        : page.getCropBox().getWidth();
                assertThat(across * page.getUserUnit() * 25.4 / 72)
                        .isCloseTo(demo.style().widthMm(), org.assertj.core.data.Offset.offset(0.01));
            });
        }
    }

    @ParameterizedTest
    @MethodSource("linewalk.samples.Demo#all")
    void cycleChartNamesEverySolenoidAndStep(Demo demo) throws IOException {
        List<String> lines = Files.readAllLines(demo.folder().resolve("cycle.csv"));
        TreeSet<String> solenoids = new TreeSet<>();
        demo.list("states").forEach(state -> solenoids.addAll(Demo.textsOf(state.get("energised"))));
        assertThat(lines.get(0)).isEqualTo("step,name," + String.join(",", solenoids));
        assertThat(lines).hasSize(demo.list("states").size() + 1);
    }

    @Test
    void writesNothingWhereItCannot(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("taken"), "a file");
        assertThatThrownBy(() -> DemoSet.write(file, DraftingStyle.ISO)).isInstanceOf(IOException.class);
        assertThat(folder).isDirectoryContaining("glob:**taken");
        assertThat(file).hasContent("a file");
    }
}
