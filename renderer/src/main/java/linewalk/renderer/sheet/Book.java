package linewalk.renderer.sheet;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;

/** A print being made: pages of one size. The same drawing gives the same bytes. */
public interface Book extends Closeable {

    /** How many pages are finished; the number of the next. */
    int pages();

    /** A page to draw on; finish it before the next is asked for. */
    Page newPage() throws IOException;

    /** A bookmark to the next page made, or to none. Bookmarks of pages made after it stand under it. */
    void bookmark(String title, boolean toNextPage);

    /** How many files hold the finished pages: one for all, or one for each. */
    int files();

    /** Writes one of the files, counted from 0. Nothing can be drawn after. */
    void write(int file, OutputStream out) throws IOException;
}
