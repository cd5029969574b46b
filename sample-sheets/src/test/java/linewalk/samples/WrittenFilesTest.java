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

    @ParameterizedTest
    @MethodSource("linewalk.samples.Demo#all")
    void pagesShowThePaperOfTheStyle(Demo demo) throws IOException {
        try (PDDocument document = Loader.loadPDF(demo.pdf().toFile())) {
            assertThat(document.getNumberOfPages())
                    .isEqualTo(demo.list("sheets").size());
            document.getPages().forEach(page -> {
                boolean turned = page.getRotation() == 90;
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
        demo.tags().get("tags").forEach(tag -> {
            if (tag.path("how").asText().equals("solenoid")) {
                solenoids.add(tag.get("by").asText());
            }
        });
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
