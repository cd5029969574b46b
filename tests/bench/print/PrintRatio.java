package linewalk.renderer;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import linewalk.drawing.DrawingSet;
import linewalk.linker.Excerpts;
import linewalk.renderer.ink.Palette;
import linewalk.renderer.scheme.KernelAlone;
import linewalk.tests.plant.RandomPlant;

/**
 * Compares, warm and in one run, the print of a whole circuit of 60 components, laid out and written as PDF, with the
 * kernel's layout of the same graph. Prints milliseconds and ratios.
 */
final class PrintRatio {

    private static final int PARTS = 60;
    private static final int CIRCUITS = 5;
    private static final int WARM = 60;
    private static final int RUNS = 25;

    private final PrintJob job;

    private PrintRatio(RandomPlant plant, Paper paper) {
        DrawingSet set = plant.set();
        job = new PrintJob(
                new SetFacts("Plant", set, plant.items(), plant.parts(), s -> Path.of("none.pdf"), Palette.OWN),
                Subject.of(new Excerpts(set).whole()),
                Moment.AT_REST,
                new PrintForm(paper, Turn.FITTING, Look.DRAWN, Set.of()),
                LocalDate.of(2026, 2, 3));
    }

    public static void main(String[] args) throws IOException {
        List<RandomPlant> plants = IntStream.iterate(1, i -> i + 1)
                .mapToObj(RandomPlant::of)
                .filter(p -> p.set().components().size() == PARTS)
                .limit(CIRCUITS)
                .toList();
        for (RandomPlant plant : plants) {
            new PrintRatio(plant, Paper.A0).run(WARM);
        }
        double[] ratios = new double[plants.size()];
        for (Paper paper : List.of(Paper.A0, Paper.A3)) {
            for (int i = 0; i < plants.size(); i++) {
                Times t = new PrintRatio(plants.get(i), paper).run(WARM + RUNS);
                System.out.printf(
                        "%s: kernel alone %.1f ms, print %.1f ms (%d bytes)%n",
                        paper, median(t.kernelMs), median(t.printMs), t.bytes);
                ratios[i] = median(t.printMs) / median(t.kernelMs);
            }
            Arrays.sort(ratios);
            System.out.printf("ratio %s %.2f%n", paper, ratios[ratios.length / 2]);
        }
    }

    private record Times(double[] kernelMs, double[] printMs, int bytes) {}

    private Times run(int times) throws IOException {
        double[] kernel = new double[times];
        double[] print = new double[times];
        int bytes = 0;
        for (int i = 0; i < times; i++) {
            kernel[i] = KernelAlone.layOutMs(DrawnScheme.of(job).built().scheme());
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            long start = System.nanoTime();
            TracePrint.write(job, out);
            print[i] = (System.nanoTime() - start) / 1e6;
            bytes = out.size();
        }
        return new Times(kernel, print, bytes);
    }

    /** Of what came after the first runs. */
    private static double median(double[] ms) {
        double[] last = Arrays.copyOfRange(ms, WARM, ms.length);
        Arrays.sort(last);
        return last[last.length / 2];
    }
}
