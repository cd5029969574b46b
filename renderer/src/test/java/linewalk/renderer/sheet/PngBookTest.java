package linewalk.renderer.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDate;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.stream.ImageInputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Element;

/** Pages as pictures. */
class PngBookTest {

    private static byte[] file(Medium medium) throws IOException {
        try (Book book = medium.book(Mm.pt(420), Mm.pt(297), "A path", LocalDate.of(2026, 2, 3))) {
            Page page = book.newPage();
            page.canvas().pen(Ink.PATH, Ink.line(1.3)).line(10, 10, 1180, 830);
            page.canvas().text("0P1", 600, 420, 200);
            page.finish();
            assertThat(book.files()).isEqualTo(1);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            book.write(0, out);
            return out.toByteArray();
        }
    }

    @ParameterizedTest
    @CsvSource({"50, 827, 585", "150, 2480, 1754", "300, 4961, 3508"})
    void areOfTheSizeThatTheResolutionGives(int dpi, int width, int height) throws IOException {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(file(Medium.png(dpi))));
        assertThat(image.getWidth()).isEqualTo(width);
        assertThat(image.getHeight()).isEqualTo(height);
    }

    @Test
    void sayTheirResolution() throws IOException {
        assertThat(dotsPerMm(file(Medium.png(200)))).isBetween(200 / 25.4 - 0.01, 200 / 25.4 + 0.01);
    }

    /** As Java's own reader finds it. */
    private static double dotsPerMm(byte[] png) throws IOException {
        ImageReader reader = ImageIO.getImageReadersByFormatName("png").next();
        try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(png))) {
            reader.setInput(in);
            IIOMetadata metadata = reader.getImageMetadata(0);
            Element tree = (Element) metadata.getAsTree("javax_imageio_1.0");
            Element size =
                    (Element) tree.getElementsByTagName("HorizontalPixelSize").item(0);
            return 1 / Double.parseDouble(size.getAttribute("value"));
        }
    }

    /** At 300 dpi an A3 takes several bands. */
    @Test
    void haveNoSeamsWhereBandsMeet() throws IOException {
        BufferedImage banded = ImageIO.read(new ByteArrayInputStream(file(Medium.png(300))));
        BufferedImage whole;
        try (PDDocument doc = Loader.loadPDF(file(Medium.PDF))) {
            whole = new PDFRenderer(doc).renderImage(0, 300 / 72f, ImageType.RGB);
        }
        Likeness likeness = Likeness.of(banded, whole);
        assertThat(likeness.strokes()).isZero();
        assertThat(likeness.patch()).isLessThan(1);
    }

    @Test
    void areTheSameForTheSameDrawing() throws IOException {
        assertThat(file(Medium.png(100))).isEqualTo(file(Medium.png(100)));
    }
}
