package linewalk.renderer.sheet;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.apache.batik.svggen.SVGGraphics2D;

/** One page as SVG. */
final class SvgPage implements Page {

    private final int number;
    private final SvgSheet sheet;
    private final Consumer<byte[]> whenFinished;
    private final SVGGraphics2D g;
    private final List<Cutting> cuttings = new ArrayList<>();

    SvgPage(int number, SvgSheet sheet, Consumer<byte[]> whenFinished) {
        this.number = number;
        this.sheet = sheet;
        this.whenFinished = whenFinished;
        g = new SVGGraphics2D(sheet.context(), false);
    }

    @Override
    public int number() {
        return number;
    }

    @Override
    public Canvas canvas() {
        return new Canvas(g);
    }

    @Override
    public void place(Original original, AffineTransform toPrint, Rectangle2D clip) {
        cuttings.add(new Cutting(original, toPrint, clip));
    }

    @Override
    public void link(Rectangle2D from, int page, Rectangle2D to) {
        // pages are files that may be moved apart
    }

    @Override
    public void bookmark(String title, double yPt) {
        // the format has none
    }

    @Override
    public void finish() throws IOException {
        for (Cutting c : cuttings) {
            sheet.add(c);
        }
        sheet.add(g);
        whenFinished.accept(sheet.bytes());
    }
}
