package linewalk.importer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import linewalk.drawing.Target;
import linewalk.importer.lettering.ReferenceGrammar;
import linewalk.importer.lettering.ReferenceGrammar.Parsed;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a text says, read as a reference: {@code sheet/zone}, zones letter first. */
class ReferenceGrammarTest {

    private final ReferenceGrammar grammar = new ReferenceGrammar(List.of());

    private static String targets(Parsed p, int reading) {
        return p.readings().get(reading).targets().stream()
                .map(Target::toString)
                .collect(Collectors.joining(" and "));
    }

    /** The two orders of a location in IEC 61082-1 (seen in a transcription). */
    @ParameterizedTest
    @CsvSource({"/2.B3, 2/B3,", "L1/1.18A, 1/A18, L1"})
    void iec61082(String text, String target, String name) {
        Parsed p = grammar.parse(text).orElseThrow();

        assertThat(targets(p, 0)).isEqualTo(target);
        assertThat(p.label()).isEqualTo(name);
        assertThat(p.zoned()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "2/B4, 2/B4",
        "Bl. 2 / B4, 2/B4",
        "FOLIO 2 B4, 2/B4",
        "A HOJA 2 ZONA B4, 2/B4",
        "DE LÁMINA 2 ZONA B4, 2/B4",
        "DAL FOGLIO 2 ZONA B4, 2/B4",
        "VEDI TAV. 2 ZONA B4, 2/B4",
        "PARA FOLHA 2 ZONA B4, 2/B4",
        "VAN BLAD 2 ZONE B4, 2/B4",
        "DO ARKUSZ 2 STREFA B4, 2/B4",
        "2/B4., 2/B4",
        "2.B4, 2/B4",
        "2-B4, 2/B4",
        "2 - B4, 2/B4",
        "2:B4, 2/B4",
        "2 B4, 2/B4",
        "2/B-4, 2/B4",
        "2/(B4), 2/B4",
        "(2/B4), 2/B4",
        "[2/B4], 2/B4",
        "2/B04, 2/B4",
        "18-G16, 18/G16",
        "5-A0, 5/A0",
        "2/4B, 2/B4",
        "2.4B, 2/B4",
        "12A/B4, 12A/B4",
        "H3/B4, H3/B4",
        "B4/12, 12/B4",
        "HX-40017/B4, HX-40017/B4",
        "=K1+S2/3.B4, 3/B4",
        "=K1+S2/3.4B, 3/B4",
    })
    void sheetAndZone(String text, String target) {
        assertThat(targets(grammar.parse(text).orElseThrow(), 0)).isEqualTo(target);
    }

    @ParameterizedTest
    @CsvSource({
        "SHT 2 ZN C-7, 2/C7",
        "SHT13ZNC-1, 13/C1",
        "SHEET 2 ZONE C7, 2/C7",
        "Sheet 2 (C7), 2/C7",
        "'SH 2, C7', 2/C7",
        "SH.2/C7, 2/C7",
        "C7 SHEET 2, 2/C7",
        "ZONE C7 ON SHEET 2, 2/C7",
        "SEE SHEET 2 ZONE C7, 2/C7",
        "TO SHEET 2, 2",
        "FROM SH 2, 2",
        "CONT'D ON SHEET 2, 2",
        "CONTINUED ON SHT. 2, 2",
        "TO 2/C7, 2/C7",
        "FROM 2/C7, 2/C7",
        "Blatt 2, 2",
        "DWG HX-40017 ZONE C7, HX-40017/C7",
    })
    void withWords(String text, String target) {
        Parsed p = grammar.parse(text).orElseThrow();

        assertThat(targets(p, 0)).isEqualTo(target);
        assertThat(p.words()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "'2/B4, 3/C1', 2/B4 and 3/C1",
        "2/B4 & 3/C1, 2/B4 and 3/C1",
        "2/B4; 3/C1, 2/B4 and 3/C1",
        "'3/H1,6/K1', 3/H1 and 6/K1",
        "'2-B4, 3-C1, 5-D2', 2/B4 and 3/C1 and 5/D2",
        "2.B4 + 3.C1, 2/B4 and 3/C1",
    })
    void severalTargets(String text, String targets) {
        assertThat(targets(grammar.parse(text).orElseThrow(), 0)).isEqualTo(targets);
    }

    @ParameterizedTest
    @CsvSource({
        "PUMP_RUN/6.2B, 6/B2, PUMP_RUN",
        "P 210/6.B2, 6/B2, P 210",
        "L-101/3.C7, 3/C7, L-101",
        "P1.2 - Sh. 3 (D7), 3/D7, P1.2",
        "T2: SHEET 4 ZONE B3, 4/B3, T2",
        "L101 Bl. 2 / C4, 2/C4, L101",
        "Sh. 3 (D7) - P1.2, 3/D7, P1.2",
    })
    void aNameGluedInFront(String text, String target, String name) {
        Parsed p = grammar.parse(text).orElseThrow();

        assertThat(targets(p, 0)).isEqualTo(target);
        assertThat(p.label()).isEqualTo(name);
    }

    @ParameterizedTest
    @ValueSource(strings = {"\u2192 2/B4", "2/B4 \u2192", "\u25B6 2/B4", "-> 2/B4", "2/B4 >>", "<- 2/B4"})
    void arrowsAreNoPartOfIt(String text) {
        assertThat(targets(grammar.parse(text).orElseThrow(), 0)).isEqualTo("2/B4");
    }

    /** The set's sheets decide whether it is folio 3 or a sheet that is called F3. */
    @Test
    void lettersBeforeASheetsNumberMayBeTheWordForIt() {
        Parsed p = grammar.parse("F3-H2").orElseThrow();

        assertThat(targets(p, 0)).isEqualTo("F3/H2");
        assertThat(targets(p, 1)).isEqualTo("3/H2");
        assertThat(p.readings().get(0).likelihood())
                .isGreaterThan(p.readings().get(1).likelihood());
    }

    @Test
    void whereBothOrdersFitBothAreOffered() {
        Parsed p = grammar.parse("B4/C2").orElseThrow();

        assertThat(p.readings()).hasSize(2);
        assertThat(List.of(targets(p, 0), targets(p, 1))).containsExactlyInAnyOrder("B4/C2", "C2/B4");
        assertThat(p.readings()).allSatisfy(r -> assertThat(r.likelihood()).isEqualTo(0.5));
    }

    @Test
    void textsOfOneFormShareIt() {
        assertThat(grammar.parse("2.E11").orElseThrow().form())
                .isEqualTo(grammar.parse("13.B4").orElseThrow().form())
                .isNotEqualTo(grammar.parse("13/B4").orElseThrow().form());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2.A1 MAX.", // a note's measure
                "FOR CABLES SEE HX-40017, SH. 7 (B3)",
                "NOTES - SH. 3",
                "MAX. 2.A1 TORQUE",
                "210 BAR",
                "M12x40",
                "4 x M10",
                "4x M10 8.8", // bolts
                "DN25",
                "28x3",
                "1/2\"",
                "3/8",
                "1450 1/MIN",
                "NOTE 4",
                "1V2",
                "2E1",
                "4K1", // device names
                "0.4.2",
                "12.05.2024",
                "11:45",
                "REV C",
                "Page: 6 / Next: 7",
                "P",
                "B4",
                "7",
                "PUMP",
                "",
                "1V2 / 1V3",
                "A/B",
                "ISO 4413",
            })
    void noReferences(String text) {
        assertThat(grammar.parse(text)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"HX-40017, true", "UER-77, false", "HX-40017-2, true", "1V2, false", "HX, false"})
    void aDrawingNumberNamesASheet(String text, boolean is) {
        assertThat(grammar.drawingNumber(text).isPresent()).isEqualTo(is);
    }

    @Test
    void aSetsOwnPatternComesFirst() {
        ReferenceGrammar own =
                new ReferenceGrammar(List.of("(?<label>[A-Z]+)\\{(?<sheet>\\d+)\\}", "<(?<sheet>\\d+)@(?<zone>\\w+)>"));

        assertThat(targets(own.parse("PL{9}").orElseThrow(), 0)).isEqualTo("9");
        assertThat(own.parse("PL{9}").orElseThrow().label()).isEqualTo("PL");
        assertThat(targets(own.parse("<3@B4>").orElseThrow(), 0)).isEqualTo("3/B4");
        assertThat(targets(own.parse("2/B4").orElseThrow(), 0)).isEqualTo("2/B4");
    }

    @Test
    void severalEachWithASlashOfItsOwn() {
        Parsed p = grammar.parse("/2.A4; /3.A4; /4.A5").orElseThrow();

        assertThat(targets(p, 0)).isEqualTo("2/A4 and 3/A4 and 4/A5");
    }
}
