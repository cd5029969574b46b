package linewalk.tests;

import static linewalk.tests.Run.fine;
import static linewalk.tests.Run.linewalk;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pages of which nothing can be read are no hindrance: hand tags alone are enough for every answer. */
class TagsAloneTest {

    @TempDir
    Path folder;

    private Path set;

    @BeforeEach
    void drawNoise() {
        set = TaggedSet.untagged(folder);
    }

    @Test
    void withoutTagsNothingIsKnown() {
        Refusal.isWrongUse(linewalk("trace", set, "--from", "P1"), "no component P1");
    }

    @Test
    void asJsonTheyGiveTheWalk() {
        TaggedSet.writeJson(set);
        assertThat(TaggedSet.parts(fine("trace", set, "--from", "P1", "--to", "TANK", "--format", "json")))
                .isEqualTo(TaggedSet.AT_REST);
        Run extending = fine("trace", set, "--from", "P1", "--via", "C1", "--step", "Extend", "--format", "json");
        assertThat(TaggedSet.parts(extending)).isEqualTo(TaggedSet.EXTENDING);
        assertThat(extending.json().get("doubts")).isEmpty();
        assertThat(extending.json().get("sheets")).hasToString("[\"10\",\"20\"]");
    }

    @Test
    void theWalkIsToldInWords() {
        TaggedSet.writeJson(set);
        String words = fine("trace", set, "--from", "P1").out();
        assertThat(words).contains("P1", "L-1", "sheet 10", "sheet 20", "V1", "TANK");
        assertThat(words.indexOf("P1")).isLessThan(words.indexOf("V1"));
    }

    @Test
    void asCsvTheySayTheSame() {
        TaggedSet.writeJson(set);
        String byJson = fine("export", set).out();
        assertThat(Files.exists(set.resolve("tags.json"))).isTrue();
        set.resolve("tags.json").toFile().delete();
        TaggedSet.writeCsv(set);
        assertThat(fine("export", set).out()).isEqualTo(byJson);
    }

    @Test
    void whatIsTaggedCarriesItsHand() {
        TaggedSet.writeJson(set);
        var export = fine("export", set).json();
        assertThat(export.get("references")).hasSize(2);
        export.get("references")
                .forEach(r -> assertThat(r.get("origin").asText()).isEqualTo("hand"));
        assertThat(export.get("components")).hasSize(4);
        assertThat(export.at("/sheets/0/zones/columns")).hasToString("[\"1\",\"2\",\"3\",\"4\"]");
        assertThat(export.at("/references/0/zone").asText()).isEqualTo("A4");
        assertThat(export.at("/references/1/zone").asText()).isEqualTo("A1");
        assertThat(export.get("findings")).isEmpty();
    }

    @Test
    void cuttingsShowThePagesAsTheyAreAndDrawNoWayThatIsNotDrawn() {
        TaggedSet.writeJson(set);
        Path print = folder.resolve("cuttings.pdf");
        fine("trace", set, "--from", "P1", "--via", "C1", "--step", "2", "--look", "cuttings", "--out", print);
        Print read = Print.of(print, folder.resolve("press.pdf"));
        assertThat(read.pages()).isPositive();
        assertThat(read.pictures()).as("the noise of both sheets").isGreaterThanOrEqualTo(2);
        assertThat(read.text()).contains("sheet 10").contains("sheet 20").contains("C1");
        assertThat(read.overlays())
                .as("the legend's sample alone: no line is drawn, so none is marked")
                .isEqualTo(1);
        Print.isSound(print);
    }

    @Test
    void theDrawnLookNeedsNoDrawingAtAll() {
        TaggedSet.writeJson(set);
        Path print = folder.resolve("drawn.pdf");
        fine("trace", set, "--from", "P1", "--out", print);
        assertThat(Print.of(print, folder.resolve("press.pdf")).text()).contains("P1", "V1", "TANK", "L-1");
        Print.isSound(print);
    }
}
