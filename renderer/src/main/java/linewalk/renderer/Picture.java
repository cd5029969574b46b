package linewalk.renderer;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import linewalk.renderer.sheet.Page;
import linewalk.renderer.sheet.Row;

/** The path itself in one of the looks, laid out for an area of a given size. */
interface Picture {

    /** How many pages it takes, at least 1. */
    int pages();

    /** It keeps to the areas beside the words; else it takes the pages' whole width. */
    boolean leavesRoomForWords();

    void paint(int page, Page on, Rectangle2D area) throws IOException;

    /** Where parts stand on a page, by their ids; only those that can be told. */
    Map<String, Rectangle2D> places(int page, Rectangle2D area);

    /** What the marks used mean. */
    List<Mark> legend();

    /** Remarks on what this picture could not show. */
    List<String> remarks();

    /** One entry of the legend: its sample is painted in a field 44 wide and 18 high. */
    record Mark(String meaning, Row.Painter sample) {}
}
