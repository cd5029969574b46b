package linewalk.linker;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.Finding;
import linewalk.drawing.Kind;
import linewalk.drawing.Part;
import linewalk.drawing.Rule;
import org.junit.jupiter.api.Test;

/** Drawn parts against each other and against the parts list. */
class PartsCheckTest {

    private static List<Finding> told(DrawingSet set, Rule rule) {
        return set.findings().stream().filter(f -> f.rule() == rule).toList();
    }

    private static DrawingSet listed(String drawn, Part... parts) {
        Drawn set = Drawn.of(drawn);
        set.parts.addAll(List.of(parts));
        return set.link();
    }

    @Test
    void oneDesignationAtPartsOfTwoKinds() {
        DrawingSet set = listed("sheet 1\npart 1V1 check-valve A1 A B\nsheet 2\npart 1V1 relief-valve C3 P T");
        assertThat(told(set, Rule.TAG_TWICE)).hasSize(1).first().satisfies(f -> assertThat(f.message())
                .contains("sheet 1, A1", "sheet 2, C3", "check-valve", "relief-valve"));
    }

    @Test
    void twoDrawingsOfOnePartWithDifferentPortsAreOnePart() {
        DrawingSet set = listed("sheet 1\npart 1A1 cylinder A1 A\nsheet 2\npart 1A1 cylinder C3 B");
        assertThat(told(set, Rule.TAG_TWICE)).isEmpty();
        set = listed("sheet 1\npart 1A1 cylinder A1 A\nsheet 2\npart 1A1 cylinder C3 A");
        assertThat(told(set, Rule.TAG_TWICE)).hasSize(1);
    }

    @Test
    void everySheetMayDrawTheReservoirAnew() {
        assertThat(told(listed("sheet 1\npart T1 tank A1 R\nsheet 2\npart T1 tank C3 R"), Rule.TAG_TWICE))
                .isEmpty();
    }

    @Test
    void drawnAndNotListed() {
        Part other = new Part("1V2", null, Kind.CHECK_VALVE, null, null);
        String drawn = "sheet 1\npart 1V1 check-valve A1 A B\npart 1V2 check-valve A2 A B\npart M1 gauge A3 A";
        DrawingSet set = listed(drawn, other);
        assertThat(told(set, Rule.NOT_LISTED))
                .as("no gauge is listed, so gauges are not listed on purpose")
                .hasSize(1);
        assertThat(told(set, Rule.NOT_LISTED).get(0).components()).containsExactly("1V1");
        assertThat(told(listed(drawn), Rule.NOT_LISTED)).as("without a list").isEmpty();
    }

    @Test
    void listedAndNotDrawn() {
        DrawingSet set = listed(
                "sheet 1\npart 1V1 check-valve A1 A B",
                new Part("1V1", null, null, null, null),
                new Part("9V9", null, Kind.FILTER, null, null));
        assertThat(told(set, Rule.NOT_DRAWN)).hasSize(1).first().satisfies(f -> assertThat(f.message())
                .contains("9V9"));
    }
}
