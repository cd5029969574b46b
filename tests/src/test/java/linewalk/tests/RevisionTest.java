package linewalk.tests;

import static linewalk.tests.Run.fine;
import static linewalk.tests.Run.linewalk;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a person says wins over what was read, and stays when the set is read again and when its drawing is revised. */
class RevisionTest {

    @TempDir
    Path folder;

    private Path pdf;
    private Path set;

    @BeforeEach
    void importFirstIssue() {
        pdf = TwoSheets.firstIssue().drawTo(folder.resolve("two.pdf"));
        set = folder.resolve("set");
        fine("import", pdf, "--into", set);
    }

    private void tag(String tag) throws IOException {
        Files.writeString(set.resolve("tags.json"), "{\"tags\": [" + tag.replace('\'', '"') + "]}");
    }

    private void importAgain() {
        fine("import", pdf, "--into", set);
    }

    /** The reference on the first sheet. */
    private JsonNode reference() {
        JsonNode references = fine("export", set).json().get("references");
        assertThat(references).hasSize(2);
        return references.get(0);
    }

    private String check() {
        return linewalk("check", set).out();
    }

    private static final String PUT_RIGHT =
            "{'tag': 'reference', 'page': 1, 'xPt': 630, 'yPt': 295, 'saw': 'TO SHEET 2', 'targets': '7/C4'}";

    private void tagWins() {
        JsonNode r = reference();
        assertThat(r.get("origin").asText()).isEqualTo("hand");
        assertThat(r.at("/targets/0/sheet").asText()).isEqualTo("7");
        assertThat(r.at("/targets/0/zone").asText()).isEqualTo("C4");
        assertThat(check()).contains("no-such-sheet").doesNotContain("tag-unplaced");
    }

    @Test
    void theFirstIssueIsReadWithoutTags() {
        assertThat(reference().get("origin").asText()).isEqualTo("text");
        assertThat(reference().at("/targets/0/sheet").asText()).isEqualTo("2");
        assertThat(reference().get("mates")).hasSize(1);
    }

    @Test
    void theTagWins() throws IOException {
        tag(PUT_RIGHT);
        tagWins();
    }

    @Test
    void itWinsAfterReadingAgain() throws IOException {
        tag(PUT_RIGHT);
        try (Stream<Path> readings = Files.list(set.resolve(".read"))) {
            readings.forEach(r -> r.toFile().delete());
        }
        Files.delete(set.resolve(".read"));
        importAgain();
        tagWins();
    }

    @Test
    void itWinsOnARevisionThatMovedTheReferenceALittle() throws IOException {
        tag(PUT_RIGHT);
        new TwoSheets(3, "TO SHEET 2").drawTo(pdf);
        importAgain();
        tagWins();
        assertThat(reference().get("xPt").asDouble()).isGreaterThan(610);
    }

    @Test
    void aMateUntiedByHandStaysUntiedOverTheRevision() throws IOException {
        String untied = "'tag': 'mate', 'page': 1, 'xPt': 630, 'yPt': 295, 'toPage': 2, 'toXPt': 330, 'toYPt': 295";
        assertThat(reference().get("mates")).hasSize(1);
        tag("{" + untied + ", 'absent': true}");
        assertThat(reference().get("mates")).isEmpty();
        new TwoSheets(3, "TO SHEET 2").drawTo(pdf);
        importAgain();
        assertThat(reference().get("mates")).isEmpty();
        assertThat(check()).doesNotContain("tag-unplaced");
    }

    @Test
    void aRevisionThatChangedTheTextIsToldWithBothTexts() throws IOException {
        tag(PUT_RIGHT);
        new TwoSheets(0, "TO SHEET 9").drawTo(pdf);
        importAgain();
        assertThat(check()).contains("warning  tag-unplaced").contains("it saw 'TO SHEET 2', but 'TO SHEET 9'");
        assertThat(reference().at("/targets/0/sheet").asText()).isEqualTo("9");
    }

    @Test
    void aTagForWhatTheRevisionTookAwayIsTold() throws IOException {
        tag("{'tag': 'reference', 'page': 1, 'xPt': 630, 'yPt': 295, 'saw': 'TO SHEET 2', 'absent': true}");
        assertThat(check()).doesNotContain("tag-unplaced");
        new TwoSheets(-400, "").drawTo(pdf);
        importAgain();
        assertThat(check()).contains("warning  tag-unplaced");
    }

    @Test
    void aTagForAPageThatIsGoneIsTold() throws IOException {
        tag("{'tag': 'sheet', 'page': 3, 'name': '12'}");
        assertThat(check()).contains("warning  tag-unplaced");
    }
}
