package linewalk.importer.scan;

import boofcv.struct.image.GrayU8;
import java.util.List;
import linewalk.importer.ocr.LetterReader;
import linewalk.importer.ocr.OnSigns;
import linewalk.importer.ocr.ReadLetter;

/**
 * A row of text as it is looked at in one direction.
 *
 * @param turn quarter turns, clockwise, that bring the row upright on the upright page
 * @param straight its signs as if they did not lean, in the same order
 * @param glimpses of its signs, in order
 */
record Seen(
        TextRow row,
        Upright upright,
        int turn,
        RowImage image,
        List<Sign> signs,
        List<Sign> straight,
        List<Glimpse> glimpses) {

    /** A letter alone that is read so well needs no second look. */
    private static final double SURE = 0.85;

    /** @param lean of the page's letters to the right, as a share of their height */
    static Seen of(TextRow found, GrayU8 grey, Upright page, int turn, double lean) {
        Upright turned = page.turned(turn);
        TextRow row = Dirt.removed(found, turned);
        RowImage image = RowImage.of(row, grey, turned, lean);
        List<Sign> signs = Sign.of(row, turned);
        double middle = RowImage.middle(row, turned);
        List<Sign> straight =
                signs.stream().map(s -> s.straightened(lean, middle)).toList();
        List<Glimpse> glimpses =
                straight.stream().map(s -> Glimpse.of(image, s)).toList();
        return new Seen(row, turned, turn, image, signs, straight, glimpses);
    }

    /** White before a sign, in heights of a capital. */
    double gap(int before) {
        double cap = image.cap() / image.scale();
        return row.cell()
                .gap(straight.get(before - 1).span(), straight.get(before).span(), cap);
    }

    /** For every sign what it was read as, or null. */
    List<ReadLetter> look(LetterReader reader) {
        List<OnSigns.Place> places = straight.stream()
                .map(s -> new OnSigns.Place(image.cropX(s.x0()), image.cropX(s.x1())))
                .toList();
        List<ReadLetter> read = row.blobs().size() == 1 ? alone(reader) : reader.line(image.crop());
        return OnSigns.of(places, read, image.cap());
    }

    /** A letter alone is read badly. Set three times it is a word, of which the letter that two agree on is taken. */
    private List<ReadLetter> alone(LetterReader reader) {
        List<ReadLetter> one = reader.line(image.crop());
        if (one.size() == 1 && one.get(0).likelihood() > SURE) {
            return one;
        }
        List<ReadLetter> three = reader.line(image.repeated(3));
        for (ReadLetter l : three) {
            double agree = three.stream()
                    .filter(o -> o.text().equalsIgnoreCase(l.text()))
                    .count();
            if (three.size() <= 4 && agree >= 2) {
                boolean unanimous = three.size() == 3 && agree == 3 && l.text().matches("[A-Z0-9]");
                double likelihood =
                        unanimous ? Math.sqrt(l.likelihood()) : l.likelihood() * Math.min(1, agree / 3 + 0.1);
                return List.of(new ReadLetter(
                        0, 0, image.crop().widthPx(), 0, false, List.of(new ReadLetter.Option(l.text(), likelihood))));
            }
        }
        return List.of();
    }
}
