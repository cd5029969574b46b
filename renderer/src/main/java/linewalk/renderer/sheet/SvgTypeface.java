package linewalk.renderer.sheet;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Base64;
import java.util.List;
import java.util.Set;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TTFSubsetter;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** The typeface of all prints, cut down to what one page needs. */
final class SvgTypeface {

    /** What a browser needs; tables on pairs and ligatures would count the glyphs of the whole font. */
    private static final List<String> TABLES = List.of(
            "OS/2", "cmap", "cvt ", "fpgm", "glyf", "head", "hhea", "hmtx", "loca", "maxp", "name", "post", "prep");

    private SvgTypeface() {}

    static String dataUri(Set<Integer> characters) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (InputStream in = Lettering.open();
                TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in))) {
            TTFSubsetter subset = new TTFSubsetter(font, TABLES);
            subset.addAll(characters);
            subset.writeToStream(out);
        }
        return "data:font/ttf;base64," + Base64.getEncoder().encodeToString(out.toByteArray());
    }
}
