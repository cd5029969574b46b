package linewalk.renderer;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Reads prints back. */
final class Prints {

    private Prints() {}

    /** The print's bytes; a copy stays in target/prints to be looked at. */
    static byte[] print(PrintJob job, String name) {
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            TracePrint.write(job, out);
            Path folder = Files.createDirectories(Path.of("target/prints"));
            Files.write(folder.resolve(name + ".pdf"), out.toByteArray());
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** All words in the order written, white space squeezed. */
    static String text(byte[] pdf) {
        return read(pdf, new PDFTextStripper()).replaceAll("\\s+", " ");
    }

    /** The capital heights of all lettering in our own typeface, in millimetres. */
    static List<Double> capHeightsMm(byte[] pdf) {
        List<Double> heights = new ArrayList<>();
        read(pdf, new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition t) {
                if (t.getFont().getName().contains("Liberation")) {
                    double emPt = Math.hypot(
                            t.getTextMatrix().getShearX(), t.getTextMatrix().getScaleY());
                    heights.add(emPt * 1409 / 2048 * 25.4 / 72);
                }
            }
        });
        return heights;
    }

    static int pages(byte[] pdf) {
        try (PDDocument doc = Loader.loadPDF(pdf)) {
            return doc.getNumberOfPages();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String read(byte[] pdf, PDFTextStripper stripper) {
        try (PDDocument doc = Loader.loadPDF(pdf)) {
            return stripper.getText(doc);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
