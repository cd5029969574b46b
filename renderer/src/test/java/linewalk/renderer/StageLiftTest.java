package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Long paths over six large sheets; the prints are left in target/prints to be looked at. */
class StageLiftTest {

    @ParameterizedTest
    @EnumSource(Look.class)
    void printsEveryPathOfTheSet(Look look) throws IOException {
        assumeTrue(StageLift.folder() != null, "skipped: shared/drawings/set-d is missing");
        StageLift lift = StageLift.load();
        for (int path : new int[] {0, 4, 5, 7, 11}) {
            byte[] pdf = print(lift.job(path, look, Paper.A3), look + "-" + path);
            try (PDDocument doc = Loader.loadPDF(pdf)) {
                assertThat(doc.getNumberOfPages()).isBetween(1, 12);
            }
        }
    }

    @Test
    void printsOnSmallPaper() throws IOException {
        assumeTrue(StageLift.folder() != null, "skipped: shared/drawings/set-d is missing");
        StageLift lift = StageLift.load();
        for (Look look : Look.values()) {
            assertThat(print(lift.job(3, look, Paper.A4), look + "-a4")).isNotEmpty();
        }
    }

    private static byte[] print(PrintJob job, String name) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        TracePrint.write(job, out);
        Path folder = Files.createDirectories(Path.of("target/prints"));
        Files.write(folder.resolve(name + ".pdf"), out.toByteArray());
        return out.toByteArray();
    }
}
