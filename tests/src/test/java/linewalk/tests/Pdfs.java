package linewalk.tests;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;

/** Small PDF files, good and bad. */
final class Pdfs {

    private Pdfs() {}

    /** Draws on one page. */
    @FunctionalInterface
    interface Content {
        void drawOn(PDPageContentStream page) throws IOException;
    }

    static Path onePage(Path file, double widthPt, double heightPt, Content content) {
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage(new PDRectangle((float) widthPt, (float) heightPt));
            document.addPage(page);
            try (PDPageContentStream stream = new PDPageContentStream(document, page)) {
                content.drawOn(stream);
            }
            document.save(file.toFile());
            return file;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Path oneLine(Path file) {
        return onePage(file, 842, 595, page -> {
            page.moveTo(100, 100);
            page.lineTo(500, 100);
            page.stroke();
        });
    }

    /** A3 pages that are pictures of noise: nothing on them can be read. */
    static Path noise(Path file, int pages) {
        try (PDDocument document = new PDDocument()) {
            for (int i = 0; i < pages; i++) {
                PDPage page = new PDPage(new PDRectangle(1191, 842));
                document.addPage(page);
                try (PDPageContentStream stream = new PDPageContentStream(document, page)) {
                    stream.drawImage(LosslessFactory.createFromImage(document, noise(i)), 0, 0, 1191, 842);
                }
            }
            document.save(file.toFile());
            return file;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static BufferedImage noise(int seed) {
        Random random = new Random(seed);
        BufferedImage image = new BufferedImage(120, 85, BufferedImage.TYPE_BYTE_GRAY);
        for (int x = 0; x < image.getWidth(); x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                int gray = 160 + random.nextInt(96);
                image.setRGB(x, y, gray << 16 | gray << 8 | gray);
            }
        }
        return image;
    }

    static Path encrypted(Path file) {
        try (PDDocument document = new PDDocument()) {
            document.addPage(new PDPage());
            document.protect(new StandardProtectionPolicy("owner", "secret", new AccessPermission()));
            document.save(file.toFile());
            return file;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A file of these objects, numbered from 1, of which the first is the catalogue. */
    static Path ofObjects(Path file, String... objects) {
        StringBuilder pdf = new StringBuilder("%PDF-1.7\n");
        StringBuilder table = new StringBuilder("0000000000 65535 f \n");
        for (int i = 0; i < objects.length; i++) {
            table.append(String.format("%010d 00000 n \n", pdf.length()));
            pdf.append(i + 1).append(" 0 obj\n").append(objects[i]).append("\nendobj\n");
        }
        int start = pdf.length();
        int size = objects.length + 1;
        pdf.append("xref\n0 ").append(size).append('\n').append(table);
        pdf.append("trailer\n<< /Size ").append(size).append(" /Root 1 0 R >>\nstartxref\n");
        pdf.append(start).append("\n%%EOF\n");
        return write(file, pdf.toString());
    }

    static Path write(Path file, String text) {
        try {
            return Files.writeString(file, text, StandardCharsets.ISO_8859_1);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
