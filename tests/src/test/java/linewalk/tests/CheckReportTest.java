package linewalk.tests;

import static linewalk.tests.Run.fine;
import static linewalk.tests.Run.linewalk;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import linewalk.samples.DemoSet;
import linewalk.samples.style.DraftingStyle;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationText;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One check of the demo, told in every format; findings that are kept; exit statuses. */
class CheckReportTest {

    @TempDir
    Path folder;

    private Path set;
    private int count;

    @BeforeEach
    void read() throws IOException {
        set = folder.resolve("demo");
        DemoSet.write(set, DraftingStyle.ALL.get(0));
        Files.delete(set.resolve("tags.json"));
        fine("import", set.resolve("link-span.pdf"), "--into", set);
        Run json = linewalk("check", set, "--format", "json");
        assertThat(json.status()).isEqualTo(1);
        count = json.json().size();
        assertThat(count).isGreaterThan(4);
    }

    private String id(String rule) {
        for (var f : linewalk("check", set, "--format", "json").json()) {
            if (f.get("rule").asText().equals(rule)) {
                return f.get("id").asText();
            }
        }
        throw new AssertionError("no finding " + rule);
    }

    @Test
    void textBySheetAndZone() {
        Run text = linewalk("check", set);
        assertThat(text.status()).isEqualTo(1);
        assertThat(text.out())
                .contains("Sheet 10: ")
                .contains("likely remedy: ")
                .contains("[" + id("next-zone") + "]");
        assertThat(text.out().lines().reduce((a, b) -> b).orElseThrow()).matches("13 sheets, \\d+ references: .*");
    }

    @Test
    void csvHasARowAFinding() {
        Run csv = linewalk("check", set, "--format", "csv");
        assertThat(csv.status()).isEqualTo(1);
        assertThat(csv.out().lines()).hasSize(count + 1);
        assertThat(csv.out().lines().findFirst().orElseThrow()).startsWith("id,severity,rule,");
    }

    @Test
    void htmlNeedsNothingElse() throws IOException {
        Path file = folder.resolve("check.html");
        assertThat(linewalk("check", set, "--format", "html", "--out", file).status())
                .isEqualTo(1);
        String page = Files.readString(file);
        assertThat(page.split("<article", -1)).hasSize(count + 1);
        assertThat(page.split("src=\"data:image/png;base64,", -1).length).isGreaterThan(count);
        assertThat(page).doesNotContain("http://", "https://", "src=\"/", "<script", "<link");
    }

    @Test
    void notesInTheOriginal() throws IOException {
        Path file = folder.resolve("notes.pdf");
        assertThat(linewalk("check", set, "--format", "pdf", "--out", file).status())
                .isEqualTo(1);
        Print.isSound(file);
        byte[] before = Files.readAllBytes(set.resolve("link-span.pdf"));
        assertThat(Arrays.copyOf(Files.readAllBytes(file), before.length)).isEqualTo(before);
        int notes = 0;
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            for (PDPage page : document.getPages()) {
                for (PDAnnotation a : page.getAnnotations()) {
                    notes += a instanceof PDAnnotationText ? 1 : 0;
                }
            }
        }
        assertThat(notes).isEqualTo(count);
    }

    @Test
    void aKeptFindingNoLongerCounts() throws IOException {
        String id = id("next-zone");
        Run kept = linewalk("check", set, "--keep", id, "--reason", "moved on site");
        assertThat(kept.out()).contains("Kept as they are", "moved on site", "1 kept");
        assertThat(Files.readString(set.resolve("tags.json"))).contains("\"keep\"", id);
        assertThat(linewalk("check", set).out()).contains("moved on site");
    }

    @Test
    void weightsDecideTheExitStatus() throws IOException {
        Files.writeString(
                set.resolve("set.json"),
                "{\"sources\": [\"link-span.pdf\"], \"rules\": {"
                        + "\"next-zone\": \"note\", \"nothing-there\": \"off\", \"not-returned\": \"warning\","
                        + " \"no-such-sheet\": \"warning\"}}");
        assertThat(linewalk("check", set).status()).isZero();
        Files.writeString(
                set.resolve("set.json"), "{\"sources\": [\"link-span.pdf\"], \"rules\": {\"nextzone\": \"off\"}}");
        Refusal.isWrongUse(linewalk("check", set), "nextzone");
    }

    @Test
    void wrongUse() {
        Refusal.isWrongUse(linewalk("check", set, "--format", "pdf"), "--out");
        Refusal.isWrongUse(linewalk("check", set, "--keep", "0000"), "--reason");
        Refusal.isWrongUse(linewalk("check", set, "--keep", "0000", "--reason", "x"), "0000");
        Refusal.isWrongUse(linewalk("check", set, "--out", folder.resolve("x.pdf")), "--format pdf");
    }
}
