package linewalk.renderer.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;

/** Pages as SVG. */
class SvgBookTest {

    private static List<byte[]> files(String... words) throws IOException {
        try (SvgBook book = new SvgBook(Mm.pt(420), Mm.pt(297), "A path & its \"walk\"")) {
            for (String word : words) {
                Page page = book.newPage();
                page.canvas().pen(Ink.BLACK, Ink.line(1)).text(word, 50, 50, Lettering.TEXT_PT);
                page.canvas().line(10, 10, 100, 10);
                page.finish();
            }
            List<byte[]> files = new ArrayList<>();
            for (int i = 0; i < book.files(); i++) {
                ByteArrayOutputStream out = new ByteArrayOutputStream();
                book.write(i, out);
                files.add(out.toByteArray());
            }
            return files;
        }
    }

    private static Document parsed(byte[] svg) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new ByteArrayInputStream(svg));
    }

    private static String text(Document svg, String element) {
        NodeList found = svg.getElementsByTagName(element);
        assertThat(found.getLength()).as(element).isEqualTo(1);
        return found.item(0).getTextContent();
    }

    @Test
    void areOfThePapersSizeAndTitled() throws Exception {
        Document svg = parsed(files("0P1").get(0));
        assertThat(svg.getDocumentElement().getAttribute("width")).isEqualTo("420.0mm");
        assertThat(svg.getDocumentElement().getAttribute("height")).isEqualTo("297.0mm");
        assertThat(text(svg, "title")).isEqualTo("A path & its \"walk\"");
    }

    @Test
    void haveAFileEach() throws Exception {
        List<byte[]> files = files("first", "second");
        assertThat(files).hasSize(2);
        assertThat(text(parsed(files.get(0)), "text")).isEqualTo("first");
        assertThat(text(parsed(files.get(1)), "text")).isEqualTo("second");
    }

    @Test
    void carryTheGlyphsTheyNeedAndNoOthers() throws Exception {
        String style = text(parsed(files("0P1 → 2").get(0)), "style");
        String data = style.replaceFirst("(?s).*base64,([^)]*)\\).*", "$1");
        try (TrueTypeFont font = new TTFParser()
                .parse(new RandomAccessReadBuffer(Base64.getDecoder().decode(data)))) {
            CmapLookup glyphs = font.getUnicodeCmapLookup();
            "0P1 →2"
                    .codePoints()
                    .forEach(c -> assertThat(glyphs.getGlyphId(c)).as("%c", c).isPositive());
            assertThat(glyphs.getGlyphId('X')).isZero();
        }
    }

    @Test
    void areTheSameForTheSameDrawing() throws IOException {
        assertThat(files("0P1", "0V1")).usingRecursiveComparison().isEqualTo(files("0P1", "0V1"));
    }
}
