package linewalk.drawing.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import linewalk.drawing.Kind;
import linewalk.drawing.Part;
import linewalk.drawing.UserError;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The parts list. */
class PartsFileTest {

    @TempDir
    Path folder;

    private List<Part> parts(String text) throws IOException {
        Files.writeString(folder.resolve("parts.csv"), text);
        return SetFolder.at(folder).parts();
    }

    @Test
    void noFileMeansNoParts() {
        assertThat(SetFolder.at(folder).parts()).isEmpty();
    }

    @Test
    void aRowIsAPart() throws IOException {
        assertThat(parts("tag,description,kind,setting,test_point\nP1,\"Pump, main\",pump,210 bar,MP1\n"))
                .containsExactly(new Part("P1", "Pump, main", Kind.PUMP, "210 bar", "MP1"));
    }

    @Test
    void theTagMayBeCalledDesignationAndEverythingElseMayBeMissing() throws IOException {
        assertThat(parts("designation\nP1\n")).containsExactly(new Part("P1", null, null, null, null));
    }

    @Test
    void kindsAreFoundInAnySpellingAndUnknownOnesStayUnknown() throws IOException {
        assertThat(parts("tag,kind\nV1,Check Valve\nV2,check-valve\nV3,gizmo\n"))
                .extracting(Part::kind)
                .containsExactly(Kind.CHECK_VALVE, Kind.CHECK_VALVE, Kind.UNKNOWN);
    }

    @Test
    void aPartWithoutDesignationIsNamedByLineAndColumn() {
        assertThatThrownBy(() -> parts("tag,description\nP1,Pump\n,Valve\n"))
                .isInstanceOf(UserError.class)
                .hasMessageContaining("parts.csv, line 3, column 1 (tag)");
    }

    @Test
    void aCellTooManyIsTold() {
        assertThatThrownBy(() -> parts("tag,description\nP1,Pump,210 bar,more\n"))
                .isInstanceOf(UserError.class)
                .hasMessageContaining("line 2");
    }
}
