package linewalk.importer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import linewalk.drawing.UserError;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Images are sources of one page each, or several. */
class ImageFileTest {

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"png", "jpg", "tif"})
    void anImageIsAPage(String kind) throws IOException {
        Path file = folder.resolve("scan." + kind);
        ImageIO.write(new BufferedImage(600, 300, BufferedImage.TYPE_BYTE_GRAY), kind, file.toFile());
        try (PDDocument document = Source.open(file)) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
            float ratio = document.getPage(0).getMediaBox().getWidth()
                    / document.getPage(0).getMediaBox().getHeight();
            assertThat(ratio).isEqualTo(2);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"CCITT T.6", "LZW", "PackBits"})
    void aTiffMayHoldSeveralPages(String packing) throws IOException {
        Path file = folder.resolve("scan.tif");
        ImageWriter writer = ImageIO.getImageWritersByFormatName("tiff").next();
        try (ImageOutputStream out = ImageIO.createImageOutputStream(file.toFile())) {
            writer.setOutput(out);
            writer.prepareWriteSequence(null);
            for (int i = 0; i < 3; i++) {
                ImageWriteParam how = writer.getDefaultWriteParam();
                how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
                how.setCompressionType(packing);
                BufferedImage page = new BufferedImage(500 + 100 * i, 300, BufferedImage.TYPE_BYTE_BINARY);
                writer.writeToSequence(new IIOImage(page, null, null), how);
            }
            writer.endWriteSequence();
        }
        try (PDDocument document = Source.open(file)) {
            assertThat(document.getNumberOfPages()).isEqualTo(3);
            assertThat(document.getPage(2).getMediaBox().getWidth()
                            / document.getPage(0).getMediaBox().getWidth())
                    .isEqualTo(1.4f);
        }
    }

    @Test
    void whatIsNeitherIsSaidSo() throws IOException {
        Path file = Files.writeString(folder.resolve("scan.png"), "no image at all");
        assertThatThrownBy(() -> Source.open(file))
                .isInstanceOf(UserError.class)
                .hasMessageContaining("not a PDF, nor");
    }
}
