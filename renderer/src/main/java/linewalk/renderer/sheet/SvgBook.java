package linewalk.renderer.sheet;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;

/** SVG, a file for each page: text stays text, the typeface is inside. */
final class SvgBook implements Book {

    private final List<byte[]> finished = new ArrayList<>();
    private final double widthPt;
    private final double heightPt;
    private final String title;

    SvgBook(double widthPt, double heightPt, String title) {
        this.widthPt = widthPt;
        this.heightPt = heightPt;
        this.title = title;
    }

    @Override
    public int pages() {
        return finished.size();
    }

    @Override
    public int files() {
        return finished.size();
    }

    @Override
    public Page newPage() {
        return new SvgPage(pages(), new SvgSheet(widthPt, heightPt, title), finished::add);
    }

    @Override
    public void bookmark(String title, boolean toNextPage) {
        // the format has none
    }

    @Override
    public void write(int file, OutputStream out) throws IOException {
        out.write(finished.get(file));
    }

    @Override
    public void close() {
        finished.clear();
    }
}
