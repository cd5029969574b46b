package linewalk.renderer.ink;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import linewalk.linker.step.PressureClass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Colours of pressure classes for people who see all colours and for those who do not. */
class PaletteColourTest {

    /** In CIEDE2000, of which about 1 is the least that is seen side by side. Ours reaches 11.6. */
    private static final double LEAST_DIFFERENCE = 11.5;
    /** Graphics want 3 to 1 (WCAG 2.1, 1.4.11, from memory); 4 leaves room for bad light. */
    private static final double LEAST_CONTRAST = 4;

    @ParameterizedTest
    @EnumSource(Sight.class)
    void anyTwoClassesDiffer(Sight sight) {
        assertThat(alike(Palette.OWN, sight)).isEmpty();
    }

    /** The published key alone would not do, which is why patterns stand beside every colour. */
    @Test
    void thePublishedKeyIsNotSafeByColourAlone() {
        assertThat(alike(Palette.PUBLISHED, Sight.DEUTERANOPIA)).isNotEmpty();
    }

    private static List<String> alike(Palette palette, Sight sight) {
        List<String> alike = new ArrayList<>();
        for (PressureClass a : PressureClass.values()) {
            for (PressureClass b : PressureClass.values()) {
                double d = sight.see(palette.color(a)).differenceTo(sight.see(palette.color(b)));
                if (a.compareTo(b) < 0 && d < LEAST_DIFFERENCE) {
                    alike.add(String.format("%s and %s: %.1f", a, b, d));
                }
            }
        }
        return alike;
    }

    @ParameterizedTest
    @EnumSource(Palette.class)
    void everyColourStandsOutFromThePaper(Palette palette) {
        for (PressureClass c : PressureClass.values()) {
            Color k = palette.color(c);
            double luminance = 0.2126 * Sight.linear(k.getRed())
                    + 0.7152 * Sight.linear(k.getGreen())
                    + 0.0722 * Sight.linear(k.getBlue());
            assertThat(1.05 / (luminance + 0.05)).as(palette + " " + c).isGreaterThan(LEAST_CONTRAST);
        }
    }

    /** Held is the most colourful of those that may kill by surprise; unknown is never near the grey of idle. */
    @Test
    void unknownIsNoGrey() {
        Lab unknown = Sight.FULL.see(Palette.OWN.color(PressureClass.UNKNOWN));
        Lab idle = Sight.FULL.see(Palette.OWN.color(PressureClass.IDLE));
        assertThat(Math.hypot(idle.a(), idle.b())).isCloseTo(0, within(0.5));
        assertThat(unknown.differenceTo(idle)).isGreaterThan(2 * LEAST_DIFFERENCE);
    }

    /** Greys are grey for everybody: the matrices' rows add up to 1. */
    @ParameterizedTest
    @EnumSource(Sight.class)
    void greyStaysGrey(Sight sight) {
        Lab grey = sight.see(new Color(0x787878));
        assertThat(Math.hypot(grey.a(), grey.b())).isLessThan(0.5);
    }
}
