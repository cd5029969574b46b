package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import linewalk.importer.lettering.SeenBlanks;
import linewalk.importer.ocr.ReadLetter;
import linewalk.importer.ocr.ReadLetter.Option;

/**
 * What signs that look alike were read as elsewhere on the page. Where several agree, the next one need not be read; where
 * a sign was read, they weigh its readings: a 7 with a bar is no F, since the F looks different.
 */
final class Alike {

    /**
     * Signs that are alike differ so much more than nearest ones usually do, on this page. Measured on scans: equal letters
     * are up to 0.015 apart at 300 dpi and 0.05 at 200 dpi in black and white, unequal ones from 0.04 (D and O) on.
     */
    private static final double SPREAD = 2.5;

    /** Pixel by pixel the same, as in pages that a program painted. */
    private static final double SAME = 0.001;

    private static final double MOST = 0.03;

    /** Enough to tell what is usual. */
    private static final int SAMPLE = 400;

    /** In heights of a capital, where the page does not tell. */
    private static final double BLANK = 0.4;

    private static final int ENOUGH = 3;
    private static final double WELL = 0.85;

    /** A letter may be what it was not read as. */
    private static final double UNREAD = 0.05;

    private static final double UNSEEN = 0.02;

    private record Read(Glimpse glimpse, ReadLetter letter) {}

    private final List<Read> read = new ArrayList<>();
    private final SeenBlanks blanks = new SeenBlanks();
    private final double radius;

    private Alike(double radius) {
        this.radius = radius;
    }

    /** @param all signs of the page */
    static Alike on(List<Glimpse> all) {
        List<Glimpse> some = all.subList(0, Math.min(SAMPLE, all.size()));
        double[] nearest = new double[some.size()];
        for (int i = 0; i < nearest.length; i++) {
            nearest[i] = 1;
            for (int j = 0; j < nearest.length; j++) {
                if (i != j) {
                    nearest[i] = Math.min(nearest[i], some.get(i).apart(some.get(j), nearest[i]));
                }
            }
        }
        java.util.Arrays.sort(nearest);
        return new Alike(
                nearest.length == 0 ? 0 : Math.max(SAME, Math.min(MOST, SPREAD * nearest[nearest.length / 2])));
    }

    /** @param letters of each sign, or null */
    void note(Seen seen, List<ReadLetter> letters) {
        for (int i = 0; i < letters.size(); i++) {
            if (letters.get(i) != null) {
                read.add(new Read(seen.glimpses().get(i), letters.get(i)));
                if (i > 0 && letters.get(i - 1) != null) {
                    blanks.note(seen.gap(i), letters.get(i).afterBlank());
                }
            }
        }
    }

    private List<Read> like(Glimpse g) {
        return read.stream().filter(r -> r.glimpse().apart(g, radius) <= radius).toList();
    }

    /** For every sign what all that look like it were read as; null where one of them is not known so well. */
    List<ReadLetter> known(Seen seen) {
        List<Option> said = new ArrayList<>();
        for (Glimpse g : seen.glimpses()) {
            List<Read> like = like(g);
            if (like.size() < ENOUGH
                    || !like.stream()
                            .allMatch(r -> agree(r.letter(), like.get(0).letter()))) {
                return null;
            }
            said.add(like.get(0).letter().options().get(0));
        }
        double limit = blanks.limit(BLANK);
        List<ReadLetter> out = new ArrayList<>();
        for (int i = 0; i < said.size(); i++) {
            boolean blank = i > 0 && seen.gap(i) > limit;
            out.add(new ReadLetter(0, 0, 0, 0, blank, List.of(said.get(i))));
        }
        return out;
    }

    private static boolean agree(ReadLetter a, ReadLetter b) {
        return a.text().equals(b.text()) && a.likelihood() > WELL;
    }

    /** A sign that was not read, by others that look like it; null where they are few. */
    ReadLetter overlooked(Seen seen, int sign) {
        boolean blank = sign > 0 && seen.gap(sign) > blanks.limit(BLANK);
        ReadLetter none = new ReadLetter(0, 0, 0, 0, blank, List.of());
        ReadLetter by = weighed(seen.glimpses().get(sign), none);
        return by == none ? null : by;
    }

    /** A sign's readings, weighed with those of others that look like it. */
    ReadLetter weighed(Glimpse g, ReadLetter own) {
        Map<String, Double> votes = new TreeMap<>();
        double cast = 0;
        for (Read r : like(g)) {
            r.letter().options().forEach(o -> votes.merge(o.text(), o.likelihood(), Double::sum));
            cast++;
        }
        if (cast < ENOUGH) {
            return own;
        }
        own.options().forEach(o -> votes.merge(o.text(), 0.0, Double::sum));
        double before = own.options().stream().mapToDouble(Option::likelihood).sum();
        List<Option> out = new ArrayList<>();
        double sum = 0;
        for (Map.Entry<String, Double> v : votes.entrySet()) {
            double seen = own.options().stream()
                    .filter(o -> o.text().equals(v.getKey()))
                    .mapToDouble(Option::likelihood)
                    .sum();
            double weight = (v.getValue() / cast + UNSEEN) * (UNREAD + seen);
            out.add(new Option(v.getKey(), weight));
            sum += weight;
        }
        double scale = Math.max(before, WELL) / sum;
        List<Option> sorted = out.stream()
                .map(o -> new Option(o.text(), o.likelihood() * scale))
                .sorted((a, b) -> Double.compare(b.likelihood(), a.likelihood()))
                .toList();
        return new ReadLetter(own.x0Px(), own.y0Px(), own.x1Px(), own.y1Px(), own.afterBlank(), sorted);
    }
}
