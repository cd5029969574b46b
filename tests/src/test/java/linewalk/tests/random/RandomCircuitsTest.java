package linewalk.tests.random;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import linewalk.drawing.SetSettings;
import linewalk.drawing.SheetReading;
import linewalk.drawing.store.SetFolder;
import linewalk.importer.SourceImporter;
import linewalk.samples.random.FreeTexts;
import linewalk.samples.random.RandomSet;
import linewalk.samples.sheet.DrawnSheet;
import linewalk.samples.style.DraftingStyle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Circuits drawn by chance in every style: the joined ends read are those drawn, and no wrong join is sure. */
class RandomCircuitsTest {
    private static final int SETS = Integer.getInteger("sets", 10);
    private static final int PAGES = 10;
    private static final double SURE = 0.9;
    private static final double RIGHT = 0.99;
    private static final Path KEPT = Path.of("target/random");

    @TempDir
    Path folder;

    private record Circuit(String style, String name, Set<String> missed, Set<String> wrong, Set<String> sureWrong) {
        boolean isRight() {
            return missed.isEmpty() && wrong.isEmpty();
        }

        @Override
        public String toString() {
            return name + " missed " + missed + " wrong " + wrong + " sure " + sureWrong;
        }
    }

    @Test
    void whatIsDrawnIsRead() {
        List<Circuit> circuits = new ArrayList<>();
        for (DraftingStyle style : DraftingStyle.ALL) {
            List<Circuit> drawn = IntStream.rangeClosed(1, SETS)
                    .boxed()
                    .flatMap(seed -> read(style, seed).stream())
                    .toList();
            System.out.println(row(style.name(), drawn) + " " + java.time.LocalTime.now());
            circuits.addAll(drawn);
        }
        System.out.println(row("all", circuits));
        circuits.stream().filter(c -> !c.isRight()).forEach(System.out::println);
        assertThat(circuits).hasSizeGreaterThanOrEqualTo(500);
        assertThat(circuits).allMatch(c -> c.sureWrong().isEmpty());
        assertThat(right(circuits)).isGreaterThanOrEqualTo(RIGHT);
    }

    private List<Circuit> read(DraftingStyle style, long seed) {
        try {
            RandomSet set = RandomSet.of(style, seed, PAGES);
            Path pdf = folder.resolve(style.name() + "-" + seed + ".pdf");
            List<DrawnSheet> sheets;
            try (OutputStream out = Files.newOutputStream(pdf)) {
                sheets = set.write(out);
            }
            SetSettings settings = new SetSettings(null, null, null);
            Path cache = folder.resolve(style.name() + "-" + seed);
            List<SheetReading> readings =
                    new SourceImporter(settings, SetFolder.at(cache).readings(), (done, of) -> {}).read(pdf, "set");
            List<Circuit> out = new ArrayList<>();
            for (int i = 0; i < sheets.size(); i++) {
                if (FreeTexts.faults(sheets.get(i)).isEmpty()) {
                    String name = style.name() + " seed " + seed + " page " + (i + 1);
                    out.add(circuit(style.name(), name, sheets.get(i), readings.get(i)));
                } else {
                    System.out.println(style.name() + " seed " + seed + " page " + (i + 1) + " "
                            + FreeTexts.faults(sheets.get(i)));
                }
            }
            if (!out.stream().allMatch(Circuit::isRight)) {
                Files.createDirectories(KEPT);
                Files.copy(pdf, KEPT.resolve(pdf.getFileName()), java.nio.file.StandardCopyOption.REPLACE_EXISTING);
            }
            return out;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Circuit circuit(String style, String name, DrawnSheet sheet, SheetReading reading) {
        Joined drawn = Joined.drawn(sheet);
        Joined read = Joined.read(sheet, reading, 0);
        Joined sure = Joined.read(sheet, reading, SURE);
        return new Circuit(style, name, drawn.without(read), read.without(drawn), sure.without(drawn));
    }

    private static String row(String style, List<Circuit> circuits) {
        long wrong = circuits.stream().mapToLong(c -> c.sureWrong().size()).sum();
        return String.format(
                "%-8s circuits %4d right %.4f wrong sure joins %d", style, circuits.size(), right(circuits), wrong);
    }

    private static double right(List<Circuit> circuits) {
        return (double) circuits.stream().filter(Circuit::isRight).count() / circuits.size();
    }
}
