package linewalk.renderer;

import java.awt.geom.Rectangle2D;
import java.util.List;
import linewalk.renderer.scheme.Layout;
import linewalk.renderer.scheme.Paging;
import linewalk.renderer.scheme.Pieces;

/** The scheme of a print with the pieces of it that have been laid out: whichever way the paper lies, it is the same. */
record DrawnScheme(SchemeBuilder.Built built, Pieces pieces) {

    static DrawnScheme of(PrintJob job) {
        return new DrawnScheme(SchemeBuilder.build(job, Doubts.of(job)), new Pieces());
    }

    /** Empty where it does not come on one. */
    List<Layout> onOnePage(Rectangle2D area) {
        return Paging.single(built.scheme(), pieces, area.getWidth(), area.getHeight());
    }
}
