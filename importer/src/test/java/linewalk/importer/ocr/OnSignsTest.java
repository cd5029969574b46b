package linewalk.importer.ocr;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Letters as read to the signs that they lie on. Capitals are 35 px high, letters 20 px wide, 25 px from one to the next. */
class OnSignsTest {

    private static List<OnSigns.Place> signs(double... x0x1) {
        List<OnSigns.Place> out = new ArrayList<>();
        for (int i = 0; i < x0x1.length; i += 2) {
            out.add(new OnSigns.Place(x0x1[i], x0x1[i + 1]));
        }
        return out;
    }

    private static List<ReadLetter> read(String text, int... x0) {
        List<ReadLetter> out = new ArrayList<>();
        for (int i = 0; i < x0.length; i++) {
            String letter = text.substring(i, i + 1);
            out.add(new ReadLetter(x0[i], 0, x0[i] + 20, 35, false, List.of(new ReadLetter.Option(letter, 0.9))));
        }
        return out;
    }

    private static List<String> on(List<OnSigns.Place> signs, List<ReadLetter> read) {
        return OnSigns.of(signs, read, 35).stream()
                .map(l -> l == null ? null : l.text())
                .toList();
    }

    @Test
    void asManyLettersAsSignsBelongToThemInOrder() {
        assertThat(on(signs(0, 20, 25, 45), read("AB", 20, 60))).containsExactly("A", "B");
    }

    @Test
    void aSpeckIsNoLetter() {
        assertThat(on(signs(0, 20, 25, 45, 50, 53, 75, 95), read("ABC", 0, 25, 75)))
                .isEqualTo(Arrays.asList("A", "B", null, "C"));
    }

    @Test
    void twoLettersThatTouchAreOneSign() {
        assertThat(on(signs(0, 20, 25, 45, 50, 95, 100, 120), read("ABORC", 0, 25, 50, 75, 100)))
                .containsExactly("A", "B", "OR", "C");
    }

    @Test
    void whatTwoLettersOnOneSignSayMayBeOneLetterReadTwice() {
        ReadLetter wide = OnSigns.of(signs(0, 20, 25, 65, 70, 90), read("AOMB", 0, 25, 45, 70), 35)
                .get(1);
        assertThat(wide.options()).extracting(ReadLetter.Option::text).containsExactly("OM", "O", "M");
    }

    @Test
    void twoEqualLettersOnOneSignAreNoLetterTwice() {
        assertThat(on(signs(0, 20, 25, 65, 70, 90), read("A44B", 0, 25, 45, 70)))
                .containsExactly("A", "44", "B");
    }

    @Test
    void placesMayBeOffByALetter() {
        assertThat(on(
                        signs(0, 20, 25, 45, 50, 70, 75, 95, 100, 145, 150, 170),
                        read("STRALIX", 0, 12, 30, 55, 100, 120, 150)))
                .containsExactly("S", "T", "R", "A", "LI", "X");
    }

    @Test
    void aSignTwiceReadIsOne() {
        assertThat(on(signs(0, 20, 25, 45), read("RAB", 0, 5, 25)))
                .hasSize(2)
                .last()
                .isEqualTo("B");
    }
}
