package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;
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
        assumeTrue(hasQpdf(), "skipped: qpdf is not installed");
        for (Look look : Look.values()) {
            Prints.print(job(look), "sound-" + look);
            Process check = new ProcessBuilder("qpdf", "--check", "target/prints/sound-" + look + ".pdf")
                    .redirectErrorStream(true)
                    .start();
            String said = new String(check.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
            assertThat(check.waitFor()).as(said).isZero();
        }
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

    private static boolean hasQpdf() throws InterruptedException {
        try {
            return new ProcessBuilder("qpdf", "--version")
                            .redirectErrorStream(true)
                            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                            .start()
                            .waitFor()
                    == 0;
        } catch (IOException e) {
            return false;
        }
    }
}
