package linewalk.tests.quality;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** What a print says of itself in marked content. Places in points of the page, y downwards. */
sealed interface Thing {

    String name();

    /** @param name of its net; lines of one net may meet */
    record Line(String name, List<Point2D> course) implements Thing {

        public Line {
            course = List.copyOf(course);
        }
    }

    record Symbol(String name, Rectangle2D box) implements Thing {}

    record Field(String name, Rectangle2D box) implements Thing {}
}
