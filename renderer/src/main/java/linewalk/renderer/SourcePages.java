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
import linewalk.renderer.sheet.Original;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Opens the originals and hands out their pages and the marks that stand on them. */
final class SourcePages implements Closeable {

    private final PrintJob job;
    private final Map<String, Optional<PDDocument>> open = new LinkedHashMap<>();
    private final Map<PageKey, Optional<Original>> originals = new HashMap<>();
    private final Map<PageKey, SourceReader.Marks> marks = new HashMap<>();

    SourcePages(PrintJob job) {
        this.job = job;
    }

    /** Empty where the source is missing or cannot be read. */
    Optional<Original> original(PageKey page) {
        return originals.computeIfAbsent(
                page, key -> document(key.source()).flatMap(d -> Original.find(d, key.page())));
    }

    /** No letters for pages without a text layer. */
    SourceReader.Marks marks(Sheet sheet) {
        return marks.computeIfAbsent(sheet.page(), key -> document(key.source())
                .filter(d -> key.page() <= d.getNumberOfPages())
                .map(d -> SourceReader.read(d.getPage(key.page() - 1), sheet))
                .orElse(SourceReader.Marks.NONE));
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
