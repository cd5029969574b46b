package linewalk.renderer.sheet;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.rendering.PDFRenderer;

/** Pictures of the pages of a PDF, a file each. Painted in bands, so that the largest paper fits into memory. */
final class PngBook implements Book {

    private static final int BAND_PIXELS = 8_000_000;
    private static final double POINTS_PER_INCH = 72;

    private final PdfBook pdf;
    private final int dpi;
    private final String title;
    private PDDocument finished;

    PngBook(PdfBook pdf, int dpi, String title) {
        this.pdf = pdf;
        this.dpi = dpi;
        this.title = title;
    }

    @Override
    public int pages() {
        return pdf.pages();
    }

    @Override
    public Page newPage() throws IOException {
        return pdf.newPage();
    }

    @Override
    public void bookmark(String title, boolean toNextPage) {
        // a picture has none
    }

    @Override
    public int files() {
        return pages();
    }

    @Override
    public void write(int file, OutputStream out) throws IOException {
        PDPage page = finished().getPage(file);
        int width = pixels(page.getMediaBox().getWidth());
        int height = pixels(page.getMediaBox().getHeight());
        int band = Math.min(height, Math.max(1, BAND_PIXELS / width));
        PngStream png = new PngStream(out, width, height, dpi, title);
        BufferedImage image = new BufferedImage(width, band, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < height; y += band) {
            paint(file, y, image);
            png.rows(image, Math.min(band, height - y));
        }
        png.finish();
    }

    private int pixels(double pt) {
        return (int) Math.round(pt / POINTS_PER_INCH * dpi);
    }

    /** The font of a PDF is only whole once it is written. */
    private PDDocument finished() throws IOException {
        if (finished == null) {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            pdf.write(0, bytes);
            finished = Loader.loadPDF(bytes.toByteArray());
        }
        return finished;
    }

    private void paint(int page, int fromRow, BufferedImage band) throws IOException {
        Graphics2D g = band.createGraphics();
        g.setBackground(java.awt.Color.WHITE);
        g.clearRect(0, 0, band.getWidth(), band.getHeight());
        g.translate(0, -fromRow);
        new PDFRenderer(finished()).renderPageToGraphics(page, g, (float) (dpi / POINTS_PER_INCH));
        g.dispose();
    }

    @Override
    public void close() throws IOException {
        if (finished != null) {
            finished.close();
        }
        pdf.close();
    }
}
