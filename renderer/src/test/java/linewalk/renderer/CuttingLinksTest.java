package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A circuit's cuttings say at each reference where on the print it goes on. */
class CuttingLinksTest {

    @TempDir
    Path folder;

    @Test
    void matesBearOneLetterAndEachOthersPage() {
        Bench bench = new Bench().roundTrip().drawnTo(folder.resolve("bench.pdf"), 0);
        bench.look = Look.CUTTINGS;
        byte[] pdf = Prints.print(Circuits.whole(bench.job()), "links");
        Matcher marks = Pattern.compile("\\b([A-Z]) (page \\d|here)\\b").matcher(Prints.text(pdf));
        int[] met = new int[4];
        while (marks.find()) {
            int letter = marks.group(1).charAt(0) - 'A';
            assertThat(letter).as("four crossings").isBetween(0, 3);
            met[letter]++;
        }
        assertThat(met).containsOnly(2);
    }

    @Test
    void aPathHasItsCrossingsDrawnAndNoLettersForThem() {
        Bench bench = new Bench().roundTrip().drawnTo(folder.resolve("bench.pdf"), 0);
        bench.look = Look.CUTTINGS;
        assertThat(Prints.text(Prints.print(bench.job(), "links-path"))).doesNotContain(" here");
    }
}
