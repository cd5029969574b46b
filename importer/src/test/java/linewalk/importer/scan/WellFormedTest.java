package linewalk.importer.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import linewalk.importer.lettering.Cell;
import linewalk.importer.ocr.ReadLetter.Option;
import linewalk.importer.symbol.Designations;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Of two letters that look alike, the one that makes a word of the drawing is said, where only one does. */
class WellFormedTest {

    private static String said(String read) {
        List<ReadRow.Letter> letters = IntStream.range(0, read.length())
                .mapToObj(i -> new ReadRow.Letter(
                        read.substring(i, i + 1),
                        0.9,
                        20 * i,
                        20 * i + 15,
                        false,
                        List.of(new Option(read.substring(i, i + 1), 0.9))))
                .toList();
        TextRow row = new TextRow(List.of(), true, Cell.NONE, 0, 0, 1, 1);
        ReadRow seen = new ReadRow(row, null, 0, 20, 20, letters);
        return new WellFormed(Designations::looksLike)
                .of(seen).letters().stream().map(ReadRow.Letter::text).collect(Collectors.joining());
    }

    @ParameterizedTest
    @CsvSource({"024, 0Z4", "0Vi, 0V1", "1VB, 1V8"})
    void theOneThatMakesADesignation(String read, String said) {
        assertThat(said(read)).isEqualTo(said);
    }

    /** 5 and 8 are both taken for S. */
    @ParameterizedTest
    @CsvSource({"0VS"})
    void twoThatDoLeaveItOpen(String read) {
        assertThat(said(read)).isEqualTo(read);
    }

    @ParameterizedTest
    @CsvSource({"28", "ZG", "130", "WELD"})
    void numbersAndWordsStayAsTheyAre(String read) {
        assertThat(said(read)).isEqualTo(read);
    }
}
