package linewalk.renderer.overlay;

import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import linewalk.drawing.Affine;
import linewalk.drawing.PageKey;
import linewalk.drawing.Sheet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.multipdf.LayerUtility;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.util.Matrix;

/** The sheets' own pages: as vector forms of a book, and as maps of their ink. */
final class Originals implements Closeable {

    private static final float PIXELS_PER_A3_PT = 1;

    private final Function<String, Path> sources;
    private final LayerUtility layers;
    private final Map<String, Optional<PDDocument>> open = new LinkedHashMap<>();

    Originals(Function<String, Path> sources, PDDocument target) {
        this.sources = sources;
        layers = new LayerUtility(target);
    }

    /** The page in its own user space; empty where the source is missing or cannot be read. */
    Optional<PDFormXObject> form(PageKey key) {
        Optional<PDDocument> source = document(key);
        try {
            if (source.isEmpty()) {
                return Optional.empty();
            }
            PDFormXObject form = layers.importPageAsForm(source.get(), key.page() - 1);
            // the sheet's own affine already knows of rotation and crop box
            form.setMatrix(new AffineTransform());
            form.setBBox(source.get().getPage(key.page() - 1).getCropBox());
            return Optional.of(form);
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** Blank where the page cannot be drawn: labels then stand where they fall. */
    InkMap ink(Sheet sheet) {
        Optional<PDDocument> source = document(sheet.page());
        try {
            return source.isEmpty() ? InkMap.BLANK : ink(source.get(), sheet);
        } catch (IOException e) {
            return InkMap.BLANK;
        }
    }

    private static InkMap ink(PDDocument source, Sheet sheet) throws IOException {
        int index = sheet.page().page() - 1;
        // the renderer leaves the user unit out
        float unit = source.getPage(index).getUserUnit();
        float scale = (float) (PIXELS_PER_A3_PT * unit / Scale.of(sheet).factor());
        return InkMap.of(
                new PDFRenderer(source).renderImage(index, scale, ImageType.GRAY), sheet.widthPt(), sheet.heightPt());
    }

    /** From the page's user space to the page as displayed; empty where a page has no extent. */
    static Optional<Matrix> toDisplayed(Sheet sheet) {
        Affine a = sheet.toPage();
        try {
            return Optional.of(
                    new Matrix(new AffineTransform(a.a(), a.d(), a.b(), a.e(), a.c(), a.f()).createInverse()));
        } catch (NoninvertibleTransformException e) {
            return Optional.empty();
        }
    }

    private Optional<PDDocument> document(PageKey key) {
        return open.computeIfAbsent(key.source(), this::load)
                .filter(d -> key.page() >= 1 && key.page() <= d.getNumberOfPages());
    }

    private Optional<PDDocument> load(String source) {
        Path file = sources.apply(source);
        try {
            return file == null || !Files.isReadable(file)
                    ? Optional.empty()
                    : Optional.of(Loader.loadPDF(file.toFile()));
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
