package linewalk.tests;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import linewalk.importer.page.MarkCollector;
import linewalk.importer.page.Marks;
import linewalk.importer.page.PageGeometry;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/**
 * A print read back.
 *
 * @param text all words in the order written, white space squeezed
 * @param pictures how often an image is painted
 * @param overlays how many strokes of the broad pen lie over the original to mark the path
 * @param capitalsMm heights of capitals of the print's own lettering; the original's within cuttings is left out
 */
record Print(int pages, String text, int pictures, long overlays, List<Double> capitalsMm) {

    private static final double BROAD_PEN_PT = 8;
    /** Capital height of Liberation Sans as a share of its size. */
    private static final double CAPITAL = 1409.0 / 2048;

    static Print of(Path pdf, Path original) {
        try (PDDocument document = Loader.loadPDF(pdf.toFile());
                PDDocument drawn = Loader.loadPDF(original.toFile())) {
            int pictures = 0;
            long overlays = 0;
            for (PDPage page : document.getPages()) {
                Marks marks = MarkCollector.collect(page, PageGeometry.of(page));
                pictures += marks.pictures().size();
                overlays += marks.strokes().stream()
                        .filter(s -> Math.abs(s.widthPt() - BROAD_PEN_PT) < 0.01)
                        .count();
            }
            List<Double> capitalsMm = new ArrayList<>();
            String text = new OwnLettering(fonts(drawn), capitalsMm).getText(document);
            return new Print(document.getNumberOfPages(), text.replaceAll("\\s+", " "), pictures, overlays, capitalsMm);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Set<String> fonts(PDDocument document) throws IOException {
        Set<String> names = new HashSet<>();
        for (PDPage page : document.getPages()) {
            for (COSName name : page.getResources().getFontNames()) {
                names.add(page.getResources().getFont(name).getName());
            }
        }
        return names;
    }

    /** Reads all words, and measures those in other fonts than the original's. */
    private static final class OwnLettering extends PDFTextStripper {

        private final Set<String> originals;
        private final List<Double> capitalsMm;

        OwnLettering(Set<String> originals, List<Double> capitalsMm) {
            this.originals = originals;
            this.capitalsMm = capitalsMm;
        }

        @Override
        protected void processTextPosition(TextPosition t) {
            if (!originals.contains(t.getFont().getName())) {
                double sizePt = Math.hypot(
                        t.getTextMatrix().getShearX(), t.getTextMatrix().getScaleY());
                capitalsMm.add(sizePt * CAPITAL * 25.4 / 72);
            }
            super.processTextPosition(t);
        }
    }

    /** Checked by another program, where it is installed. */
    static void isSound(Path pdf) {
        try {
            Process check = new ProcessBuilder("qpdf", "--check", pdf.toString())
                    .redirectErrorStream(true)
                    .start();
            String said = new String(check.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertThat(check.waitFor()).as(said).isZero();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        } catch (IOException e) {
            System.out.println(pdf + " was not checked: qpdf is not installed");
        }
    }
}
