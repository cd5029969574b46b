package linewalk.samples.scan;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.image.CCITTFactory;
import org.apache.pdfbox.pdmodel.graphics.image.JPEGFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** A drawn set as a file of scans: every page askew by up to 1.5 degrees, the second upside down, the third on its side. */
public final class ScanSet {

    private static final double MOST_SKEW_DEG = 1.5;
    private static final float JPEG_QUALITY = 0.8f;

    private ScanSet() {}

    /**
     * Writes scan.pdf and truth.json into the folder, made if missing. Same input, same pages.
     *
     * @param truth of the drawn set; copied with a display_transform for each sheet
     * @throws IOException where a file cannot be read or written
     */
    public static void write(Path pdf, Path truth, Path folder, int dpi, boolean bitonal) throws IOException {
        Files.createDirectories(folder);
        ObjectMapper mapper = new ObjectMapper();
        JsonNode out = mapper.readTree(Files.readAllBytes(truth));
        Random chance = new Random(dpi + (bitonal ? 1 : 0));
        try (PDDocument drawn = Loader.loadPDF(pdf.toFile());
                PDDocument scans = new PDDocument()) {
            for (int i = 0; i < drawn.getNumberOfPages(); i++) {
                double skew = (2 * chance.nextDouble() - 1) * MOST_SKEW_DEG;
                Paper paper = new Paper(skew, i == 1 ? 2 : i == 2 ? 1 : 0, bitonal, chance.nextLong());
                // the renderer leaves UserUnit out
                float scale = dpi / 72f * drawn.getPage(i).getUserUnit();
                BufferedImage image = new PDFRenderer(drawn).renderImage(i, scale, ImageType.GRAY);
                add(scans, paper.scan(image), dpi);
                move(out, i + 1, paper.transform(image.getWidth() * 72.0 / dpi, image.getHeight() * 72.0 / dpi));
            }
            scans.save(folder.resolve("scan.pdf").toFile());
        }
        Files.writeString(folder.resolve("truth.json"), mapper.writeValueAsString(out));
    }

    private static void add(PDDocument scans, BufferedImage image, int dpi) throws IOException {
        float w = image.getWidth() * 72f / dpi;
        float h = image.getHeight() * 72f / dpi;
        PDPage page = new PDPage(new PDRectangle(w, h));
        scans.addPage(page);
        PDImageXObject picture = image.getType() == BufferedImage.TYPE_BYTE_BINARY
                ? CCITTFactory.createFromImage(scans, image)
                : JPEGFactory.createFromImage(scans, image, JPEG_QUALITY);
        try (PDPageContentStream content = new PDPageContentStream(scans, page)) {
            content.drawImage(picture, 0, 0, w, h);
        }
    }

    private static void move(JsonNode truth, int page, AffineTransform t) {
        for (JsonNode sheet : truth.get("sheets")) {
            if (sheet.get("page").asInt() == page) {
                ArrayNode m = ((ObjectNode) sheet).putArray("display_transform");
                m.add(t.getScaleX()).add(t.getShearX()).add(t.getTranslateX());
                m.add(t.getShearY()).add(t.getScaleY()).add(t.getTranslateY());
            }
        }
    }

    /** Arguments: drawn PDF, its truth, folder, dpi, and {@code bitonal} or {@code grey}. */
    public static void main(String... args) throws IOException {
        write(
                Path.of(args[0]),
                Path.of(args[1]),
                Path.of(args[2]),
                Integer.parseInt(args[3]),
                args[4].equals("bitonal"));
    }
}
