package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import linewalk.importer.ocr.Crop;
import linewalk.importer.ocr.LetterReader;
import linewalk.importer.ocr.ReadLetter;
import linewalk.importer.ocr.ReadLetter.Option;

/**
 * Says what a test wants it to of the signs of a line.
 *
 * @param says an option for each sign, of whose heights it is told
 */
record SignReader(Function<List<Integer>, List<Option>> says) implements LetterReader {

    /** What blank columns part. */
    private record Sign(int x0, int x1, int y0, int y1) {
        int height() {
            return y1 - y0;
        }

        Sign with(int x, int y) {
            return new Sign(x0, x + 1, Math.min(y0, y), Math.max(y1, y + 1));
        }
    }

    @Override
    public List<ReadLetter> line(Crop crop) {
        List<Sign> signs = signs(crop);
        List<Option> said = says.apply(signs.stream().map(Sign::height).toList());
        List<ReadLetter> out = new ArrayList<>();
        for (int i = 0; i < signs.size(); i++) {
            Sign s = signs.get(i);
            out.add(new ReadLetter(s.x0, s.y0, s.x1, s.y1, false, List.of(said.get(i))));
        }
        return out;
    }

    private static List<Sign> signs(Crop crop) {
        List<Sign> signs = new ArrayList<>();
        Sign open = null;
        for (int x = 0; x < crop.widthPx(); x++) {
            Sign before = open;
            for (int y = 0; y < crop.heightPx(); y++) {
                if ((crop.grey()[y * crop.widthPx() + x] & 255) < 128) {
                    open = (open == null ? new Sign(x, x, y, y) : open).with(x, y);
                }
            }
            if (open != null && open == before) {
                signs.add(open);
                open = null;
            }
        }
        return signs;
    }

    @Override
    public void close() {}
}
