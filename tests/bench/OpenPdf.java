import java.io.File;
import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;

/** What any Java program that looks at these files must do: start, open each PDF, count its pages, end. */
final class OpenPdf {
    public static void main(String[] paths) throws IOException {
        for (String path : paths) {
            try (PDDocument document = Loader.loadPDF(new File(path))) {
                System.out.println(document.getNumberOfPages());
            }
        }
    }
}
