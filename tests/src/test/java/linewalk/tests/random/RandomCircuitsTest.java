package linewalk.tests.random;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
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

/**
 * Circuits drawn by chance in every style: the joined ends read are those drawn, and no wrong join is sure. Sets with a
 * circuit that was misread are kept in {@code target/random}.
 */
class RandomCircuitsTest {
    private static final int SETS = 9;
    private static final int PAGES = 10;
    private static final int LEAST = 500;
    private static final double RIGHT = 0.99;
    private static final Path KEPT = Path.of("target/random");

    @TempDir
    Path folder;

    @Test
    void whatIsDrawnIsRead() {
        List<Circuit> circuits = DraftingStyle.ALL.stream()
                .flatMap(style -> IntStream.rangeClosed(1, SETS).mapToObj(seed -> style.name() + "-" + seed))
                .parallel()
                .flatMap(set -> read(set).stream())
                .toList();
        System.out.println("style    circuits  right wrong sure joins");
        for (DraftingStyle style : DraftingStyle.ALL) {
            System.out.println(Circuit.row(
                    style.name(),
                    circuits.stream()
                            .filter(c -> c.style().equals(style.name()))
                            .toList()));
        }
        System.out.println(Circuit.row("all", circuits));
        circuits.stream().filter(c -> !c.isRight()).forEach(System.out::println);
        assertThat(circuits).hasSizeGreaterThanOrEqualTo(LEAST);
        assertThat(circuits)
                .allSatisfy(c -> assertThat(c.sureWrong()).as(c.name()).isEmpty());
        assertThat(Circuit.right(circuits)).isGreaterThanOrEqualTo(RIGHT);
    }

    /** Sheets whose texts did not come out free are drawn otherwise by a drafter, and not counted here. */
    private List<Circuit> read(String name) {
        DraftingStyle style = DraftingStyle.named(name.substring(0, name.indexOf('-')));
        Path pdf = folder.resolve(name + ".pdf");
        List<DrawnSheet> sheets = draw(style, Long.parseLong(name.substring(name.indexOf('-') + 1)), pdf);
        SetSettings settings = new SetSettings(null, null, null);
        List<SheetReading> readings = new SourceImporter(
                        settings, SetFolder.at(folder.resolve(name)).readings(), (done, of) -> {})
                .read(pdf, name);
        List<Circuit> out = new ArrayList<>();
        for (int i = 0; i < sheets.size(); i++) {
            if (FreeTexts.faults(sheets.get(i)).isEmpty()) {
                String page = name + " page " + (i + 1);
                out.add(Circuit.of(style.name(), page, sheets.get(i), readings.get(i)));
            }
        }
        if (!out.stream().allMatch(Circuit::isRight)) {
            keep(pdf);
        }
        return out;
    }

    private static List<DrawnSheet> draw(DraftingStyle style, long seed, Path pdf) {
        try (OutputStream out = Files.newOutputStream(pdf)) {
            return RandomSet.of(style, seed, PAGES).write(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void keep(Path pdf) {
        try {
            Files.createDirectories(KEPT);
            Files.copy(pdf, KEPT.resolve(pdf.getFileName()), StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
