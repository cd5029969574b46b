package linewalk.tests;

import static linewalk.tests.Run.fine;
import static linewalk.tests.Run.linewalk;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that cannot be read: said in one line, and no set is made or changed. */
class BadFileTest {

    @TempDir
    Path folder;

    private void isRefused(Path file, String... words) {
        Path fresh = folder.resolve("fresh");
        Refusal.isWrongUse(linewalk("import", file, "--into", fresh), words);
        assertThat(fresh).doesNotExist();
        Path made = folder.resolve("made");
        fine("import", Pdfs.oneLine(folder.resolve("good.pdf")), "--into", made);
        Map<String, String> before = Refusal.files(made);
        Refusal.isWrongUse(linewalk("import", file, "--into", made), words);
        assertThat(Refusal.files(made)).isEqualTo(before);
    }

    @Test
    void noFile() {
        isRefused(folder.resolve("gone.pdf"), "gone.pdf", "no file");
    }

    @Test
    void aFolder() {
        isRefused(folder, folder.toString());
    }

    @Test
    void anEmptyFile() {
        isRefused(Pdfs.write(folder.resolve("empty.pdf"), ""), "empty.pdf", "not a PDF");
    }

    @Test
    void notAPdf() {
        isRefused(Pdfs.write(folder.resolve("text.pdf"), "pump 0P1\n".repeat(1000)), "text.pdf", "not a PDF");
    }

    @Test
    void cutShort() throws IOException {
        byte[] whole = Files.readAllBytes(Pdfs.noise(folder.resolve("whole.pdf"), 2));
        Path cut = folder.resolve("cut.pdf");
        Files.write(cut, Arrays.copyOf(whole, whole.length / 2));
        isRefused(cut, "cut.pdf", "cut short");
    }

    /** Copied in part over an older file: the end looks right and belongs to something else. */
    @Test
    void aHeadAndAnEndWithNothingBetween() {
        isRefused(Pdfs.write(folder.resolve("hull.pdf"), "%PDF-1.7\nnothing\n%%EOF\n"), "hull.pdf");
    }

    @Test
    void encryptedWithAPassword() {
        isRefused(Pdfs.encrypted(folder.resolve("locked.pdf")), "locked.pdf", "password");
    }

    @Test
    void noPages() {
        Path none = Pdfs.ofObjects(
                folder.resolve("none.pdf"),
                "<< /Type /Catalog /Pages 2 0 R >>",
                "<< /Type /Pages /Kids [] /Count 0 >>");
        isRefused(none, "none.pdf", "no pages");
    }

    @Test
    void oneBadFileAmongGoodOnesLeavesAllOut() {
        Path good = Pdfs.oneLine(folder.resolve("good.pdf"));
        Path bad = Pdfs.write(folder.resolve("bad.pdf"), "no drawing");
        Path set = folder.resolve("set");
        Refusal.isWrongUse(linewalk("import", good, bad, "--into", set), "bad.pdf");
        assertThat(set.resolve("set.json")).doesNotExist();
    }
}
