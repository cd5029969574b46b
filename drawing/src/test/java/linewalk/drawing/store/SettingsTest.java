package linewalk.drawing.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import linewalk.drawing.SetSettings;
import linewalk.drawing.UserError;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A set's settings, written by the program and by people. */
class SettingsTest {

    @TempDir
    Path folder;

    @Test
    void whatIsWrittenIsReadBack() {
        SetSettings settings =
                new SetSettings(List.of("a.pdf", "/b.pdf"), List.of("GO (?<sheet>\\d+)"), "4x4", "published", null);
        SetFolder.at(folder).write(settings);
        assertThat(SetFolder.open(folder).settings()).isEqualTo(settings);
    }

    @Test
    void whatIsLeftOutHasADefault() throws IOException {
        Files.writeString(folder.resolve("set.json"), "{}");
        assertThat(SetFolder.open(folder).settings()).isEqualTo(new SetSettings(List.of(), List.of(), null));
    }

    @Test
    void aSlipIsNamedWithTheFieldsThereAre() throws IOException {
        Files.writeString(folder.resolve("set.json"), "{\n  \"sources\": [\"a.pdf\"],\n  \"patern\": []\n}");
        assertThatThrownBy(() -> SetFolder.open(folder).settings())
                .isInstanceOf(UserError.class)
                .hasMessageContaining("set.json, line ")
                .hasMessageContaining("there is no field 'patern'; known are [")
                .hasMessageContaining("patterns");
    }

    @Test
    void aFolderWithoutSettingsIsNoSet() {
        assertThatThrownBy(() -> SetFolder.open(folder))
                .isInstanceOf(UserError.class)
                .hasMessageContaining("no set.json");
        assertThatThrownBy(() -> SetFolder.open(folder.resolve("gone")))
                .isInstanceOf(UserError.class)
                .hasMessageContaining("there is no set folder");
    }
}
