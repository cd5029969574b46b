package linewalk.tests;

import static linewalk.tests.Run.fine;
import static linewalk.tests.Run.linewalk;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pages that are unlike a drawing sheet, or too like each other, are read all the same. */
class OddPageTest {

    @TempDir
    Path folder;

    private Path set() {
        return folder.resolve("set");
    }

    @Test
    void aPageWithoutAFrameReadsOn() {
        Path file = Pdfs.oneLine(folder.resolve("bare.pdf"));
        assertThat(fine("import", file, "--into", set()).out()).contains("1 sheets");
        Run check = fine("check", set());
        assertThat(check.out()).contains("sheet-unnumbered");
        assertThat(fine("export", set()).json().at("/sheets/0/zones").isNull()).isTrue();
    }

    @Test
    void aBlankPageReads() {
        Path file = Pdfs.onePage(folder.resolve("blank.pdf"), 842, 595, page -> {});
        assertThat(fine("import", file, "--into", set()).out()).contains("0 references", "0 components", "0 lines");
    }

    @Test
    void theLargestPageThatPdfAllowsReads() {
        Path file = Pdfs.onePage(folder.resolve("large.pdf"), 14_400, 14_400, page -> {
            page.addRect(100, 100, 14_200, 14_200);
            page.moveTo(100, 100);
            page.lineTo(14_300, 7_000);
            page.stroke();
        });
        fine("import", file, "--into", set());
        assertThat(fine("export", set()).json().at("/sheets/0/widthPt").asDouble())
                .isEqualTo(14_400);
    }

    @Test
    void twoSheetsOfOneNameAreTold() throws IOException {
        Path file = Pdfs.noise(folder.resolve("two.pdf"), 2);
        fine("import", file, "--into", set());
        Files.writeString(set().resolve("tags.json"), """
                {"tags": [{"tag": "sheet", "page": 1, "name": "3"}, {"tag": "sheet", "page": 2, "name": "3"}]}
                """);
        Run check = linewalk("check", set());
        assertThat(check.out()).contains("warning  sheet-twice");
        assertThat(check.status()).as("warnings alone are no error").isZero();
    }

    @Test
    void aWholeSetImportedTwiceIsTold() throws IOException {
        Path drawn = Path.of("src/test/resources/sets/lock-gate/set.pdf");
        Path again = Files.copy(drawn, folder.resolve("again.pdf"), StandardCopyOption.REPLACE_EXISTING);
        fine("import", drawn, again, "--into", set());
        Run check = linewalk("check", set());
        assertThat(check.out().lines().filter(l -> l.strip().startsWith("warning  sheet-twice")))
                .hasSizeGreaterThanOrEqualTo(10);
        assertThat(check.status()).as("the drawings' own errors remain").isEqualTo(1);
    }
}
