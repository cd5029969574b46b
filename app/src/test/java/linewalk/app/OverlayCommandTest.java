package linewalk.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** What the overlay command takes and refuses; the set is two empty pages. */
class OverlayCommandTest {

    @TempDir
    Path folder;

    private Path out;
    private final StringWriter said = new StringWriter();

    @BeforeEach
    void twoPages() throws IOException {
        try (PDDocument doc = new PDDocument()) {
            doc.addPage(new PDPage(PDRectangle.A4));
            doc.addPage(new PDPage(PDRectangle.A4));
            doc.save(folder.resolve("pages.pdf").toFile());
        }
        Files.writeString(folder.resolve("set.json"), "{\"sources\": [\"pages.pdf\"]}");
        out = folder.resolve("read.pdf");
    }

    private int overlay(String... arguments) {
        CommandLine line = Main.commandLine();
        line.setErr(new PrintWriter(said, true));
        String[] all = new String[arguments.length + 2];
        all[0] = "overlay";
        all[1] = folder.toString();
        System.arraycopy(arguments, 0, all, 2, arguments.length);
        return line.execute(all);
    }

    private int sheetsWritten() throws IOException {
        try (PDDocument doc = Loader.loadPDF(out.toFile())) {
            int n = 0;
            for (var ignored : doc.getDocumentCatalog().getDocumentOutline().children()) {
                n++;
            }
            return n;
        }
    }

    @Test
    void printsAllSheets() throws IOException {
        assertThat(overlay("--out", out.toString())).isZero();
        assertThat(sheetsWritten()).isEqualTo(2);
    }

    @Test
    void printsTheSheetsNamed() throws IOException {
        assertThat(overlay("--out", out.toString(), "--sheet", "2")).isZero();
        assertThat(sheetsWritten()).isEqualTo(1);
    }

    @Test
    void saysWhichSheetsThereAre() {
        assertThat(overlay("--out", out.toString(), "--sheet", "7")).isEqualTo(2);
        assertThat(said.toString()).contains("no sheet 7; its sheets are 1, 2").hasLineCount(1);
        assertThat(out).doesNotExist();
    }

    @Test
    void neverWritesOverADrawing() throws IOException {
        byte[] before = Files.readAllBytes(folder.resolve("pages.pdf"));
        assertThat(overlay("--out", folder.resolve("pages.pdf").toString())).isEqualTo(2);
        assertThat(said.toString()).contains("one of the set's own drawings");
        assertThat(Files.readAllBytes(folder.resolve("pages.pdf"))).isEqualTo(before);
    }

    @Test
    void writesPdfOnly() {
        assertThat(overlay("--out", folder.resolve("read.png").toString())).isEqualTo(2);
        assertThat(said.toString()).contains("overlays are PDF files");
    }
}
