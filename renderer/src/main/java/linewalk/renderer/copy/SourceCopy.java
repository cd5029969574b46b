package linewalk.renderer.copy;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import linewalk.drawing.UserError;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;

/**
 * A source to which annotations are added. It is written as an incremental update: the bytes of the source, then what is
 * new, so no content of any page can be touched.
 */
public final class SourceCopy implements Closeable {

    private static final long STACK_BYTES = 256L << 20;

    private final Path source;
    private final PDDocument document;
    private final List<PDPage> pages = new ArrayList<>();
    private final Set<COSDictionary> changed = new LinkedHashSet<>();
    private final StringBuilder added = new StringBuilder();

    private SourceCopy(Path source, PDDocument document) {
        this.source = source;
        this.document = document;
        document.getPages().forEach(pages::add);
    }

    /** @throws UserError where the file can't be read, or is locked so that nothing may be added */
    public static SourceCopy open(Path source) {
        return new SourceCopy(source, load(source));
    }

    static PDDocument load(Path source) {
        try {
            PDDocument document = Loader.loadPDF(source.toFile());
            if (document.isEncrypted()) {
                document.close();
                throw new UserError(source + " is encrypted, so nothing can be added to it; unlock a copy of it first");
            }
            return document;
        } catch (IOException e) {
            throw unreadable(source, e);
        }
    }

    static UserError unreadable(Path source, IOException e) {
        return new UserError("cannot read " + source + ": " + e.getMessage() + "; export it again", e);
    }

    public PDDocument document() {
        return document;
    }

    /** @param number from 1 */
    public PDPage page(int number) {
        return pages.get(number - 1);
    }

    /** Behind what the page has already. */
    public void annotate(int number, List<? extends PDAnnotation> annotations) {
        if (annotations.isEmpty()) {
            return;
        }
        COSDictionary page = page(number).getCOSObject();
        COSArray all = new COSArray();
        if (page.getDictionaryObject(COSName.ANNOTS) instanceof COSArray had) {
            had.forEach(all::add);
        }
        for (PDAnnotation a : annotations) {
            all.add(a.getCOSObject());
            added.append(number).append(a.getRectangle()).append(a.getContents());
        }
        page.setItem(COSName.ANNOTS, all);
        changed(page);
    }

    /** To be written again. */
    public void changed(COSDictionary dictionary) {
        changed.add(dictionary);
    }

    public void write(OutputStream out) throws IOException {
        if (changed.isEmpty()) {
            Files.copy(source, out);
        } else {
            // the second half of /ID follows from what is new, not from the clock
            byte[] told = added.toString().getBytes(StandardCharsets.UTF_8);
            document.setDocumentId(UUID.nameUUIDFromBytes(told).getMostSignificantBits());
            deep(() -> document.saveIncremental(out, changed));
        }
    }

    private interface Writing {
        void run() throws IOException;
    }

    /** PDFBox walks from page to page by recursion, as links lead: a large set takes a deep stack. */
    private static void deep(Writing writing) throws IOException {
        IOException[] failed = new IOException[1];
        Thread writer = new Thread(
                null,
                () -> {
                    try {
                        writing.run();
                    } catch (IOException e) {
                        failed[0] = e;
                    }
                },
                "linked copy",
                STACK_BYTES);
        writer.start();
        try {
            writer.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("interrupted", e);
        }
        if (failed[0] != null) {
            throw failed[0];
        }
    }

    @Override
    public void close() throws IOException {
        document.close();
    }
}
