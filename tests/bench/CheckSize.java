import java.io.BufferedOutputStream;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import com.sun.management.OperatingSystemMXBean;
import linewalk.drawing.CycleChart;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.SetSettings;
import linewalk.drawing.SheetReading;
import linewalk.drawing.store.SetFolder;
import linewalk.importer.SourceImporter;
import linewalk.linker.Linker;
import linewalk.linker.Review;
import linewalk.renderer.link.LinkJob;
import linewalk.renderer.link.LinkedCopy;

/**
 * Reads a drawn set, pairs and checks it, and writes its linked copy; prints CPU seconds of each as one line {@code sheets
 * references import check copy}: the import once, the others the least of a few runs, warm and of one thread; the import is of all
 * threads.
 *
 * <p>Arguments: pairs of a PDF and a folder for its readings, the first of which only warms up.
 */
final class CheckSize {

    private static final int RUNS = 12;

    private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();
    private static final OperatingSystemMXBean MACHINE =
            (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

    @FunctionalInterface
    private interface Work {
        void run() throws Exception;
    }

    private CheckSize() {}

    public static void main(String... args) throws Exception {
        System.setProperty("java.awt.headless", "true");
        for (int i = 0; i < args.length; i += 2) {
            measure(Path.of(args[i]), Path.of(args[i + 1]), i > 0);
        }
        System.exit(0);
    }

    private static void measure(Path pdf, Path folder, boolean told) throws Exception {
        SetSettings settings = new SetSettings(List.of("set.pdf"), null, null);
        SourceImporter importer = new SourceImporter(settings, SetFolder.at(folder).readings(), (done, of) -> {});
        long start = MACHINE.getProcessCpuTime();
        List<SheetReading> readings = importer.read(pdf, "set.pdf");
        double imported = (MACHINE.getProcessCpuTime() - start) / 1e9;
        DrawingSet[] set = new DrawingSet[1];
        double checked = least(() -> set[0] = Review.of(
                Linker.link(readings, List.of(), settings, List.of(), CycleChart.NONE), settings, List.of()));
        Path out = folder.resolve("linked.pdf");
        LinkJob job = new LinkJob(set[0], s -> pdf, Map.of("set.pdf", "linked.pdf"), Optional.empty());
        double copied = least(() -> {
            try (OutputStream stream = new BufferedOutputStream(Files.newOutputStream(out))) {
                LinkedCopy.write(job, "set.pdf", stream);
            }
        });
        if (told) {
            System.out.printf(
                    "%d %d %.4f %.4f %.4f%n",
                    set[0].sheets().size(), set[0].references().size(), imported, checked, copied);
        }
    }

    private static double least(Work work) throws Exception {
        double least = Double.MAX_VALUE;
        for (int i = 0; i < RUNS; i++) {
            long start = CLOCK.getCurrentThreadCpuTime();
            work.run();
            least = Math.min(least, (CLOCK.getCurrentThreadCpuTime() - start) / 1e9);
        }
        return least;
    }
}
