package linewalk.renderer.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import javax.imageio.ImageIO;
import linewalk.drawing.PageKey;
import linewalk.drawing.Point;
import linewalk.drawing.Sheet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** Small pictures of places on the originals; each page is drawn once and only one is held at a time. */
final class Places {

    static final int WIDTH_PX = 420;
    static final int HEIGHT_PX = 260;

    /** How much of the page's larger side a picture shows. */
    private static final double SHOWN = 0.16;

    private static final int RING_PX = 26;

    record Place(PageKey page, Point at) {}

    private final Map<PageKey, Sheet> sheets = new HashMap<>();
    private final Map<String, Map<PageKey, Set<Place>>> wanted = new TreeMap<>();

    Places(Iterable<Sheet> sheets) {
        sheets.forEach(s -> this.sheets.put(s.page(), s));
    }

    void want(PageKey page, Point at) {
        wanted.computeIfAbsent(page.source(), k -> new TreeMap<>())
                .computeIfAbsent(page, k -> new LinkedHashSet<>())
                .add(new Place(page, at));
    }

    /** PNG in base 64 by place; none for pages whose source is missing or can't be drawn. */
    Map<Place, String> draw(Function<String, Path> sources) {
        Map<Place, String> drawn = new HashMap<>();
        wanted.forEach((source, pages) -> {
            Path file = sources.apply(source);
            if (file != null && Files.isReadable(file)) {
                try (PDDocument document = Loader.loadPDF(file.toFile())) {
                    pages.forEach((page, places) -> draw(document, page, places, drawn));
                } catch (IOException e) {
                    // the report says what was found; a picture is a help, no more
                    return;
                }
            }
        });
        return drawn;
    }

    private void draw(PDDocument document, PageKey key, Set<Place> places, Map<Place, String> drawn) {
        Sheet sheet = sheets.get(key);
        if (key.page() > document.getNumberOfPages()) {
            return;
        }
        double scale = WIDTH_PX / (SHOWN * Math.max(sheet.widthPt(), sheet.heightPt()));
        try {
            // the renderer leaves the user unit out
            float unit = document.getPage(key.page() - 1).getUserUnit();
            BufferedImage page =
                    new PDFRenderer(document).renderImage(key.page() - 1, (float) (scale * unit), ImageType.RGB);
            places.forEach(p -> drawn.put(p, png(cut(page, p.at(), scale))));
        } catch (IOException e) {
            return;
        }
    }

    private static BufferedImage cut(BufferedImage page, Point at, double scale) {
        BufferedImage cut = new BufferedImage(WIDTH_PX, HEIGHT_PX, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = cut.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, WIDTH_PX, HEIGHT_PX);
        g.drawImage(
                page,
                (int) Math.round(WIDTH_PX / 2.0 - at.xPt() * scale),
                (int) Math.round(HEIGHT_PX / 2.0 - at.yPt() * scale),
                null);
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setColor(new Color(200, 30, 30));
        g.setStroke(new BasicStroke(2.5f));
        g.draw(new Ellipse2D.Double(WIDTH_PX / 2.0 - RING_PX, HEIGHT_PX / 2.0 - RING_PX, 2 * RING_PX, 2 * RING_PX));
        g.dispose();
        return cut;
    }

    private static String png(BufferedImage image) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Base64.getEncoder().encodeToString(out.toByteArray());
    }
}
