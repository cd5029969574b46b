package linewalk.tests.quality;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import linewalk.drawing.DrawingSet;
import linewalk.linker.Excerpts;
import linewalk.renderer.Look;
import linewalk.renderer.Moment;
import linewalk.renderer.Paper;
import linewalk.renderer.PrintForm;
import linewalk.renderer.PrintJob;
import linewalk.renderer.SetFacts;
import linewalk.renderer.Subject;
import linewalk.renderer.TracePrint;
import linewalk.renderer.Turn;
import linewalk.renderer.ink.Palette;
import linewalk.tests.plant.RandomPlant;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;

/**
 * Whole circuits by chance, drawn: nothing lies on anything, nothing is too small to read, and no two neighbours in a
 * layer could change places for fewer crossings. Prints with a fault are kept in {@code target/plants}.
 */
class RandomPlantPrintTest {

    private static final int CIRCUITS = 200;
    private static final double LEAST_CAPITALS_MM = 2.5;
    private static final Path KEPT = Path.of("target/plants");

    /** What one print came to. */
    private record Measured(
            long seed, int parts, int pages, List<Overlap> overlaps, double capitalsMm, int crossings, int needless) {

        boolean isFine() {
            return overlaps.isEmpty() && capitalsMm >= LEAST_CAPITALS_MM && needless == 0;
        }
    }

    @Test
    void everyCircuitIsDrawnClear() {
        List<Measured> all = IntStream.rangeClosed(1, CIRCUITS)
                .parallel()
                .mapToObj(RandomPlantPrintTest::measured)
                .toList();
        System.out.printf(
                "%d circuits, %d parts, %d pages, %d crossings, capitals %.2f mm%n",
                all.size(),
                all.stream().mapToInt(Measured::parts).sum(),
                all.stream().mapToInt(Measured::pages).sum(),
                all.stream().mapToInt(Measured::crossings).sum(),
                all.stream().mapToDouble(Measured::capitalsMm).min().orElseThrow());
        assertThat(all.stream().mapToInt(Measured::parts).min()).hasValue(5);
        assertThat(all.stream().mapToInt(Measured::parts).max()).hasValue(60);
        assertThat(all.stream().mapToInt(Measured::crossings).sum()).isGreaterThan(CIRCUITS);
        assertThat(all.stream().filter(m -> !m.isFine())).isEmpty();
    }

    private static Measured measured(long seed) {
        RandomPlant plant = RandomPlant.of(seed);
        DrawingSet set = plant.set();
        byte[] pdf = print(plant, set);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<PrintPage> pages = Quality.pages(document);
            Measured m = new Measured(
                    seed,
                    set.components().size(),
                    pages.size(),
                    Quality.overlaps(pages),
                    Quality.smallestCapitalsMm(pages).orElse(0),
                    pages.stream().mapToInt(p -> new LineWork(p).crossings()).sum(),
                    pages.stream().mapToInt(Quality::needlessCrossings).sum());
            if (!m.isFine()) {
                Files.createDirectories(KEPT);
                Files.write(KEPT.resolve("plant-" + seed + ".pdf"), pdf);
            }
            return m;
        } catch (IOException e) {
            throw new UncheckedIOException("circuit " + seed, e);
        }
    }

    /** On A3, where the larger ones take several pages, or on A1, where most come on one. */
    private static byte[] print(RandomPlant plant, DrawingSet set) {
        Paper paper = set.components().size() % 2 == 0 ? Paper.A3 : Paper.A1;
        PrintJob job = new PrintJob(
                new SetFacts("Plant", set, plant.items(), plant.parts(), s -> Path.of("none.pdf"), Palette.OWN),
                Subject.of(new Excerpts(set).whole()),
                Moment.AT_REST,
                new PrintForm(paper, Turn.FITTING, Look.DRAWN, Set.of()),
                LocalDate.of(2026, 2, 3));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            TracePrint.write(job, out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }
}
