package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The file itself: sound, titled, and the same for the same job. */
class PdfSoundnessTest {

    @TempDir
    Path folder;

    private PrintJob job(Look look) {
        Bench bench = new Bench().roundTrip().drawnTo(folder.resolve("bench.pdf"), 0);
        bench.look = look;
        return bench.job();
    }

    @Test
    void passesAnIndependentCheck() throws Exception {
        assumeTrue(runs("qpdf"), "skipped: qpdf is not installed");
        for (Look look : Look.values()) {
            Prints.print(job(look), "sound-" + look);
            assertThat(said("qpdf", "--check", "target/prints/sound-" + look + ".pdf"))
                    .contains("No syntax or stream encoding errors");
        }
    }

    @Test
    void embedsItsTypeface() throws Exception {
        assumeTrue(runs("pdffonts"), "skipped: pdffonts is not installed");
        Prints.print(job(Look.DRAWN), "fonts");
        List<String> rows =
                said("pdffonts", "target/prints/fonts.pdf").lines().skip(2).toList();
        // the columns after the encoding are: embedded, subset, to Unicode
        assertThat(rows).isNotEmpty().allMatch(r -> r.matches(".*LiberationSans .* yes yes yes .*"));
    }

    @Test
    void tableAndWalkAreFoundInOrderByAnotherProgram() throws Exception {
        assumeTrue(runs("pdftotext"), "skipped: pdftotext is not installed");
        for (Look look : Look.values()) {
            Prints.print(job(look), "order");
            assertThat(said("pdftotext", "-raw", "target/prints/order.pdf", "-").replaceAll("\\s+", " "))
                    .containsSubsequence(
                            "Parts on this path",
                            "1 0P1",
                            "3 1V1",
                            "4 1A1",
                            "2 TANK",
                            "The walk in words",
                            "1. From pump 0P1",
                            "2. ",
                            "12. Ends at TANK");
        }
    }

    private static String said(String... command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(said).isZero();
        return said;
    }

    @Test
    void isTheSameForTheSameJob() {
        for (Look look : Look.values()) {
            PrintJob job = job(look);
            assertThat(Prints.print(job, "same-1")).isEqualTo(Prints.print(job, "same-2"));
        }
    }

    @Test
    void hasATitle() throws IOException {
        try (PDDocument doc = Loader.loadPDF(Prints.print(job(Look.DRAWN), "title"))) {
            assertThat(doc.getDocumentInformation().getTitle()).isEqualTo("Test bench press: 0P1 via 1A1 to TANK");
        }
    }

    private static boolean runs(String program) throws IOException, InterruptedException {
        return new ProcessBuilder("sh", "-c", "command -v " + program)
                        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                        .start()
                        .waitFor()
                == 0;
    }
}
