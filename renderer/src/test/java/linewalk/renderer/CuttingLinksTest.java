package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
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
        List<String> letters =
                IntStream.range(0, met.length).mapToObj(MatchMarks::name).toList();
        while (marks.find()) {
            int letter = letters.indexOf(marks.group(1));
            assertThat(letter).as("four crossings").isNotNegative();
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
