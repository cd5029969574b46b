package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import org.junit.jupiter.api.Test;

/** A path that is too long for one page goes on at a letter that stands on both pages. */
class MatchLinesTest {

    private static Bench chain(int parts) {
        Bench bench = new Bench();
        for (int i = 0; i < parts; i++) {
            Component c = bench.part(1, "V" + i, Kind.CHECK_VALVE, 50, 40 + i * 10, "A@50,20", "B@50,60");
            bench.through(c, i == 0 ? null : "A", i == parts - 1 ? null : "B", null);
            if (i < parts - 1) {
                bench.along(1, null, Bench.at(50, 60), Bench.at(50, 20));
            }
        }
        return bench;
    }

    @Test
    void shortPathsHaveNone() {
        assertThat(Prints.text(Prints.print(chain(4).job(), "chain-4"))).doesNotContain("Goes on at the same letter");
    }

    @Test
    void bothEndsOfACutBearOneLetterAndTheOthersPage() {
        byte[] pdf = Prints.print(chain(40).job(), "chain-40");
        assertThat(Prints.pages(pdf)).isGreaterThan(2);
        assertThat(Prints.text(pdf)).contains("Goes on at the same letter").containsSubsequence("page 2", "page 1");
    }

    @Test
    void everyPartIsDrawnOnceWhateverTheCuts() {
        String text = Prints.text(Prints.print(chain(40).job(), "chain-40"));
        for (int i = 0; i < 40; i++) {
            // beside its symbol; the table has the item number before and a zone after
            assertThat(text.split("V" + i + " Check valve", -1)).hasSize(2);
        }
    }

    @Test
    void oneLetterStandsForOneLineInAllPrintsOfABook() throws IOException {
        // what is longer is cut elsewhere: at other lines
        PrintJob shorter = chain(40).job();
        PrintJob longer = chain(61).job();
        ByteArrayOutputStream book = new ByteArrayOutputStream();
        PrintBook.write(List.of(new PrintBook.Chapter("", List.of(shorter, longer))), book);

        assertThat(letters(book.toByteArray()))
                .containsAll(letters(Prints.print(longer, "chain-61")))
                .hasSizeGreaterThan(letters(Prints.print(longer, "chain-61")).size());
    }

    private static Set<String> letters(byte[] pdf) {
        return Pattern.compile("\\b[CDEFHJKNQUWZ]{1,2}\\b")
                .matcher(Prints.text(pdf))
                .results()
                .map(MatchResult::group)
                .collect(Collectors.toSet());
    }

    @Test
    void lettersAreNoneOfPortsAndNoneThatReadAsNumbers() {
        assertThat(IntStream.range(0, 12).mapToObj(MatchMarks::name))
                .doesNotContain("A", "B", "P", "T", "X", "Y", "L", "I", "O")
                .doesNotHaveDuplicates()
                .allMatch(letter -> letter.length() == 1);
        assertThat(MatchMarks.name(12)).isEqualTo("CC");
    }
}
