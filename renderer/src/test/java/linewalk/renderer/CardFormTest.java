package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import linewalk.renderer.sheet.Book;
import linewalk.renderer.sheet.Medium;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The card's pages: after the print, readable, in the order of the work, and only where asked for. */
class CardFormTest {

    private final Cards cards = new Cards();

    @Test
    void standsInTheOrderOfTheWork() {
        assertThat(cards.text("card-order"))
                .containsSubsequence(
                        "Job card",
                        "Card number",
                        "Drawing set",
                        "Test bench press",
                        "Printed on",
                        "2026-02-03",
                        "0P1 via 1A1 to TANK",
                        "At rest, as drawn",
                        "sheet 1, revision B; sheet 2, no revision read; sheet 3, revision B",
                        "Isolation points",
                        "Stored energy",
                        "Gauges needed",
                        "Expected and measured",
                        "Parts in the order of the path",
                        "Sign-off",
                        "Isolated by",
                        "Work done by",
                        "Tested by",
                        "Released by");
    }

    @Test
    void aPartStandsAgainEachTimeItIsPassed() {
        assertThat(cards.between("Parts in the order of the path", "Sign-off", "card-parts"))
                .containsSubsequence("1 1 0P1", "2 3 1V1", "3 4 1A1", "4 3 1V1", "5 2 TANK");
    }

    @Test
    void followsOnlyWhereItIsAskedFor() {
        byte[] alone = Prints.print(cards.bench.job(), "card-none");
        assertThat(Prints.text(alone)).doesNotContain("Job card");
        assertThat(Prints.pages(Prints.print(cards.job(), "card-some"))).isGreaterThan(Prints.pages(alone));
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void isReadableOnAnyPaper(Paper paper) {
        cards.bench.paper = paper;
        byte[] pdf = Prints.print(cards.job(), "card-" + paper);
        assertThat(Prints.capHeightsMm(pdf)).allMatch(mm -> mm >= 2.5);
        assertThat(Prints.text(pdf)).contains("Isolated by", "Released by");
    }

    @Test
    void hasABookmarkAndLeadsBackToThePicture() throws IOException {
        try (PDDocument doc = Loader.loadPDF(Prints.print(cards.job(), "card-links"))) {
            List<String> titles = new ArrayList<>();
            for (PDOutlineItem i : doc.getDocumentCatalog().getDocumentOutline().children()) {
                titles.add(i.getTitle());
            }
            assertThat(titles).containsSubsequence("Picture", "Job card", "Isolation points", "Sign-off");
            PDPage last = doc.getPage(doc.getNumberOfPages() - 1);
            assertThat(last.getAnnotations()).hasSize(1).allMatch(PDAnnotationLink.class::isInstance);
        }
    }

    @Test
    void isInPicturesToo() throws IOException {
        try (Book book = TracePrint.book(cards.job(), Medium.SVG)) {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            book.write(book.files() - 1, out);
            assertThat(out.toString(StandardCharsets.UTF_8)).contains("Released by");
        }
    }
}
