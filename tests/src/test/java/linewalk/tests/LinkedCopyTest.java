package linewalk.tests;

import static linewalk.tests.Run.fine;
import static linewalk.tests.Run.linewalk;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import linewalk.samples.DemoSet;
import linewalk.samples.style.DraftingStyle;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitRectangleDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** The linked copy: the original's bytes first, a link on each reference with a mate, an outline, a path to hide. */
class LinkedCopyTest {

    static final java.util.List<DraftingStyle> STYLES = DraftingStyle.ALL;

    @TempDir
    Path folder;

    private Path original;

    private Path set(DraftingStyle style) throws IOException {
        Path drawn = folder.resolve("drawn");
        DemoSet.write(drawn, style);
        original = drawn.resolve("link-span.pdf");
        Path set = folder.resolve("set");
        fine("import", original, "--into", set);
        return set;
    }

    @ParameterizedTest
    @FieldSource("STYLES")
    void everyMateCanBeReachedAndTheOriginalStandsFirst(DraftingStyle style) throws IOException {
        Path set = set(style);
        Path linked = folder.resolve("linked.pdf");
        fine("link", set, "--out", linked);
        byte[] before = Files.readAllBytes(original);
        byte[] after = Files.readAllBytes(linked);
        assertThat(Arrays.copyOf(after, before.length)).isEqualTo(before);
        Print.isSound(linked);
        JsonNode export = fine("export", set).json();
        Map<String, JsonNode> references = StreamSupport.stream(
                        export.get("references").spliterator(), false)
                .collect(Collectors.toMap(r -> r.get("id").asText(), r -> r));
        try (PDDocument document = Loader.loadPDF(linked.toFile())) {
            for (JsonNode r : references.values()) {
                for (JsonNode m : r.get("mates")) {
                    reaches(document, r, references.get(m.asText()));
                }
            }
        }
    }

    private static void reaches(PDDocument document, JsonNode r, JsonNode mate) throws IOException {
        boolean there = false;
        for (PDAnnotation a : document.getPage(r.get("page").asInt() - 1).getAnnotations()) {
            there |= a instanceof PDAnnotationLink link
                    && link.getContents()
                            .contains("'" + mate.get("text").asText() + "' on sheet "
                                    + mate.get("sheet").asText())
                    && link.getDestination() instanceof PDPageFitRectangleDestination view
                    && view.retrievePageNumber() == mate.get("page").asInt() - 1;
        }
        assertThat(there).as("a link from %s to %s", r, mate).isTrue();
    }

    @Test
    void theOutlineNamesEverySheet() throws IOException {
        Path linked = folder.resolve("linked.pdf");
        fine("link", set(STYLES.get(0)), "--out", linked);
        try (PDDocument document = Loader.loadPDF(linked.toFile())) {
            int sheets = 0;
            for (PDOutlineItem item :
                    document.getDocumentCatalog().getDocumentOutline().children()) {
                sheets++;
                assertThat(item.getTitle()).startsWith("Sheet " + sheets + ": ");
            }
            assertThat(sheets).isEqualTo(document.getNumberOfPages());
        }
    }

    @Test
    void aPathIsALayerOfItsOwn() throws IOException {
        Path set = set(STYLES.get(0));
        Path linked = folder.resolve("linked.pdf");
        fine("link", set, "--trace", "0P1", "--out", linked);
        Print.isSound(linked);
        try (PDDocument document = Loader.loadPDF(linked.toFile())) {
            assertThat(document.getDocumentCatalog().getOCProperties().getGroupNames())
                    .containsExactly("Path 0P1 to TANK");
            long marks = document.getPage(0).getAnnotations().stream()
                    .filter(a -> a.getCOSObject().getItem(COSName.OC) != null)
                    .count();
            assertThat(marks).isPositive();
        }
    }

    @Test
    void aSourceIsNeverWrittenTo() throws IOException {
        Path set = set(STYLES.get(0));
        Refusal.isWrongUse(linewalk("link", set, "--out", original), "one of the set's own drawings");
        Refusal.isWrongUse(linewalk("link", set, "--out", folder.resolve("linked")), "PDF file");
        Refusal.isWrongUse(linewalk("link", set, "--via", "1A1", "--out", folder.resolve("x.pdf")), "--trace");
        assertThat(folder.resolve("x.pdf")).doesNotExist();
    }

    @Test
    void severalFilesOfASetLeadIntoOneAnother() throws IOException {
        Path set = set(STYLES.get(0));
        Path one = folder.resolve("one.pdf");
        Path two = folder.resolve("two.pdf");
        try (PDDocument document = Loader.loadPDF(original.toFile())) {
            int pages = document.getNumberOfPages();
            part(document, 0, pages / 2, one);
            part(document, pages / 2, pages, two);
        }
        Path split = folder.resolve("split");
        fine("import", one, two, "--into", split);
        JsonNode whole = fine("export", set).json();
        JsonNode parts = fine("export", split).json();
        assertThat(mated(parts)).isEqualTo(mated(whole));
        fine("link", split, "--out", folder.resolve("copies"));
        for (String name : java.util.List.of("one.pdf", "two.pdf")) {
            Print.isSound(folder.resolve("copies").resolve(name));
        }
        String text = Files.readString(
                folder.resolve("copies").resolve("one.pdf"), java.nio.charset.StandardCharsets.ISO_8859_1);
        assertThat(text).contains("/GoToR/F (two.pdf)");
    }

    private static void part(PDDocument document, int from, int to, Path file) throws IOException {
        try (PDDocument part = new PDDocument()) {
            for (int i = from; i < to; i++) {
                part.importPage(document.getPage(i));
            }
            part.save(file.toFile());
        }
    }

    private static long mated(JsonNode export) {
        return StreamSupport.stream(export.get("references").spliterator(), false)
                .filter(r -> !r.get("mates").isEmpty())
                .count();
    }
}
