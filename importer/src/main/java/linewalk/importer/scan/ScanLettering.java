package linewalk.importer.scan;

import boofcv.struct.image.GrayU8;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import linewalk.importer.ocr.LetterReader;
import linewalk.importer.ocr.ReadLetter;

/**
 * Reads the rows of text of one scan. First some long rows in all turns: they tell how the page lies. Then every row as
 * it should stand, rows across the reading direction both ways; what does not read well is line work.
 */
final class ScanLettering {

    private static final int SAMPLES = 14;

    /** So many more samples that read better one way leave no doubt. */
    private static final int CLEAR = 4;

    private static final double WELL = 0.8;
    private static final double READ = 0.5;

    /** A word that drawings have, unless it is so short that strokes may look like it, or the next line of a text. */
    private static final double READ_BORNE_OUT = 0.4;

    private static final int LONG = 3;

    /** Inclined lettering leans by 15 degrees (ISO 3098), 0.27 of its height; upright letters by about nothing in the middle. */
    private static final double LEANS = 0.12;

    /** A letter alone has no neighbours to bear it out. */
    private static final double ALONE = 0.55;

    /** Nothing but a letter stands there. */
    private static final double IN_HALF = 0.15;

    /** What is as tall as a capital is no speck. */
    private static final double READ_TALL = 0.88;

    /** Of a size that no row has. */
    private static final double SURE = 0.85;

    /** How far from the edge, as a share of the page. */
    private static final double TITLE_BLOCK = 0.15;

    /** How far other words of a title block stand from a figure alone in it, in its heights. */
    private static final double HEADING = 2.5;

    /** Share of its box that a stroke fills. */
    private static final double BAR = 0.8;

    private final Bits ink;
    private final GrayU8 grey;
    private final Upright registered;
    private final LetterReader reader;
    private final WellFormed wellFormed;
    private final List<TextRow> rows;
    private final double lean;
    private final Map<Sample, List<ReadLetter>> sampled = new HashMap<>();

    /** @param turn of the registered page */
    private record Sample(TextRow row, int turn) {}

    ScanLettering(
            Bits ink, GrayU8 grey, Upright registered, LetterReader reader, WellFormed wellFormed, List<TextRow> rows) {
        this.ink = ink;
        this.grey = grey;
        this.registered = registered;
        this.reader = reader;
        this.wellFormed = wellFormed;
        this.rows = rows;
        lean = lean();
    }

    /** How far the page's letters lean to the right, by the middle one of its words; 0 where they stand. */
    private double lean() {
        double[] slants = rows.stream()
                .filter(r -> r.blobs().size() > LONG)
                .flatMap(r -> Sign.of(r, registered.turned(r.along() ? 0 : 1)).stream())
                .mapToDouble(Sign::slant)
                .sorted()
                .toArray();
        double middle = slants.length == 0 ? 0 : slants[slants.length / 2];
        return middle > LEANS ? middle : 0;
    }

    /** Quarter turns, clockwise, that bring the page upright. */
    int pageTurn() {
        int letters = 0;
        for (TextRow r : rows) {
            letters += r.blobs().size() < 2
                    ? 0
                    : r.along() ? r.blobs().size() : -r.blobs().size();
        }
        boolean along = letters >= 0;
        List<TextRow> samples = rows.stream()
                .filter(r -> r.along() == along && r.blobs().size() >= 3)
                .sorted(Comparator.comparingInt(
                        (TextRow r) -> -Math.min(12, r.blobs().size())))
                .limit(SAMPLES)
                .toList();
        int one = along ? 0 : 1;
        double upright = 0;
        int lead = 0;
        for (int i = 0; i < samples.size() && Math.abs(lead) < CLEAR; i++) {
            double better = sense(samples.get(i), one) - sense(samples.get(i), one + 2);
            upright += better;
            lead += (int) Math.signum(better);
        }
        return upright >= 0 ? one : one + 2;
    }

    private double sense(TextRow row, int turn) {
        Seen seen = Seen.of(row, grey, registered, turn, lean);
        List<ReadLetter> letters = seen.look(reader);
        sampled.put(new Sample(row, turn), letters);
        ReadRow read = ReadRow.of(seen, letters);
        return read.likelihood() * read.words();
    }

    /** What is text, on a page brought upright by these turns. */
    List<ReadRow> read(Upright page, int pageTurn) {
        List<Seen> words = rows.stream()
                .filter(r -> r.blobs().size() > 1)
                .map(r -> Seen.of(r, grey, page, r.along() == (pageTurn % 2 == 0) ? 0 : 1, lean))
                .sorted(Comparator.comparingInt((Seen s) -> -s.signs().size()))
                .toList();
        Alike alike =
                Alike.on(words.stream().flatMap(s -> s.glimpses().stream()).toList());
        List<Looked> looked =
                words.stream().map(s -> look(s, page, pageTurn, alike)).toList();
        List<ReadRow> weighed = looked.stream()
                .flatMap(l -> weighed(l, page, pageTurn, alike).stream())
                .toList();
        List<ReadRow> plain =
                weighed.stream().filter(r -> isText(r, least(r.text().strip()))).toList();
        List<ReadRow> read = new ArrayList<>();
        for (ReadRow r : weighed) {
            boolean block = plain.stream().anyMatch(p -> p.row().besideLine(r.row()));
            if (isText(r, block ? READ_BORNE_OUT : least(r.text().strip()))) {
                read.add(r);
            }
        }
        read.addAll(alone(page, read, alike));
        return wellFormed.alike(read);
    }

    /** The row without what is no text at its ends. That may be text of another size: it is read once more by itself. */
    private List<ReadRow> weighed(Looked looked, Upright page, int pageTurn, Alike alike) {
        ReadRow whole = wellFormed.of(looked.weighed(alike));
        ReadRow text = whole.trimmed(this::least).unmarked(wellFormed::knows);
        List<ReadRow> all = new ArrayList<>(List.of(text));
        for (TextRow off : text.letters().isEmpty() ? List.<TextRow>of() : whole.beside(text)) {
            Looked again = look(Seen.of(off, grey, page, looked.seen().turn(), lean), page, pageTurn, alike);
            all.add(wellFormed.of(again.weighed(alike)).trimmed(this::least));
        }
        return all;
    }

    private record Looked(Seen seen, List<ReadLetter> letters) {

        ReadRow weighed(Alike alike) {
            List<ReadLetter> out = new ArrayList<>();
            for (int i = 0; i < letters.size(); i++) {
                ReadLetter l = letters.get(i);
                out.add(
                        l == null
                                ? overlooked(i, alike)
                                : alike.weighed(seen.glimpses().get(i), l));
            }
            return ReadRow.of(seen, out);
        }

        /** A letter within a word that the reader saw as part of the one beside it; at an end it may be a line. */
        private ReadLetter overlooked(int sign, Alike alike) {
            double cap = seen.image().cap() / seen.image().scale();
            boolean within = sign > 0
                    && sign + 1 < letters.size()
                    && letters.get(sign - 1) != null
                    && letters.get(sign + 1) != null;
            return within && seen.signs().get(sign).height() > READ_TALL * cap ? alike.overlooked(seen, sign) : null;
        }
    }

    private Looked look(Seen s, Upright page, int pageTurn, Alike alike) {
        List<ReadLetter> known = alike.known(s);
        if (known != null) {
            return new Looked(s, known);
        }
        Looked best = turns(s, page, pageTurn);
        ReadRow row = ReadRow.of(best.seen(), best.letters());
        if (isText(row, least(row.text().strip()))) {
            alike.note(best.seen(), best.letters());
        }
        return best;
    }

    /** A row across the reading direction may stand either way. */
    private Looked turns(Seen s, Upright page, int pageTurn) {
        List<ReadLetter> sample = sampled.get(new Sample(s.row(), (pageTurn + s.turn()) % 4));
        Looked one = new Looked(s, sample == null ? s.look(reader) : sample);
        double likelihood = ReadRow.of(s, one.letters()).likelihood();
        if (s.turn() == 0 || likelihood > WELL) {
            return one;
        }
        Seen turned = Seen.of(s.row(), grey, page, 3, lean);
        Looked other = new Looked(turned, turned.look(reader));
        return ReadRow.of(turned, other.letters()).likelihood() > likelihood + 0.1 ? other : one;
    }

    private List<ReadRow> alone(Upright page, List<ReadRow> read, Alike alike) {
        List<Double> sizes = read.stream().map(r -> r.row().capPx()).sorted().toList();
        List<ReadRow> out = new ArrayList<>();
        for (TextRow r : rows) {
            Blob b = r.blobs().get(0);
            if (r.blobs().size() > 1 || b.solid() > BAR) {
                continue;
            }
            boolean usual = usualSize(r, sizes);
            boolean inBlock = !usual && inTitleBlock(b);
            if (usual || inBlock || Ring.around(b, ink)) {
                Seen seen = Seen.of(r, grey, page, inBlock ? turnBeside(b, read) : 0, lean);
                List<ReadLetter> known = alike.known(seen);
                ReadRow one = ReadRow.of(seen, known == null ? seen.look(reader) : known);
                boolean headed = inBlock && isHeaded(b, read) && one.text().matches("\\d");
                boolean half = read.stream().anyMatch(x -> Halves.apart(b, x.row(), ink));
                double least = half ? IN_HALF : headed ? READ : ALONE;
                if (isLetter(one, least) && (usual || headed || one.likelihood() > SURE)) {
                    out.add(wellFormed.of(one));
                }
            }
        }
        return out;
    }

    /** The heading of its cell, or what stands in the next one, is near. */
    private static boolean isHeaded(Blob b, List<ReadRow> read) {
        return read.stream().anyMatch(r -> r.letters().size() > 1 && r.row().distance(b) < HEADING * b.longer());
    }

    /** Where title blocks are, at any side; a sheet's number may be larger there than any other text. */
    private boolean inTitleBlock(Blob b) {
        double x = b.middleX() / grey.width;
        double y = b.middleY() / grey.height;
        return Math.min(Math.min(x, 1 - x), Math.min(y, 1 - y)) < TITLE_BLOCK;
    }

    /** Of the words nearest to a letter: a title block may stand across. */
    private static int turnBeside(Blob b, List<ReadRow> read) {
        return read.stream()
                .filter(r -> r.letters().size() > 1)
                .min(Comparator.comparingDouble(r -> r.row().distance(b)))
                .map(ReadRow::turn)
                .orElse(0);
    }

    private double least(String word) {
        return word.length() >= LONG && wellFormed.couldKnow(word) ? READ_BORNE_OUT : READ;
    }

    private static boolean isText(ReadRow r, double least) {
        return r.words() > 0
                && r.likelihood() > least
                && r.words() * 2 >= r.letters().size();
    }

    private boolean usualSize(TextRow r, List<Double> sizes) {
        double size = Math.max(r.y1() - r.y0(), r.x1() - r.x0());
        return sizes.isEmpty() || sizes.stream().anyMatch(s -> Math.abs(s - size) < 0.15 * s + 1);
    }

    private static boolean isLetter(ReadRow r, double least) {
        Blob b = r.row().blobs().get(0);
        boolean circle = r.text().matches("[oO0Qe@]") && Math.abs(b.width() - b.height()) <= 0.1 * b.longer() + 1;
        // a line's end and a corner, which stand alone more often than these letters
        boolean plain = r.text().matches("[rIl]");
        return r.letters().size() == 1 && r.words() == 1 && r.likelihood() > least && !circle && !plain;
    }
}
