package linewalk.importer.scan;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.io.IOException;
import java.io.InputStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.color.PDColorSpace;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceGray;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceRGB;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.rendering.PageDrawer;
import org.apache.pdfbox.rendering.PageDrawerParameters;

/**
 * Paints a page in grey. An image that fills it pixel by pixel is copied: to paint it through colours and transforms costs
 * as much as to read its lines.
 */
final class WholeImage extends PDFRenderer {

    private final PDDocument document;
    private BufferedImage paper;

    WholeImage(PDDocument document) {
        super(document);
        this.document = document;
    }

    BufferedImage grey(int index, double pxPerPt) throws IOException {
        PDPage page = document.getPage(index);
        PDRectangle box = page.getCropBox();
        double unit = pxPerPt * page.getUserUnit();
        boolean lying = page.getRotation() % 180 != 0;
        int w = (int) Math.max(1, Math.floor((lying ? box.getHeight() : box.getWidth()) * unit));
        int h = (int) Math.max(1, Math.floor((lying ? box.getWidth() : box.getHeight()) * unit));
        paper = new BufferedImage(w, h, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D g = paper.createGraphics();
        g.setBackground(Color.WHITE);
        g.clearRect(0, 0, w, h);
        renderPageToGraphics(index, g, (float) unit);
        g.dispose();
        return paper;
    }

    @Override
    protected PageDrawer createPageDrawer(PageDrawerParameters parameters) throws IOException {
        return new PageDrawer(parameters) {
            @Override
            public void drawImage(PDImage image) throws IOException {
                AffineTransform t = new AffineTransform(getGraphics().getTransform());
                t.concatenate(
                        getGraphicsState().getCurrentTransformationMatrix().createAffineTransform());
                if (image instanceof PDImageXObject plain && fills(plain, t) && isPlain(plain)) {
                    copy(plain);
                } else {
                    super.drawImage(image);
                }
            }
        };
    }

    /** Every pixel of the image is one of the paper. */
    private boolean fills(PDImageXObject image, AffineTransform t) {
        Point2D top = t.transform(new Point2D.Double(0, 1), null);
        Point2D foot = t.transform(new Point2D.Double(1, 0), null);
        return Math.hypot(top.getX(), top.getY()) < 1
                && Math.hypot(foot.getX() - image.getWidth(), foot.getY() - image.getHeight()) < 1
                && Math.abs(t.getShearX()) + Math.abs(t.getShearY()) < 1
                && Math.abs(image.getWidth() - paper.getWidth()) <= 1
                && Math.abs(image.getHeight() - paper.getHeight()) <= 1;
    }

    private static boolean isPlain(PDImageXObject image) throws IOException {
        PDColorSpace colours = image.getColorSpace();
        return image.getBitsPerComponent() == 8
                && image.getDecode() == null
                && image.getMask() == null
                && image.getSoftMask() == null
                && image.getColorKeyMask() == null
                && (colours instanceof PDDeviceGray || colours instanceof PDDeviceRGB);
    }

    /** The samples as they are stored, row by row. */
    private void copy(PDImageXObject image) throws IOException {
        byte[] out = ((DataBufferByte) paper.getRaster().getDataBuffer()).getData();
        int bands = image.getColorSpace().getNumberOfComponents();
        int w = Math.min(image.getWidth(), paper.getWidth());
        try (InputStream samples = image.createInputStream()) {
            for (int y = 0; y < Math.min(image.getHeight(), paper.getHeight()); y++) {
                byte[] row = samples.readNBytes(image.getWidth() * bands);
                for (int x = 0; x < w && (x + 1) * bands <= row.length; x++) {
                    out[y * paper.getWidth() + x] = bands == 1 ? row[x] : grey(row, x * bands);
                }
            }
        }
    }

    private static byte grey(byte[] row, int at) {
        return (byte) ((77 * (row[at] & 0xFF) + 150 * (row[at + 1] & 0xFF) + 29 * (row[at + 2] & 0xFF) + 128) >> 8);
    }
}
