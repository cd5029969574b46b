package linewalk.importer;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.metadata.IIOMetadataFormatImpl;
import javax.imageio.stream.ImageInputStream;
import linewalk.drawing.UserError;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.image.CCITTFactory;
import org.apache.pdfbox.pdmodel.graphics.image.JPEGFactory;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.w3c.dom.NodeList;

/** PNG, JPEG and TIFF files, also of several pages, as a document of one image a page. */
final class ImageFile {

    /** Where a file does not tell: what scanners are mostly set to. Only the size of the page hangs on it. */
    private static final double USUAL_DPI = 300;

    private static final double MM_PER_INCH = 25.4;

    private ImageFile() {}

    /** By its first bytes, whatever it is called. */
    static boolean is(byte[] head) {
        return starts(head, 0x89, 'P', 'N', 'G')
                || starts(head, 0xFF, 0xD8, 0xFF)
                || starts(head, 'I', 'I', 42, 0)
                || starts(head, 'M', 'M', 0, 42);
    }

    private static boolean starts(byte[] head, int... bytes) {
        for (int i = 0; i < bytes.length; i++) {
            if (head.length <= i || (head[i] & 0xFF) != bytes[i]) {
                return false;
            }
        }
        return true;
    }

    static PDDocument open(Path file) throws IOException {
        PDDocument document = new PDDocument();
        try (ImageInputStream in = ImageIO.createImageInputStream(file.toFile())) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            if (!readers.hasNext()) {
                throw new UserError(file + " is an image of a kind that cannot be read; save it as TIFF or PNG");
            }
            ImageReader reader = readers.next();
            reader.setInput(in, false);
            int pages = reader.getNumImages(true);
            for (int i = 0; i < pages; i++) {
                add(document, file, reader, i);
            }
            reader.dispose();
            return document;
        } catch (IOException | RuntimeException e) {
            document.close();
            throw e;
        }
    }

    private static void add(PDDocument document, Path file, ImageReader reader, int index) throws IOException {
        double dpi = dpi(reader, index);
        float w = (float) (reader.getWidth(index) * 72 / dpi);
        float h = (float) (reader.getHeight(index) * 72 / dpi);
        PDPage page = new PDPage(new PDRectangle(w, h));
        document.addPage(page);
        try (PDPageContentStream out = new PDPageContentStream(document, page)) {
            out.drawImage(image(document, file, reader, index), 0, 0, w, h);
        }
    }

    /** As it is stored where a PDF can hold it so, else without loss. */
    private static PDImageXObject image(PDDocument document, Path file, ImageReader reader, int index)
            throws IOException {
        String format = reader.getFormatName().toLowerCase(java.util.Locale.ROOT);
        if (format.startsWith("jp")) {
            return JPEGFactory.createFromStream(document, new ByteArrayInputStream(Files.readAllBytes(file)));
        }
        Optional<PDImageXObject> fax = format.startsWith("tif") ? fax(document, file, index) : Optional.empty();
        if (fax.isPresent()) {
            return fax.get();
        }
        BufferedImage image = reader.read(index);
        return image.getType() == BufferedImage.TYPE_BYTE_BINARY
                        && image.getColorModel().getPixelSize() == 1
                ? CCITTFactory.createFromImage(document, image)
                : LosslessFactory.createFromImage(document, image);
    }

    private static Optional<PDImageXObject> fax(PDDocument document, Path file, int index) {
        try {
            return Optional.ofNullable(CCITTFactory.createFromFile(document, file.toFile(), index));
        } catch (IOException e) {
            // packed in another way: decoded and packed anew
            return Optional.empty();
        }
    }

    private static double dpi(ImageReader reader, int index) throws IOException {
        String standard = IIOMetadataFormatImpl.standardMetadataFormatName;
        var metadata = reader.getImageMetadata(index);
        if (metadata == null || !metadata.isStandardMetadataFormatSupported()) {
            return USUAL_DPI;
        }
        NodeList sizes =
                ((org.w3c.dom.Element) metadata.getAsTree(standard)).getElementsByTagName("HorizontalPixelSize");
        if (sizes.getLength() == 0) {
            return USUAL_DPI;
        }
        double mm = Double.parseDouble(((org.w3c.dom.Element) sizes.item(0)).getAttribute("value"));
        double dpi = mm > 0 ? MM_PER_INCH / mm : USUAL_DPI;
        // a screen's resolution in the file says nothing about the scanner's
        return dpi < 100 || dpi > 2400 ? USUAL_DPI : dpi;
    }
}
