package linewalk.renderer;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import linewalk.drawing.PageKey;
import linewalk.drawing.Sheet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.multipdf.LayerUtility;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.util.Matrix;

/** Opens the originals and hands out their pages as forms of one book, and the marks that stand on them. */
final class SourcePages implements Closeable {

    private final PrintJob job;
    private final Map<String, Optional<PDDocument>> open = new LinkedHashMap<>();
    private final Map<PageKey, Optional<PDFormXObject>> forms = new HashMap<>();
    private final Map<PageKey, SourceReader.Marks> marks = new HashMap<>();
    private LayerUtility layers;

    SourcePages(PrintJob job) {
        this.job = job;
    }

    void into(PDDocument target) {
        layers = new LayerUtility(target);
    }

    /** The page in its own user space; empty where the source is missing or cannot be read. */
    Optional<PDFormXObject> form(PageKey page) {
        return forms.computeIfAbsent(page, this::importForm);
    }

    /** No letters for pages without a text layer. */
    SourceReader.Marks marks(Sheet sheet) {
        return marks.computeIfAbsent(sheet.page(), key -> document(key.source())
                .filter(d -> key.page() <= d.getNumberOfPages())
                .map(d -> SourceReader.read(d.getPage(key.page() - 1), sheet))
                .orElse(SourceReader.Marks.NONE));
    }

    private Optional<PDFormXObject> importForm(PageKey key) {
        Optional<PDDocument> source = document(key.source());
        if (source.isEmpty() || key.page() < 1 || key.page() > source.get().getNumberOfPages()) {
            return Optional.empty();
        }
        try {
            PDFormXObject form = layers.importPageAsForm(source.get(), key.page() - 1);
            // the sheet's own affine already knows of rotation and crop box
            form.setMatrix(new Matrix().createAffineTransform());
            form.setBBox(source.get().getPage(key.page() - 1).getCropBox());
            return Optional.of(form);
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private Optional<PDDocument> document(String source) {
        return open.computeIfAbsent(source, this::load);
    }

    private Optional<PDDocument> load(String source) {
        Path file = job.facts().sources().apply(source);
        if (file == null || !Files.isReadable(file)) {
            return Optional.empty();
        }
        try {
            return Optional.of(Loader.loadPDF(file.toFile()));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    @Override
    public void close() throws IOException {
        for (Optional<PDDocument> d : open.values()) {
            if (d.isPresent()) {
                d.get().close();
            }
        }
    }
}
