package linewalk.tests;

import static linewalk.tests.Run.fine;
import static linewalk.tests.Run.linewalk;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One question in every step of the machine's cycle. */
class AllStepsTest {

    @TempDir
    static Path folder;

    private static Path demo;

    @BeforeAll
    static void writeTheDemo() {
        demo = folder.resolve("demo");
        fine("demo", demo);
    }

    @Test
    void everyStepIsListedInTheChartsOrder() {
        List<String> steps = new ArrayList<>();
        JsonNode answer = fine("trace", demo, "--from", "0P2", "--all-steps", "--format", "json")
                .json();
        answer.forEach(a -> steps.add(a.get("step").asText()));
        assertThat(steps)
                .containsExactly(
                        "Standby, pins set",
                        "Withdraw lock pins",
                        "Raise span",
                        "Lower span",
                        "Raise end flap",
                        "Lower end flap",
                        "Heave winch",
                        "Veer winch");
    }

    @Test
    void eachLineOnThePathHasItsClass() {
        JsonNode answer = fine(
                        "trace", demo, "--from", "0P1", "--via", "1A1", "--step", "Raise span", "--format", "json")
                .json();
        Set<String> classes = new TreeSet<>();
        answer.get("classes").forEach(c -> classes.add(c.asText()));
        assertThat(classes).containsExactly("return", "supply");
    }

    @Test
    void onePrintHasABookmarkForEachStep() throws IOException {
        Path print = folder.resolve("cycle.pdf");
        fine("trace", demo, "--from", "0P1", "--all-steps", "--out", print);
        try (PDDocument pdf = Loader.loadPDF(print.toFile())) {
            List<String> titles = new ArrayList<>();
            int page = -1;
            for (PDOutlineItem i : pdf.getDocumentCatalog().getDocumentOutline().children()) {
                titles.add(i.getTitle());
                int at = pdf.getPages().indexOf(i.findDestinationPage(pdf));
                assertThat(at).as(i.getTitle()).isGreaterThan(page);
                page = at;
            }
            assertThat(titles).hasSize(8).contains("Raise span");
        }
    }

    @Test
    void aStepAndAllStepsAreOneTooMany() {
        Refusal.isWrongUse(linewalk("trace", demo, "--from", "0P1", "--step", "1", "--all-steps"), "--all-steps");
    }

    @Test
    void withoutAChartThereAreNoSteps() throws IOException {
        Path bare = folder.resolve("bare");
        fine("demo", bare);
        Files.delete(bare.resolve("cycle.csv"));
        Refusal.isWrongUse(linewalk("trace", bare, "--from", "0P1", "--all-steps"), "no cycle.csv or cycle.xlsx");
    }
}
