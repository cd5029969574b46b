package linewalk.linker;

import static org.assertj.core.api.Assertions.assertThat;

import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import linewalk.drawing.Part;
import org.junit.jupiter.api.Test;

/** What the parts list adds to a drawn part. */
class PartEvidenceTest {

    private static Component with(String drawn, Part part) {
        Drawn set = Drawn.of("sheet 1\n" + drawn);
        if (part != null) {
            set.parts.add(part);
        }
        return set.link().components().get(0);
    }

    @Test
    void aListedKindWinsOverAnUnknownOne() {
        Component c = with("part 1V2 unknown A1 A B", new Part("1 V 2", null, Kind.CHECK_VALVE, "0.5 bar", null));
        assertThat(c.kind()).isEqualTo(Kind.CHECK_VALVE);
        assertThat(c.setting()).isEqualTo("0.5 bar");
    }

    @Test
    void wordsOfTheDescriptionTellTheKindWhereTheColumnDoesNot() {
        Part part = new Part("V7", "Relief valve, cartridge", Kind.UNKNOWN, null, null);
        assertThat(with("part V7 unknown A1 A B", part).kind()).isEqualTo(Kind.RELIEF_VALVE);
    }

    @Test
    void aKindThatIsDrawnPlainlyStays() {
        assertThat(with("part V7 filter A1 A B", new Part("V7", null, Kind.COOLER, null, null))
                        .kind())
                .isEqualTo(Kind.FILTER);
    }

    /** Letters of ISO 1219-2:1995, as transcribed: P pumps, A actuators. */
    @Test
    void theLetterIsAHintForWhatNothingElseTells() {
        assertThat(with("part 0P1 unknown A1 A B", null).kind()).isEqualTo(Kind.PUMP);
        assertThat(with("part 1A1 unknown A1 A B", null).kind()).isEqualTo(Kind.CYLINDER);
        assertThat(with("part 1V1 unknown A1 A B", null).kind()).isEqualTo(Kind.UNKNOWN);
    }
}
