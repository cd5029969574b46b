package linewalk.renderer.link;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linewalk.drawing.Component;
import linewalk.drawing.PageKey;
import linewalk.drawing.Point;
import linewalk.drawing.Sheet;
import linewalk.linker.Leg;
import linewalk.linker.Trace;
import linewalk.renderer.RunWay;
import linewalk.renderer.copy.OnPage;
import linewalk.renderer.copy.SourceCopy;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceRGB;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationMarkup;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationPolyline;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationSquare;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDBorderStyleDictionary;

/** A path as annotations on a layer of its own, which every viewer's list of layers can hide. */
final class PathLayer {

    private static final float[] MAGENTA = {0.8f, 0.1f, 0.55f};
    private static final float OPACITY = 0.45f;

    /** Of the page's larger side. */
    private static final double WIDTH = 0.0022;

    private final String source;
    private final Map<PageKey, Sheet> sheets;
    private final Map<Integer, List<PDAnnotation>> notes = new LinkedHashMap<>();

    PathLayer(String source, Map<PageKey, Sheet> sheets) {
        this.source = source;
        this.sheets = sheets;
    }

    /** Adds the path to a file, by one more update. */
    void write(Path file, Trace trace, OutputStream out) throws IOException {
        try (SourceCopy copy = SourceCopy.open(file)) {
            String name = "Path " + trace.question().from() + " to "
                    + trace.question().to();
            PDOptionalContentGroup layer = layer(copy, name);
            for (Leg leg : trace.legs()) {
                if (leg instanceof Leg.Along a && here(a.line().page())) {
                    add(copy, a.line().page(), along(a), name, layer);
                } else if (leg instanceof Leg.Through t && here(t.component().page())) {
                    add(copy, t.component().page(), through(t.component()), name, layer);
                }
            }
            notes.forEach(copy::annotate);
            copy.write(out);
        }
    }

    private boolean here(PageKey page) {
        return page.source().equals(source);
    }

    private static PDOptionalContentGroup layer(SourceCopy copy, String name) {
        PDDocumentCatalog catalog = copy.document().getDocumentCatalog();
        PDOptionalContentProperties layers = catalog.getOCProperties();
        if (layers == null) {
            layers = new PDOptionalContentProperties();
            catalog.setOCProperties(layers);
        }
        PDOptionalContentGroup layer = new PDOptionalContentGroup(name);
        layers.addGroup(layer);
        copy.changed(catalog.getCOSObject());
        copy.changed((org.apache.pdfbox.cos.COSDictionary) layers.getCOSObject());
        return layer;
    }

    private PDAnnotationMarkup along(Leg.Along a) {
        Sheet sheet = sheets.get(a.line().page());
        List<Point> way = RunWay.between(a.line().runs(), a.from().place(), a.to().place())
                .orElse(List.of(a.from().place(), a.to().place()));
        PDAnnotationPolyline course = new PDAnnotationPolyline();
        course.setVertices(OnPage.course(sheet, way));
        course.setRectangle(
                OnPage.rectangle(sheet, linewalk.drawing.Box.around(way).grow(2 * widthPt(sheet))));
        course.setBorderStyle(border(sheet));
        return course;
    }

    private PDAnnotationMarkup through(Component c) {
        Sheet sheet = sheets.get(c.page());
        PDAnnotationSquare box = new PDAnnotationSquare();
        PDRectangle around = OnPage.rectangle(sheet, c.box().grow(2 * widthPt(sheet)));
        box.setRectangle(around);
        box.setBorderStyle(border(sheet));
        return box;
    }

    private void add(
            SourceCopy copy, PageKey page, PDAnnotationMarkup mark, String name, PDOptionalContentGroup layer) {
        mark.setColor(new PDColor(MAGENTA, PDDeviceRGB.INSTANCE));
        mark.setConstantOpacity(OPACITY);
        mark.setContents(name + ": check it on the machine before any work");
        mark.setTitlePopup("Linewalk");
        mark.setPrinted(true);
        mark.getCOSObject().setItem(COSName.OC, layer);
        mark.constructAppearances(copy.document());
        notes.computeIfAbsent(page.page(), k -> new ArrayList<>()).add(mark);
    }

    private static PDBorderStyleDictionary border(Sheet sheet) {
        PDBorderStyleDictionary border = new PDBorderStyleDictionary();
        border.setWidth((float) widthPt(sheet));
        return border;
    }

    private static double widthPt(Sheet sheet) {
        return WIDTH * Math.max(sheet.widthPt(), sheet.heightPt());
    }
}
