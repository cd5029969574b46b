package linewalk.tests;

import static linewalk.tests.Run.fine;
import static linewalk.tests.Run.linewalk;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files made to do harm end in time, with a clear word. */
class HostileFileTest {

    private static final Duration SENSIBLE = Duration.ofSeconds(60);
    private static final String CATALOGUE = "<< /Type /Catalog /Pages 2 0 R >>";

    @TempDir
    Path folder;

    private Run imported(String... objects) {
        Path file = Pdfs.ofObjects(folder.resolve("trap.pdf"), objects);
        return assertTimeoutPreemptively(SENSIBLE, () -> linewalk("import", file, "--into", folder.resolve("set")));
    }

    private static String stream(String content) {
        return "<< /Length " + content.length() + " >>\nstream\n" + content + "\nendstream";
    }

    private Run importedPage(String content) {
        return imported(
                CATALOGUE,
                "<< /Type /Pages /Kids [3 0 R] /Count 1 >>",
                "<< /Type /Page /Parent 2 0 R /MediaBox [0 0 1191 842] /Contents 4 0 R >>",
                stream(content));
    }

    @Test
    void aPageTreeThatLeadsBackToItself() {
        Refusal.isWrongUse(
                imported(
                        CATALOGUE,
                        "<< /Type /Pages /Kids [3 0 R] /Count 1 >>",
                        "<< /Type /Pages /Kids [2 0 R] /Count 1 /Parent 2 0 R >>"),
                "trap.pdf",
                "page 1");
        assertThat(folder.resolve("set")).doesNotExist();
    }

    @Test
    void aPageThatIsItsOwnGrandparent() {
        Run run = imported(
                CATALOGUE,
                "<< /Type /Pages /Kids [3 0 R] /Count 1 /Parent 4 0 R >>",
                "<< /Type /Page /Parent 4 0 R >>",
                "<< /Type /Pages /Kids [3 0 R] /Count 1 /Parent 2 0 R >>");
        assertThat(run.status()).isIn(0, 2);
    }

    @Test
    void aDrawingThatPaintsItself() {
        Run run = imported(
                CATALOGUE,
                "<< /Type /Pages /Kids [3 0 R] /Count 1 >>",
                "<< /Type /Page /Parent 2 0 R /Contents 4 0 R /Resources << /XObject << /F 5 0 R >> >> >>",
                stream("/F Do"),
                "<< /Type /XObject /Subtype /Form /BBox [0 0 9 9] /Resources << /XObject << /F 5 0 R >> >> /Length 5 >>"
                        + "\nstream\n/F Do\nendstream");
        assertThat(run.status()).isZero();
    }

    /** Told as unread and left empty: part of a page would be taken for all of it. */
    @Test
    void aPathOfAMillionPoints() {
        Run run = importedPage("0 0 m " + "5 5 l 9 2 l ".repeat(500_000) + "S");
        assertThat(run.status()).isZero();
        Run check = fine("check", folder.resolve("set"));
        assertThat(check.out()).contains("warning  unread").contains("this page was not read");
    }

    @Test
    void aMillionUnfinishedThings() {
        assertThat(importedPage("q [ ( ".repeat(1_000_000)).status()).isZero();
    }

    @Test
    void numbersBeyondAllMeasure() {
        assertThat(importedPage("1e38 0 0 1e-38 0 0 cm 0 0 m 1e38 1e38 l S 0 0 0 0 0 0 cm 0 0 m 5 5 l S 9 w [1e-9] 0 d")
                        .status())
                .isZero();
    }
}
