package linewalk.importer.scan;

import boofcv.struct.image.GrayU8;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.io.IOException;
import java.util.Optional;
import linewalk.importer.page.Marks;
import linewalk.importer.page.Picture;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * A page that is an image, as one grey raster.
 *
 * @param pxPerPt its resolution
 */
public record PageRaster(GrayU8 grey, double pxPerPt) {

    /** Images cover at least this share of a scanned page. */
    private static final double COVERED = 0.5;

    /** A scan may have been stamped or framed by a program, but is not drawn. */
    private static final int MOST_STROKES = 40;

    /** A0 at 300 dpi has 140 million. */
    private static final double MOST_PIXELS = 160e6;

    /** More than 400 dpi shows the paper, not the drawing. */
    private static final double FINEST = 400.0 / 72;

    /** Below 72 dpi letters have no shape: a photograph or a pattern behind the drawing. */
    private static final double COARSEST = 1;

    /** Decoding takes several times the raster's memory: one page at a time. */
    private static final Object DECODING = new Object();

    /** The resolution in which to read the page as a scan; empty where it is a drawing, or no image is on it. */
    public static Optional<Double> resolution(Marks marks) {
        double covered = 0;
        double finest = 0;
        for (Picture p : marks.pictures()) {
            covered += p.box().widthPt() * p.box().heightPt();
            finest = Math.max(finest, p.pxPerPt());
        }
        double page = marks.widthPt() * marks.heightPt();
        if (finest < COARSEST || covered < COVERED * page || marks.strokes().size() > MOST_STROKES) {
            return Optional.empty();
        }
        return Optional.of(Math.min(Math.min(finest, FINEST), Math.sqrt(MOST_PIXELS / page)));
    }

    /** @param index of the page, from 0 */
    public static PageRaster of(PDDocument document, int index, double pxPerPt) throws IOException {
        synchronized (DECODING) {
            BufferedImage image = new WholeImage(document).grey(index, pxPerPt);
            GrayU8 grey = new GrayU8();
            grey.data = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
            grey.reshape(image.getWidth(), image.getHeight());
            return new PageRaster(grey, pxPerPt);
        }
    }
}
