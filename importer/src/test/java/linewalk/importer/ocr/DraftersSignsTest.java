package linewalk.importer.ocr;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import linewalk.importer.ocr.ReadLetter.Option;
import org.junit.jupiter.api.Test;

/** What a reader of running text sees in drafters' letters. */
class DraftersSignsTest {

    /** @param letters each as its options, most likely first, 0.6 and 0.4; a blank before one starts a word */
    private static String read(String... letters) {
        List<ReadLetter> line = new ArrayList<>();
        for (String l : letters) {
            String signs = l.strip();
            List<Option> options = signs.length() == 1
                    ? List.of(new Option(signs, 0.9))
                    : List.of(new Option(signs.substring(0, 1), 0.6), new Option(signs.substring(1), 0.4));
            line.add(new ReadLetter(0, 0, 1, 1, l.startsWith(" "), options));
        }
        return DraftersSigns.of(line).stream()
                .map(l -> (l.afterBlank() ? " " : "") + l.text())
                .collect(Collectors.joining());
    }

    @Test
    void aNoughtWithAStrokeThroughItIsNoAtSign() {
        assertThat(read("@", "V", "1")).isEqualTo("0V1");
        assertThat(read("H", "5", "@0")).isEqualTo("H50");
    }

    @Test
    void anAtSignThatStandsAloneIsOne() {
        assertThat(read("6", " @", " 9")).isEqualTo("6 @ 9");
    }

    @Test
    void signsThatDrawingsHardlyKnowGiveWay() {
        assertThat(read("B", "?7")).isEqualTo("B7");
        assertThat(read("\u00a5Y", "2")).isEqualTo("Y2");
        assertThat(read("?")).isEqualTo("?");
    }

    @Test
    void likelihoodsStayShares() {
        ReadLetter l = new ReadLetter(0, 0, 1, 1, false, List.of(new Option("?", 0.5), new Option("7", 0.3)));

        double sum = DraftersSigns.of(List.of(l)).get(0).options().stream()
                .mapToDouble(Option::likelihood)
                .sum();

        assertThat(sum).isBetween(0.79, 0.81);
    }
}
