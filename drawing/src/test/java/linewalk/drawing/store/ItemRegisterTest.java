package linewalk.drawing.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Item numbers belong to the set for good: a technician may have written one down. */
class ItemRegisterTest {

    @TempDir
    Path folder;

    private SetFolder set() {
        return SetFolder.at(folder);
    }

    @Test
    void numbersRunFromOneInTheOrderAsked() {
        assertThat(set().itemNumbers(List.of("P1", "V1", "C1")))
                .containsEntry("P1", 1)
                .containsEntry("V1", 2)
                .containsEntry("C1", 3)
                .hasSize(3);
    }

    @Test
    void numbersAreKeptWhateverTheOrderLater() {
        set().itemNumbers(List.of("P1", "V1"));
        assertThat(set().itemNumbers(List.of("A0", "V1", "P1")))
                .containsEntry("P1", 1)
                .containsEntry("V1", 2)
                .containsEntry("A0", 3);
    }

    @Test
    void aNumberIsNeverUsedAgain() {
        set().itemNumbers(List.of("P1", "V1"));
        set().itemNumbers(List.of("P1"));
        assertThat(set().itemNumbers(List.of("P1", "V9"))).containsEntry("V9", 3);
    }

    @Test
    void aPartThatComesBackHasItsOldNumber() {
        set().itemNumbers(List.of("P1", "V1"));
        set().itemNumbers(List.of("P1", "V9"));
        assertThat(set().itemNumbers(List.of("V1"))).containsEntry("V1", 2);
    }

    @Test
    void aGapThatAPersonMadeIsNotFilled() {
        Json.write(folder.resolve("items.json"), java.util.Map.of("items", java.util.Map.of("P1", 7)));
        assertThat(set().itemNumbers(List.of("V1"))).containsEntry("V1", 8).containsEntry("P1", 7);
    }
}
