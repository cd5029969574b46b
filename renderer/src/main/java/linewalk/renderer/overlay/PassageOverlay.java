package linewalk.renderer.overlay;

import java.util.Optional;
import linewalk.drawing.Component;
import linewalk.drawing.Passage;
import linewalk.drawing.Point;
import linewalk.drawing.Port;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;

/** What a part was read to join at rest, from port to port: the part of a reading that decides where a path goes. */
final class PassageOverlay {

    private final Canvas canvas;
    private final Scale scale;

    PassageOverlay(Canvas canvas, Scale scale) {
        this.canvas = canvas;
        this.scale = scale;
    }

    void paint(Component part) {
        part.rest().ifPresent(rest -> rest.passages().forEach(p -> paint(part, p)));
    }

    private void paint(Component part, Passage p) {
        Optional<Port> from = part.findPort(p.from());
        Optional<Port> to = part.findPort(p.to());
        if (from.isPresent() && to.isPresent()) {
            join(from.get().place(), to.get().place(), p.oneWay(), p.opens() != null);
        }
    }

    void join(Point from, Point to, boolean oneWay, boolean pushed) {
        canvas.pen(
                Tint.PASSAGE,
                pushed ? Ink.dashed(scale.pt(1), (float) scale.pt(1.2), (float) scale.pt(1.6)) : Ink.line(scale.pt(1)));
        canvas.line(from.xPt(), from.yPt(), to.xPt(), to.yPt());
        if (oneWay) {
            // short of the port's own mark
            double share = Math.max(0.5, 1 - scale.pt(4) / Math.max(from.distancePt(to), 1e-9));
            double dx = to.xPt() - from.xPt();
            double dy = to.yPt() - from.yPt();
            canvas.arrow(from.xPt() + share * dx, from.yPt() + share * dy, dx, dy, scale.pt(5));
        }
    }
}
