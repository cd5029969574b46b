package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;
import org.junit.jupiter.api.Test;

/** A reader's list of a print's pages: picture, table, walk, sheets. */
class BookmarksTest {

    private static List<String> titles(PDOutlineNode node) {
        List<String> titles = new ArrayList<>();
        for (PDOutlineItem i : node.children()) {
            titles.add(i.getTitle());
        }
        return titles;
    }

    @Test
    void nameWhatStandsOnThePrint() throws IOException {
        try (PDDocument doc =
                Loader.loadPDF(Prints.print(new Bench().roundTrip().job(), "bookmarks"))) {
            assertThat(titles(doc.getDocumentCatalog().getDocumentOutline()))
                    .containsSubsequence("Picture", "Parts on this path", "The walk in words", "Source sheets");
        }
    }

    @Test
    void leadToTheHeadingItself() throws IOException {
        try (PDDocument doc =
                Loader.loadPDF(Prints.print(new Bench().roundTrip().job(), "bookmarks"))) {
            PDOutlineItem walk = doc.getDocumentCatalog().getDocumentOutline().getFirstChild();
            while (!walk.getTitle().equals("The walk in words")) {
                walk = walk.getNextSibling();
            }
            PDPageXYZDestination to = (PDPageXYZDestination) walk.getDestination();
            double topPt = Paper.A3.heightPt() - to.getTop();
            assertThat(baselineOf(walk.getTitle(), doc, doc.getPages().indexOf(to.getPage())))
                    .isBetween(topPt, topPt + 20);
        }
    }

    /** From the top of the page. */
    private static double baselineOf(String heading, PDDocument doc, int page) throws IOException {
        List<Double> found = new ArrayList<>();
        var stripper = new org.apache.pdfbox.text.PDFTextStripper() {
            @Override
            protected void writeString(String text, List<org.apache.pdfbox.text.TextPosition> places) {
                if (text.contains(heading)) {
                    found.add((double) places.get(0).getYDirAdj());
                }
            }
        };
        stripper.setStartPage(page + 1);
        stripper.setEndPage(page + 1);
        stripper.getText(doc);
        assertThat(found).hasSize(1);
        return found.get(0);
    }

    @Test
    void standUnderTheirStepInABookOfSteps() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PrintJob job = new Bench().roundTrip().job();
        PrintBook.write(
                List.of(new PrintBook.Chapter("Press", List.of(job)), new PrintBook.Chapter("Return", List.of(job))),
                out);
        try (PDDocument doc = Loader.loadPDF(out.toByteArray())) {
            PDOutlineNode outline = doc.getDocumentCatalog().getDocumentOutline();
            assertThat(titles(outline)).containsExactly("Press", "Return");
            assertThat(titles(outline.getLastChild())).contains("Picture", "Source sheets");
        }
    }
}
