package linewalk.tests.quality;

import java.io.IOException;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDPage;

/** How many forms a page's own content draws. */
final class Forms {

    private Forms() {}

    static int drawnBy(PDPage page) throws IOException {
        int forms = 0;
        for (Object token : new PDFStreamParser(page).parse()) {
            forms += token instanceof Operator o && o.getName().equals("Do") ? 1 : 0;
        }
        return forms;
    }
}
