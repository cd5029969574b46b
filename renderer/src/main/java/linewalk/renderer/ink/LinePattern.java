package linewalk.renderer.ink;

import java.awt.Color;
import java.awt.geom.Point2D;
import java.util.List;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;

/** What a line carries beside its weight. Each can be told from all others without colour at half its size. */
public enum LinePattern {
    SOLID(0) {
        @Override
        void paint(Canvas c, LineStyle style, Course course) {
            line(c, style.color(), style.widthPt(), course.points());
        }
    },
    /** Two rails with white between them. */
    RAILS(0) {
        @Override
        void paint(Canvas c, LineStyle style, Course course) {
            line(c, style.color(), style.widthPt(), course.points());
            line(c, Color.WHITE, style.widthPt() - 2 * RAIL_PT, course.points());
        }
    },
    /** Bars across the line. */
    BARS(11) {
        @Override
        void paint(Canvas c, LineStyle style, Course course) {
            SOLID.paint(c, style, course);
            for (Course.Place p : course.places(13)) {
                line(c, style.color(), 2.6, List.of(p.at(0, -breadthPt() / 2), p.at(0, breadthPt() / 2)));
            }
        }
    },
    /** Full discs on the line. */
    BEADS(7.6) {
        @Override
        void paint(Canvas c, LineStyle style, Course course) {
            SOLID.paint(c, style, course);
            for (Course.Place p : course.places(17)) {
                c.fill(style.color(), Canvas.disc(p.xPt(), p.yPt(), breadthPt() / 2));
            }
        }
    },
    /** Empty discs on the line. */
    RINGS(8.2) {
        @Override
        void paint(Canvas c, LineStyle style, Course course) {
            SOLID.paint(c, style, course);
            double radiusPt = (breadthPt() - style.widthPt()) / 2;
            for (Course.Place p : course.places(17)) {
                c.fill(Color.WHITE, Canvas.disc(p.xPt(), p.yPt(), radiusPt));
                c.pen(style.color(), Ink.line(style.widthPt()));
                c.circle(p.xPt(), p.yPt(), radiusPt);
            }
        }
    },
    /** Wide and narrow in turn. */
    SWELLS(3.8) {
        @Override
        void paint(Canvas c, LineStyle style, Course course) {
            SOLID.paint(c, style, course);
            for (Course.Place p : course.places(18)) {
                line(c, style.color(), breadthPt(), List.of(p.at(-4.5, 0), p.at(4.5, 0)));
            }
        }
    },
    LONG_DASHES(0) {
        @Override
        void paint(Canvas c, LineStyle style, Course course) {
            course.dashes(11, 4).forEach(d -> line(c, style.color(), style.widthPt(), d));
        }
    },
    SHORT_DASHES(0) {
        @Override
        void paint(Canvas c, LineStyle style, Course course) {
            course.dashes(4, 3).forEach(d -> line(c, style.color(), style.widthPt(), d));
        }
    },
    /** To and fro. */
    ZIGZAG(7.6) {
        @Override
        void paint(Canvas c, LineStyle style, Course course) {
            line(c, style.color(), style.widthPt(), course.zigzag(8, (breadthPt() - style.widthPt()) / 2));
        }
    };

    private static final double RAIL_PT = 1.3;

    private final double breadthPt;

    LinePattern(double breadthPt) {
        this.breadthPt = breadthPt;
    }

    /** How far the pattern reaches across the line from side to side; 0 where it reaches no further than the line. */
    double breadthPt() {
        return breadthPt;
    }

    abstract void paint(Canvas c, LineStyle style, Course course);

    private static void line(Canvas c, Color color, double widthPt, List<Point2D> points) {
        c.pen(color, Ink.line(widthPt));
        c.polyline(points);
    }
}
