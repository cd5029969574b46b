package linewalk.renderer.sheet;

import java.io.IOException;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

/**
 * A page of an opened source, to be placed under a drawing.
 *
 * @param index in the document, from 0
 */
public record Original(PDDocument document, int index) {

    /**
     * A page by its number, from 1; empty where the document has no such page or its content cannot be read. The
     * document must stay open until the pages that show it are finished.
     */
    public static Optional<Original> find(PDDocument document, int number) {
        if (number < 1 || number > document.getNumberOfPages()) {
            return Optional.empty();
        }
        Original original = new Original(document, number - 1);
        return original.isReadable() ? Optional.of(original) : Optional.empty();
    }

    PDPage page() {
        return document.getPage(index);
    }

    private boolean isReadable() {
        try (var content = page().getContents()) {
            content.transferTo(java.io.OutputStream.nullOutputStream());
            return true;
        } catch (IOException e) {
            return false;
        }
    }
}
