package linewalk.renderer.scheme;

import linewalk.renderer.iso.PortPlace;
import linewalk.renderer.sheet.Canvas;

/** What stands at a node: a field that no line crosses, with places where lines meet it. */
public interface Figure {

    double widthPt();

    double heightPt();

    /** Where the line of a port meets the field. */
    PortPlace place(String port);

    void paint(Canvas canvas, double xPt, double yPt);
}
