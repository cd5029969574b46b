package linewalk.renderer;

import java.awt.geom.Rectangle2D;

final class CuttingsPicture {
    private CuttingsPicture() {}

    static Picture layOut(PrintJob job, Doubts doubts, Rectangle2D area, SourcePages sources) {
        return DrawnPicture.layOut(job, doubts, area);
    }
}
