package linewalk.importer;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import linewalk.drawing.PageKey;
import linewalk.drawing.SetSettings;
import linewalk.drawing.SheetReading;
import linewalk.drawing.UserError;
import linewalk.drawing.store.ReadingCache;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

/** Reads a source file: pages in parallel, one document handle a worker, readings in page order, unchanged pages from the cache. */
public final class SourceImporter {

    /** Part of every cache key: raised whenever readings change. */
    private static final String READER_VERSION = "24";

    /** Told after each page; may be called from any thread. */
    @FunctionalInterface
    public interface Progress {
        void pages(int done, int of);
    }

    private final SetSettings settings;
    private final ReadingCache cache;
    private final Progress progress;
    private final String stamp;

    public SourceImporter(SetSettings settings, ReadingCache cache, Progress progress) {
        this.settings = settings;
        this.cache = cache;
        this.progress = progress;
        this.stamp = READER_VERSION + " " + settings.patterns();
    }

    /** Reads all pages of {@code file}; {@code name} is what the set calls it. */
    public List<SheetReading> read(Path file, String name) {
        if (java.nio.file.Files.exists(file)) {
            Optional<List<SheetReading>> known = cache.find(file, name, stamp);
            if (known.isPresent()) {
                return known.get();
            }
        }
        int pages;
        try (PDDocument document = Source.open(file)) {
            pages = document.getNumberOfPages();
        } catch (IOException e) {
            throw new UserError("cannot read " + file + ": " + e.getMessage(), e);
        }
        return readPages(file, name, pages);
    }

    /** @param key null where the reading is not to be kept */
    private record Read(SheetReading reading, String key) {}

    private List<SheetReading> readPages(Path file, String name, int pages) {
        int workers = Math.min(pages, Runtime.getRuntime().availableProcessors());
        AtomicInteger next = new AtomicInteger();
        AtomicInteger done = new AtomicInteger();
        Read[] out = new Read[pages];
        FileLetters letters = new FileLetters(file);
        ExecutorService pool = Executors.newFixedThreadPool(workers);
        try {
            List<Future<?>> running = new ArrayList<>();
            for (int w = 0; w < workers; w++) {
                running.add(pool.submit(() -> work(file, name, letters, next, done, out)));
            }
            for (Future<?> f : running) {
                f.get();
            }
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException r) {
                throw r;
            }
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new UserError("stopped; the pages read so far are kept", e);
        } finally {
            pool.shutdownNow();
        }
        if (List.of(out).stream().allMatch(r -> r.key() != null)) {
            cache.keepIndex(
                    file, name, stamp, List.of(out).stream().map(Read::key).toList());
        }
        return List.of(out).stream().map(Read::reading).toList();
    }

    private void work(Path file, String name, FileLetters letters, AtomicInteger next, AtomicInteger done, Read[] out) {
        PageDigest digest = new PageDigest(stamp);
        try (SheetReader reader = new SheetReader(settings, letters);
                PDDocument document = Source.open(file)) {
            for (int i = next.getAndIncrement(); i < out.length; i = next.getAndIncrement()) {
                PageKey page = new PageKey(name, i + 1);
                PDPage drawn = page(document, i, file);
                String key = digest.of(drawn);
                Optional<SheetReading> known = cache.find(key, page);
                SheetReading reading = known.isPresent() ? known.get() : reader.read(document, i, page);
                boolean whole = known.isPresent() || reader.whole();
                if (known.isEmpty() && whole) {
                    cache.keep(key, reading);
                }
                out[i] = new Read(reading, whole ? key : null);
                progress.pages(done.incrementAndGet(), out.length);
            }
        } catch (IOException e) {
            throw new UserError(file + " cannot be read to its end (" + e.getMessage() + "); copy it again", e);
        }
    }

    private static PDPage page(PDDocument document, int index, Path file) {
        try {
            return document.getPage(index);
        } catch (IllegalStateException e) {
            // PDFBox tells so of a page tree that leads back to itself
            throw new UserError(
                    file + ": page " + (index + 1) + " cannot be found (" + e.getMessage() + "); export it again", e);
        }
    }
}
