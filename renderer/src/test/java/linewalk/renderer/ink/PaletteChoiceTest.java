package linewalk.renderer.ink;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import linewalk.drawing.UserError;
import linewalk.linker.step.PressureClass;
import org.junit.jupiter.api.Test;

/** Which palette a set's settings choose, and what the choice leaves as it is. */
class PaletteChoiceTest {

    @Test
    void ourOwnUnlessAnotherIsNamed() {
        assertThat(Palette.named(null)).isEqualTo(Palette.OWN);
        assertThat(Palette.named("own")).isEqualTo(Palette.OWN);
        assertThat(Palette.named("published")).isEqualTo(Palette.PUBLISHED);
    }

    @Test
    void aSlipIsToldWithWhatThereIs() {
        assertThatThrownBy(() -> Palette.named("Published"))
                .isInstanceOf(UserError.class)
                .hasMessageContaining("'Published'")
                .hasMessageContaining("\"own\" or \"published\"");
    }

    @Test
    void patternsAndWeightsAreTheSameInAllPalettes() {
        for (PressureClass c : PressureClass.values()) {
            LineStyle own = Palette.OWN.style(c);
            LineStyle published = Palette.PUBLISHED.style(c);
            assertThat(published).isEqualTo(new LineStyle(published.color(), own.widthPt(), own.pattern()));
            assertThat(own.widthPt()).isBetween(0.8, 4.0);
        }
    }
}
