package linewalk.renderer.link;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import linewalk.drawing.Box;
import linewalk.drawing.PageKey;
import linewalk.drawing.Point;
import linewalk.drawing.Reference;
import linewalk.drawing.Sheet;
import linewalk.drawing.Zone;
import linewalk.renderer.copy.CosText;
import linewalk.renderer.copy.Increment;
import linewalk.renderer.copy.OnPage;

/** Links from references to their mates, seen in the middle of the window. On the screen only: links are not printed. */
final class Links {

    /** Of the page's sides, around the mate. */
    private static final double VIEW = 0.3;

    private static final int LENGTH = 240;

    private static final String LOOK = "<</Type/Annot/Subtype/Link/BS<</S/U/W 0.8>>/C[0.1 0.35 0.8]/Rect";

    private final LinkJob job;
    private final Increment copy;
    private final Map<PageKey, Sheet> sheets;

    Links(LinkJob job, Increment copy, Map<PageKey, Sheet> sheets) {
        this.job = job;
        this.copy = copy;
        this.sheets = sheets;
    }

    /** Several mates share the reference's box side by side, in the order in which its text names them. */
    List<String> of(Reference r, List<Reference> mates) {
        List<String> links = new ArrayList<>();
        for (int i = 0; i < mates.size(); i++) {
            links.add(copy.add(link(r, part(r.box().grow(1), i, mates.size()), mates.get(i))));
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

    private String link(Reference r, Box box, Reference mate) {
        StringBuilder link = new StringBuilder(LENGTH).append(LOOK).append('[');
        sides(link, OnPage.box(sheets.get(r.page()), box));
        link.append("]/Contents ").append(CosText.text("to '" + mate.text() + "' on " + address(mate)));
        boolean here = mate.page().source().equals(r.page().source());
        if (here) {
            link.append("/Dest[").append(copy.page(mate.page().page()));
        } else {
            link.append("/A<</S/GoToR/F ")
                    .append(CosText.text(job.names().get(mate.page().source())))
                    .append("/D[")
                    .append(mate.page().page() - 1);
        }
        link.append("/FitR ");
        sides(link, around(mate));
        return link.append(here ? "]>>" : "]>>>>").toString();
    }

    private String address(Reference mate) {
        Zone zone = mate.zone();
        return "sheet " + sheets.get(mate.page()).name() + (zone == null ? "" : ", " + zone);
    }

    private static void sides(StringBuilder out, Box r) {
        CosText.number(out, r.x0Pt());
        CosText.number(out.append(' '), r.y0Pt());
        CosText.number(out.append(' '), r.x1Pt());
        CosText.number(out.append(' '), r.y1Pt());
    }

    private Box around(Reference mate) {
        Sheet sheet = sheets.get(mate.page());
        Point c = mate.box().center();
        double w = VIEW * sheet.widthPt() / 2;
        double h = VIEW * sheet.heightPt() / 2;
        return OnPage.box(sheet, new Box(c.xPt() - w, c.yPt() - h, c.xPt() + w, c.yPt() + h));
    }
}
