package linewalk.renderer.ink;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linewalk.linker.step.PressureClass;

/**
 * Tells the class of the one level line on a copy from runs of black and white alone. It knows the legend in words
 * (three plain weights, two dashes, rails, bars, full and empty discs, wide and narrow, zigzag), not the palette.
 */
final class PatternReader {

    private final List<Cut> cuts = new ArrayList<>();

    /** What one cut across the line meets, in points of the print. */
    private record Cut(int runs, double extentPt, double middlePt) {}

    private PatternReader(Copy copy) {
        boolean[][] ink = copy.ink();
        for (int x = 0; x < ink[0].length; x++) {
            int runs = 0;
            int first = -1;
            int last = -1;
            for (int y = 0; y < ink.length; y++) {
                if (ink[y][x]) {
                    runs += y == 0 || !ink[y - 1][x] ? 1 : 0;
                    first = first < 0 ? y : first;
                    last = y;
                }
            }
            double extent = first < 0 ? 0 : (last - first + 1) / Copy.PX_PER_PT;
            cuts.add(new Cut(runs, extent, (first + last + 1) / 2.0 / Copy.PX_PER_PT));
        }
    }

    /** Empty where the copy shows nothing. */
    static Optional<PressureClass> read(Copy copy) {
        PatternReader reader = new PatternReader(copy);
        while (!reader.cuts.isEmpty() && reader.cuts.get(0).runs() == 0) {
            reader.cuts.remove(0);
        }
        while (!reader.cuts.isEmpty() && reader.cuts.get(reader.cuts.size() - 1).runs() == 0) {
            reader.cuts.remove(reader.cuts.size() - 1);
        }
        return reader.cuts.isEmpty() ? Optional.empty() : Optional.of(reader.tell());
    }

    private PressureClass tell() {
        if (share(0) > 0.1) {
            return dashPt() > 7 ? PressureClass.PILOT : PressureClass.DRAIN;
        }
        if (swingPt() > 1) {
            return PressureClass.UNKNOWN;
        }
        if (share(2) > 0.8) {
            return PressureClass.INTENSIFIED;
        }
        double narrowPt = quantile(0.1);
        double widePt = quantile(0.95);
        if (widePt < 1.5 * narrowPt) {
            return plain(cuts.stream().mapToDouble(Cut::extentPt).average().orElseThrow());
        }
        if (share(2) > 0.1) {
            return PressureClass.INTAKE;
        }
        if (widePt < 5) {
            return PressureClass.METERED;
        }
        return isAbrupt(narrowPt, widePt) ? PressureClass.HELD : PressureClass.REDUCED;
    }

    /** Between two weights the limit is their geometric mean. */
    private static PressureClass plain(double weightPt) {
        if (weightPt < Math.sqrt(0.8 * 2)) {
            return PressureClass.IDLE;
        }
        return weightPt < Math.sqrt(2 * 3.6) ? PressureClass.RETURN : PressureClass.SUPPLY;
    }

    private double share(int runs) {
        return cuts.stream().filter(c -> c.runs() == runs).count() / (double) cuts.size();
    }

    /** Mean length of black along the line. */
    private double dashPt() {
        long black = cuts.stream().filter(c -> c.runs() > 0).count();
        int dashes = 1;
        for (int i = 1; i < cuts.size(); i++) {
            dashes += cuts.get(i).runs() > 0 && cuts.get(i - 1).runs() == 0 ? 1 : 0;
        }
        return black / Copy.PX_PER_PT / dashes;
    }

    private double swingPt() {
        double mean = cuts.stream().mapToDouble(Cut::middlePt).average().orElseThrow();
        return Math.sqrt(cuts.stream()
                .mapToDouble(c -> Math.pow(c.middlePt() - mean, 2))
                .average()
                .orElseThrow());
    }

    private double quantile(double q) {
        return cuts.stream()
                .mapToDouble(Cut::extentPt)
                .sorted()
                .skip((long) (q * (cuts.size() - 1)))
                .findFirst()
                .orElseThrow();
    }

    /** Bars have hardly a cut between narrow and wide; discs are round and have many. */
    private boolean isAbrupt(double narrowPt, double widePt) {
        double third = (widePt - narrowPt) / 4;
        long between = cuts.stream()
                .filter(c -> c.extentPt() > narrowPt + third && c.extentPt() < widePt - third / 2)
                .count();
        long wide =
                cuts.stream().filter(c -> c.extentPt() >= widePt - third / 2).count();
        return between < wide / 2;
    }
}
