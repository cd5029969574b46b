package linewalk.renderer.link;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import linewalk.drawing.Box;
import linewalk.drawing.PageKey;
import linewalk.drawing.Point;
import linewalk.drawing.Reference;
import linewalk.drawing.Sheet;
import linewalk.renderer.copy.OnPage;
import linewalk.renderer.copy.SourceCopy;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.filespecification.PDSimpleFileSpecification;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceRGB;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionRemoteGoTo;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDBorderStyleDictionary;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitRectangleDestination;

/** Links from references to their mates, seen in the middle of the window. */
final class Links {

    /** Of the page's sides, around the mate. */
    private static final double VIEW = 0.3;

    /** On the screen only: links are not printed. */
    private static final float UNDERLINE_PT = 0.8f;

    private static final float[] BLUE = {0.1f, 0.35f, 0.8f};

    private final LinkJob job;
    private final SourceCopy copy;
    private final Map<PageKey, Sheet> sheets;

    Links(LinkJob job, SourceCopy copy, Map<PageKey, Sheet> sheets) {
        this.job = job;
        this.copy = copy;
        this.sheets = sheets;
    }

    /** Several mates share the reference's box side by side, in the order in which its text names them. */
    List<PDAnnotation> of(Reference r, List<Reference> mates) {
        List<PDAnnotation> links = new ArrayList<>();
        for (int i = 0; i < mates.size(); i++) {
            links.add(link(r, part(r.box().grow(1), i, mates.size()), mates.get(i)));
        }
        return links;
    }

    private static Box part(Box b, int i, int of) {
        if (b.widthPt() >= b.heightPt()) {
            double w = b.widthPt() / of;
            return new Box(b.x0Pt() + i * w, b.y0Pt(), b.x0Pt() + (i + 1) * w, b.y1Pt());
        }
        double h = b.heightPt() / of;
        return new Box(b.x0Pt(), b.y0Pt() + i * h, b.x1Pt(), b.y0Pt() + (i + 1) * h);
    }

    private PDAnnotation link(Reference r, Box box, Reference mate) {
        PDAnnotationLink link = new PDAnnotationLink();
        link.setRectangle(OnPage.rectangle(sheets.get(r.page()), box));
        PDBorderStyleDictionary border = new PDBorderStyleDictionary();
        border.setStyle(PDBorderStyleDictionary.STYLE_UNDERLINE);
        border.setWidth(UNDERLINE_PT);
        link.setBorderStyle(border);
        link.setColor(new PDColor(BLUE, PDDeviceRGB.INSTANCE));
        link.setContents("to '" + mate.text() + "' on " + job.set().address(mate.page(), mate.place()));
        if (mate.page().source().equals(r.page().source())) {
            link.setDestination(view(mate));
        } else {
            link.setAction(remote(mate));
        }
        return link;
    }

    private PDPageFitRectangleDestination view(Reference mate) {
        PDPageFitRectangleDestination view = new PDPageFitRectangleDestination();
        view.setPage(copy.page(mate.page().page()));
        PDRectangle around = around(mate);
        view.setLeft((int) around.getLowerLeftX());
        view.setBottom((int) around.getLowerLeftY());
        view.setRight((int) around.getUpperRightX());
        view.setTop((int) around.getUpperRightY());
        return view;
    }

    private PDRectangle around(Reference mate) {
        Sheet sheet = sheets.get(mate.page());
        Point c = mate.box().center();
        double w = VIEW * sheet.widthPt() / 2;
        double h = VIEW * sheet.heightPt() / 2;
        return OnPage.rectangle(sheet, new Box(c.xPt() - w, c.yPt() - h, c.xPt() + w, c.yPt() + h));
    }

    /** Into another file of the set, by its name and the page's number. */
    private PDActionRemoteGoTo remote(Reference mate) {
        PDActionRemoteGoTo action = new PDActionRemoteGoTo();
        PDSimpleFileSpecification file = new PDSimpleFileSpecification();
        file.setFile(job.names().get(mate.page().source()));
        action.setFile(file);
        PDRectangle r = around(mate);
        COSArray view = new COSArray();
        view.add(COSInteger.get(mate.page().page() - 1L));
        view.add(COSName.getPDFName("FitR"));
        for (float side : new float[] {r.getLowerLeftX(), r.getLowerLeftY(), r.getUpperRightX(), r.getUpperRightY()}) {
            view.add(COSInteger.get((long) side));
        }
        action.setD(view);
        return action;
    }
}
