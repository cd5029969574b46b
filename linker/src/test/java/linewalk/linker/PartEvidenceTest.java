package linewalk.linker;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import linewalk.drawing.Component;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.Kind;
import linewalk.drawing.KindReading;
import linewalk.drawing.KindReading.Choice;
import linewalk.drawing.Part;
import linewalk.drawing.Position;
import linewalk.drawing.Rule;
import linewalk.drawing.SheetReading;
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

    private static DrawingSet shaped(Kind likely, Kind maybe, Kind listed) {
        Drawn set = Drawn.of("sheet 1\npart V7 " + likely.word() + " A1 A B");
        set.parts.add(new Part("V7", null, listed, null, null));
        SheetReading page = set.readings().get(0);
        KindReading symbol = new KindReading(List.of(new Choice(likely, 0.9), new Choice(maybe, 0.1)), "as drawn");
        Component c = page.components().get(0);
        Component read = new Component(
                c.id(),
                c.tag(),
                c.page(),
                c.place(),
                c.box(),
                likely,
                null,
                c.origin(),
                c.confidence(),
                c.ports(),
                List.of(new Position(List.of(Position.REST), null, List.of())),
                symbol);
        return set.link(List.of(with(page, read)));
    }

    private static SheetReading with(SheetReading r, Component c) {
        return new SheetReading(
                r.page(),
                r.widthPt(),
                r.heightPt(),
                r.toPage(),
                r.names(),
                r.sheetCount(),
                r.drawingNumber(),
                r.title(),
                r.revision(),
                r.grid(),
                r.references(),
                List.of(c),
                r.enclosures(),
                r.lines(),
                r.doubts());
    }

    @Test
    void aShapeThatContradictsTheListIsADoubtAndTheListStays() {
        DrawingSet set = shaped(Kind.CHECK_VALVE, Kind.PREFILL_VALVE, Kind.RELIEF_VALVE);
        assertThat(set.components().get(0).kind()).isEqualTo(Kind.RELIEF_VALVE);
        assertThat(set.components().get(0).positions()).isEmpty();
        assertThat(set.findings()).anySatisfy(f -> {
            assertThat(f.rule()).isEqualTo(Rule.DOUBTFUL_READING);
            assertThat(f.components()).containsExactly("V7");
            assertThat(f.message()).contains("relief-valve", "check-valve", "as drawn");
        });
    }

    @Test
    void aShapeThatMayBeWhatTheListSaysIsNoDoubt() {
        DrawingSet set = shaped(Kind.PILOT_CHECK_VALVE, Kind.PREFILL_VALVE, Kind.PREFILL_VALVE);
        assertThat(set.components().get(0).kind()).isEqualTo(Kind.PREFILL_VALVE);
        assertThat(set.components().get(0).positions()).hasSize(1);
        assertThat(set.findings()).noneMatch(f -> f.rule() == Rule.DOUBTFUL_READING);
    }
}
