package linewalk.linker;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.Finding;
import linewalk.drawing.HandTag;
import linewalk.drawing.Rule;
import linewalk.drawing.SetSettings;
import linewalk.drawing.Severity;
import linewalk.drawing.UserError;
import org.junit.jupiter.api.Test;

/** Rules that settings weigh, and findings that a tag keeps. */
class ReviewTest {

    private static final String DRAWN = "sheet 1\npart V1 check-valve B2 A B\nline V1:A open@B3\n";

    private static DrawingSet review(String drawn, Map<String, String> rules, HandTag... tags) {
        return Review.of(Drawn.of(drawn).link(), new SetSettings(null, null, null, null, rules), List.of(tags));
    }

    private static Finding looseEnd(DrawingSet set) {
        return set.findings().stream()
                .filter(f -> f.rule() == Rule.LOOSE_END)
                .findFirst()
                .orElseThrow();
    }

    private static HandTag keep(Finding f) {
        return new HandTag.OfKept(
                null,
                f.page().page(),
                f.place().xPt(),
                f.place().yPt(),
                f.rule().word(),
                f.id(),
                "plugged on site");
    }

    @Test
    void aRuleIsSwitchedOffOrWeighedOtherwise() {
        assertThat(review(DRAWN, Map.of("loose-end", "off")).findings()).isEmpty();
        assertThat(looseEnd(review(DRAWN, Map.of("loose-end", "error"))).severity())
                .isEqualTo(Severity.ERROR);
        assertThat(looseEnd(review(DRAWN, Map.of())).severity()).isEqualTo(Severity.WARNING);
    }

    @Test
    void aRuleOrWeightThatThereIsNotIsSaid() {
        assertThatThrownBy(() -> review(DRAWN, Map.of("loose-ends", "off")))
                .isInstanceOf(UserError.class)
                .hasMessageContaining("loose-ends");
        assertThatThrownBy(() -> review(DRAWN, Map.of("loose-end", "loud")))
                .isInstanceOf(UserError.class)
                .hasMessageContaining("off, note, warning or error");
    }

    @Test
    void aKeptFindingStaysKeptWhileTheDrawingStays() {
        Finding f = looseEnd(review(DRAWN, Map.of()));
        DrawingSet again = review(DRAWN, Map.of(), keep(f));
        assertThat(looseEnd(again).kept()).isEqualTo("plugged on site");
        assertThat(again.findings()).hasSize(1);
        String elsewhere = DRAWN + "part V9 filter D4 A B\n";
        assertThat(looseEnd(review(elsewhere, Map.of(), keep(f))).kept()).isNotNull();
    }

    @Test
    void itIsBackWhenTheDrawingThereChanges() {
        Finding f = looseEnd(review(DRAWN, Map.of()));
        DrawingSet changed = review(DRAWN.replace("check-valve", "shut-off-valve"), Map.of(), keep(f));
        assertThat(looseEnd(changed).kept())
                .as("another line end, the same place")
                .isNotNull();
        changed = review(DRAWN.replace("line ", "line drain "), Map.of(), keep(f));
        assertThat(looseEnd(changed).kept()).isNull();
        assertThat(looseEnd(changed).message()).contains("plugged on site", "has changed since");
    }

    @Test
    void aTagThatKeepsNothingAnyMoreIsSaid() {
        Finding f = looseEnd(review(DRAWN, Map.of()));
        DrawingSet put = review("sheet 1\npart V1 check-valve B2 A B\n", Map.of(), keep(f));
        assertThat(put.findings()).hasSize(1).first().matches(x -> x.rule() == Rule.TAG_UNPLACED);
    }
}
