package linewalk.renderer.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.geom.Rectangle2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PageMode;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionGoTo;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitRectangleDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a PDF has beside its drawing. */
class PdfBookTest {

    private static final Rectangle2D ROW = new Rectangle2D.Double(300, 40, 80, 13);
    private static final Rectangle2D SYMBOL = new Rectangle2D.Double(50, 200, 40, 40);

    private interface Filling {
        void into(Book book) throws IOException;
    }

    private static PDDocument made(Filling filling) throws IOException {
        try (Book book = new PdfBook(400, 300, "Bench: 0P1 to TANK", LocalDate.of(2026, 2, 3))) {
            filling.into(book);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            book.write(0, out);
            return Loader.loadPDF(out.toByteArray());
        }
    }

    private static void linked(Book book) throws IOException {
        Page picture = book.newPage();
        picture.link(SYMBOL, 1, ROW);
        picture.finish();
        Page table = book.newPage();
        table.link(ROW, picture.number(), SYMBOL);
        table.finish();
    }

    @Test
    void linksAreasOfPagesForwardsAndBack() throws IOException {
        try (PDDocument doc = made(PdfBookTest::linked)) {
            PDPageFitRectangleDestination there = only(doc, 0, SYMBOL);
            assertThat(doc.getPages().indexOf(there.getPage())).isEqualTo(1);
            assertThat(there.getLeft()).isLessThan(300);
            assertThat(there.getRight()).isGreaterThan(380);
            assertThat(there.getBottom()).isLessThan(300 - 53);
            assertThat(there.getTop()).isGreaterThan(300 - 40);
            assertThat(doc.getPages().indexOf(only(doc, 1, ROW).getPage())).isZero();
        }
    }

    @Test
    void theViewOfALinkKeepsToThePage() throws IOException {
        Rectangle2D atTheCorner = new Rectangle2D.Double(2, 2, 30, 30);
        try (PDDocument doc = made(book -> {
            Page page = book.newPage();
            page.link(ROW, page.number(), atTheCorner);
            page.finish();
        })) {
            PDPageFitRectangleDestination there = only(doc, 0, ROW);
            assertThat(there.getLeft()).isZero();
            assertThat(there.getTop()).isEqualTo(300);
        }
    }

    @Test
    void withLinksPassesAnIndependentCheck(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("linked.pdf");
        try (PDDocument doc = made(PdfBookTest::linked)) {
            doc.save(file.toFile());
        }
        Process check;
        try {
            check = new ProcessBuilder("qpdf", "--check", file.toString())
                    .redirectErrorStream(true)
                    .start();
        } catch (IOException e) {
            assumeTrue(false, "skipped: qpdf is not installed");
            return;
        }
        String said = new String(check.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(check.waitFor()).as(said).isZero();
    }

    /** The one link of a page, which must cover an area and have no border. */
    private static PDPageFitRectangleDestination only(PDDocument doc, int page, Rectangle2D area) throws IOException {
        var annotations = doc.getPage(page).getAnnotations();
        assertThat(annotations).hasSize(1);
        PDAnnotationLink link = (PDAnnotationLink) annotations.get(0);
        assertThat(link.getBorderStyle().getWidth()).isZero();
        assertThat((double) link.getRectangle().getLowerLeftX()).isEqualTo(area.getX());
        assertThat((double) link.getRectangle().getUpperRightY()).isEqualTo(300 - area.getY());
        return (PDPageFitRectangleDestination) ((PDActionGoTo) link.getAction()).getDestination();
    }

    @Test
    void refusesALinkToAPageThatWasNeverMade() {
        assertThatThrownBy(() -> made(book -> {
                    Page page = book.newPage();
                    page.link(ROW, 1, SYMBOL);
                    page.finish();
                }))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("page 1");
    }

    @Test
    void putsEntriesUnderTheirChapter() throws IOException {
        try (PDDocument doc = made(book -> {
            book.bookmark("Raise", true);
            Page page = book.newPage();
            page.bookmark("Picture", 0);
            page.bookmark("The walk", 120);
            page.finish();
            book.bookmark("Lower (no path)", false);
        })) {
            PDOutlineNode outline = doc.getDocumentCatalog().getDocumentOutline();
            assertThat(titles(outline)).containsExactly("Raise", "Lower (no path)");
            assertThat(titles(outline.getFirstChild())).containsExactly("Picture", "The walk");
            assertThat(outline.getLastChild().getDestination()).isNull();
            assertThat(doc.getDocumentCatalog().getPageMode()).isEqualTo(PageMode.USE_OUTLINES);
        }
    }

    private static List<String> titles(PDOutlineNode node) {
        List<String> titles = new ArrayList<>();
        for (PDOutlineItem i : node.children()) {
            titles.add(i.getTitle());
        }
        return titles;
    }

    @Test
    void showsItsTitleAndTellsItsLanguage() throws IOException {
        try (PDDocument doc = made(PdfBookTest::linked)) {
            assertThat(doc.getDocumentInformation().getTitle()).isEqualTo("Bench: 0P1 to TANK");
            assertThat(doc.getDocumentCatalog().getViewerPreferences().displayDocTitle())
                    .isTrue();
            assertThat(doc.getDocumentCatalog().getLanguage()).isEqualTo("en");
        }
    }
}
