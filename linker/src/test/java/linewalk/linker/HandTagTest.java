package linewalk.linker;

import static linewalk.linker.Drawn.findings;
import static linewalk.linker.Drawn.from;
import static linewalk.linker.Drawn.mates;
import static linewalk.linker.Drawn.ref;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.HandTag;
import linewalk.drawing.Origin;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a person says wins over what was read; what fits nothing is told, never dropped. */
class HandTagTest {

    private static HandTag.OfReference reference(
            int page, double x, double y, String saw, String targets, Boolean absent) {
        return new HandTag.OfReference(null, page, x, y, saw, targets, null, null, absent);
    }

    private static HandTag.OfComponent component(int page, double x, double y, String name, String kind) {
        return new HandTag.OfComponent(null, page, x, y, null, name, kind, null, null, null, null);
    }

    private static HandTag.OfPort port(int page, double x, double y, String of, String name) {
        return new HandTag.OfPort(null, page, x, y, null, of, name, null);
    }

    private static HandTag.OfJoin join(int page, String from, String to) {
        return new HandTag.OfJoin(null, page, from, to, null, null, null);
    }

    /** Two empty pages and tags alone. */
    @Test
    void tagsAloneAreEnoughToTrace() {
        Drawn drawn = Drawn.of("sheet ? nogrid\nsheet ? nogrid")
                .tag(new HandTag.OfSheet(null, 1, "10", "POWER", null))
                .tag(new HandTag.OfSheet(null, 2, "20", null, null))
                .tag(component(1, 100, 100, "P1", "pump"))
                .tag(port(1, 100, 80, "P1", "P"))
                .tag(reference(1, 300, 80, null, "20/B1", null))
                .tag(join(1, "P1:P", "@300,80"))
                .tag(reference(2, 50, 150, null, "10", null))
                .tag(new HandTag.OfMate(null, 1, 300, 80, null, null, 2, 50, 150, null, null))
                .tag(component(2, 200, 200, "V1", "directional-valve"))
                .tag(port(2, 190, 220, "V1", "P"))
                .tag(port(2, 210, 220, "V1", "T"))
                .tag(new HandTag.OfPosition("V1", "rest", null, "P-T"))
                .tag(component(2, 200, 300, "TANK", "tank"))
                .tag(port(2, 210, 290, "TANK", null))
                .tag(join(2, "@50,150", "V1:P"))
                .tag(join(2, "V1:T", "TANK"));
        assertThat(drawn.walk(from("P1"))).isEqualTo("P1 r300-80>r50-150 V1 TANK");
        assertThat(drawn.link().references()).allMatch(r -> r.origin() == Origin.HAND && r.confidence() == 1);
        assertThat(findings(drawn.link())).isEmpty();
    }

    @Test
    void aMateTagGivesALooseLineEndItsReference() {
        Drawn drawn = Drawn.of("""
                        sheet 1
                        ref a B4 > 2/C1
                        part P1 pump B3 P
                        line P1:P a
                        sheet 2
                        part T1 tank D1 R
                        line T1:R open@C1
                        """).tag(new HandTag.OfMate(null, 1, 350, 150, null, null, 2, 50, 250, null, null));
        assertThat(drawn.walk(from("P1"))).isEqualTo("P1 a>r50-250 T1");
        assertThat(findings(drawn.link())).isEmpty();
    }

    /** On a large sheet the reach of a tag covers several ports and parts that stand close. */
    @Test
    void tagsForThingsThatStandCloseDoNotSwallowEachOther() {
        Drawn drawn = Drawn.of("sheet 1")
                .tag(component(1, 100, 100, "V1", "directional-valve"))
                .tag(component(1, 124, 100, "V2", "check-valve"))
                .tag(port(1, 96, 110, "V1", "P"))
                .tag(port(1, 100, 110, "V1", "T"))
                .tag(reference(1, 300, 300, null, "2/A1", null))
                .tag(reference(1, 300, 313, null, "2/B1", null));
        DrawingSet set = drawn.link();
        assertThat(set.components()).extracting(c -> c.tag()).containsExactly("V1", "V2");
        assertThat(set.components().get(0).ports()).extracting(p -> p.name()).containsExactly("P", "T");
        assertThat(set.references()).hasSize(2);
    }

    private static final String READ = """
            sheet 1
            ref a B4 > 2/C7 L-1
            sheet 2
            ref b C1 > 1/B4 L-1
            """;

    @Test
    void aReferenceReadWrongIsPutRight() {
        DrawingSet set =
                Drawn.of(READ).tag(reference(1, 350, 150, "2/C7", "2/C1", null)).link();
        assertThat(findings(set)).isEmpty();
        assertThat(ref(set, "a").targets()).hasToString("[2/C1]");
        assertThat(ref(set, "a").origin()).isEqualTo(Origin.HAND);
    }

    @Test
    void whatIsNoReferenceGoes() {
        DrawingSet set =
                Drawn.of(READ).tag(reference(1, 350, 150, null, null, true)).link();
        assertThat(set.references()).hasSize(1);
    }

    @Test
    void mateTagsTieAndUntie() {
        String two = """
                sheet 1
                ref a B4 > 2/C1 L-1
                ref x D4 > 2/D1 L-9
                sheet 2
                ref b C1 > 1/B4 L-1
                ref y A4 > 1/A1 L-7
                """;
        HandTag untie = new HandTag.OfMate(null, 1, 350, 150, null, null, 2, 50, 250, null, true);
        assertThat(mates(Drawn.of(two).tag(untie).link(), "a")).isEmpty();
        HandTag tie = new HandTag.OfMate(null, 1, 350, 350, "2/D1", null, 2, 350, 50, null, null);
        DrawingSet tied = Drawn.of(two).tag(tie).link();
        assertThat(mates(tied, "x")).containsExactly("y");
        assertThat(ref(tied, "x").mateConfidence()).isEqualTo(1);
    }

    @Test
    void aJoinMakesADoubtfulLineSureAndAnAbsentOneTakesItApart() {
        String line = "sheet 1\npart V1 hose A1 A B\npart V2 hose A3 A B\nline p=0.5 V1:B V2:A";
        assertThat(Drawn.of(line)
                        .tag(join(1, "V1:B", "V2:A"))
                        .link()
                        .lines()
                        .get(0)
                        .confidence())
                .isEqualTo(1);
        HandTag apart = new HandTag.OfJoin(null, 1, "V1:B", "V2:A", null, null, true);
        assertThat(Drawn.of(line).tag(apart).link().lines())
                .allMatch(l -> l.ends().size() < 2);
    }

    @Test
    void aPositionTakesThePlaceOfTheOneRead() {
        Drawn drawn = Drawn.of("sheet 1\npart V1 directional-valve A1 P T A B\npos V1 rest P-T")
                .tag(new HandTag.OfPosition("v1", "rest", "spring", "1>3!pilot P~B"));
        var rest = drawn.link().components().get(0).rest().orElseThrow();
        assertThat(rest.passages()).hasSize(2);
        assertThat(rest.passages().get(0).oneWay()).isTrue();
        assertThat(rest.passages().get(0).to()).endsWith("V1.A");
        assertThat(rest.passages().get(1).throttled()).isTrue();
    }

    static List<HandTag> misfits() {
        return List.of(
                new HandTag.OfSheet(null, 9, "9", null, null),
                new HandTag.OfGrid("other.pdf", 1, "1 2", "A B", null, null, null, null),
                reference(1, 350, 150, "9/X1", "2/C1", null),
                reference(1, 10, 10, null, null, true),
                new HandTag.OfMate(null, 1, 350, 150, null, null, 2, 390, 390, null, null),
                component(7, 1, 1, "P1", "pump"),
                port(1, 1, 1, "P9", "P"),
                join(1, "P9:P", "@350,150"),
                new HandTag.OfPosition("V9", "rest", null, "P-T"));
    }

    @ParameterizedTest
    @MethodSource("misfits")
    void whatFitsNothingIsAFinding(HandTag tag) {
        assertThat(findings(Drawn.of(READ).tag(tag).link())).contains("tag-unplaced");
    }
}
