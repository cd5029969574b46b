package linewalk.renderer.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** Cuttings in SVG: strokes where they can be, a picture where they cannot. */
class SvgCuttingTest {

    private static final AffineTransform UPRIGHT = new AffineTransform(1, 0, 0, -1, 0, 200);
    private static final Rectangle2D ALL = new Rectangle2D.Double(0, 0, 300, 200);
    private static final Rectangle2D LOWER_RIGHT = new Rectangle2D.Double(140, 110, 120, 60);

    private static String svg(OriginalSheet sheet, Rectangle2D clip) throws IOException {
        try (SvgBook book = new SvgBook(300, 200, "A cutting")) {
            Page page = book.newPage();
            page.place(sheet.original(), UPRIGHT, clip);
            page.finish();
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            book.write(0, out);
            return out.toString(StandardCharsets.UTF_8);
        }
    }

    @Test
    void keepsStrokesAsStrokes() throws IOException {
        String svg = svg(new OriginalSheet(0, 0), ALL);
        assertThat(svg).contains("clip-path=\"url(#cutting1)\"", "fill=\"red\"").doesNotContain("<image");
    }

    @Test
    void leavesOutWhatIsNotSeen() throws IOException {
        String svg = svg(new OriginalSheet(0, 0), LOWER_RIGHT);
        assertThat(svg).doesNotContain("fill=\"red\"");
        assertThat(svg.length()).isLessThan(svg(new OriginalSheet(0, 0), ALL).length());
    }

    @Test
    void showsAScanAsAPicture() throws IOException {
        assertThat(svg(new OriginalSheet(0, 0).withScan(), ALL)).contains("<image", "data:image/png;base64,");
    }

    @Test
    void showsSeeThroughGroupsAsAPicture() throws IOException {
        assertThat(svg(new OriginalSheet(0, 0).withGroup(), ALL)).contains("<image");
        assertThat(svg(new OriginalSheet(0, 0).withGroup(), LOWER_RIGHT)).doesNotContain("<image");
    }

    @Test
    void keepsStrokesBesideAScan() throws IOException {
        assertThat(svg(new OriginalSheet(0, 0).withScan(), LOWER_RIGHT)).doesNotContain("<image");
    }
}
