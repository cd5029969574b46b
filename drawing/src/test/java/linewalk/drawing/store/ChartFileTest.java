package linewalk.drawing.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import linewalk.drawing.CycleChart;
import linewalk.drawing.UserError;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The cycle chart as people type it into a table. */
class ChartFileTest {

    @TempDir
    Path folder;

    private CycleChart chart(String text) throws IOException {
        Files.writeString(folder.resolve("cycle.csv"), text);
        return SetFolder.at(folder).chart();
    }

    @Test
    void noFileMeansNoChart() {
        assertThat(SetFolder.at(folder).chart()).isEqualTo(CycleChart.NONE);
    }

    @Test
    void everyColumnButStepAndNameIsASolenoid() throws IOException {
        CycleChart chart = chart("name,Y2,step,Y1\nRest,0,1,0\n\"Up, slow\",1,2,0\n");
        assertThat(chart.solenoids()).containsExactly("Y2", "Y1");
        assertThat(chart.steps()).extracting(CycleChart.Step::title).containsExactly("Rest", "Up, slow");
        assertThat(chart.steps().get(1).energised()).containsExactly("Y2");
    }

    @Test
    void aStepIsFoundByNumberAndByNameWhateverTheCase() throws IOException {
        CycleChart chart = chart("step,name,Y1\n1,Rest,0\n2,Up,1\n");
        assertThat(chart.find("2")).isEqualTo(chart.find("uP"));
        assertThat(chart.find("3")).isEmpty();
    }

    @Test
    void aChartWithoutNamesCallsItsStepsByNumber() throws IOException {
        assertThat(chart("step,Y1\nRaise,1\n").find("raise"))
                .map(CycleChart.Step::title)
                .contains("Raise");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1", "X", "x", "+", "on", "ON", "yes"})
    void on(String word) throws IOException {
        assertThat(chart("step,Y1\n1," + word + "\n").steps().get(0).energised())
                .containsExactly("Y1");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-", "", "off", "No", "  "})
    void off(String word) throws IOException {
        assertThat(chart("step,Y1\n1," + word + "\n").steps().get(0).energised())
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "step,Y1,Y2%n1,0,X%n2,maybe,1 | line 3, column 2 (Y1): 'maybe' is neither on",
                "step,Y1%n1,1%n2,1.5          | line 3, column 2 (Y1): '1.5' is neither on",
                "step,Y1%n,1                  | line 2, column 1 (step): the step has no number"
            })
    void whatIsNeitherIsNamedByLineAndColumn(String text, String where) {
        assertThatThrownBy(() -> chart(text.replace("%n", "\n")))
                .isInstanceOf(UserError.class)
                .hasMessageContaining("cycle.csv, ")
                .hasMessageContaining(where);
    }

    @Test
    void theMarkThatSpreadsheetsPutInFrontIsPassedOver() throws IOException {
        assertThat(chart("\uFEFFstep,Y1\r\n1,1\r\n").steps()).hasSize(1);
    }

    @Test
    void aWordBehindTheDesignationOrTheCellsTellWhatAColumnSays() throws IOException {
        CycleChart chart = chart("step,0P1,3V1 lever,0V9,1A1,1A1 load,MP3 bar,MP4\n"
                + "Off,0,,closed,hold,retract,,\nUp,1,a,open,extend,,120,\"1,5 MPa\"\n");
        assertThat(chart.solenoids()).containsExactly("0P1");
        CycleChart.Said off = chart.steps().get(0).said();
        CycleChart.Said up = chart.steps().get(1).said();
        assertThat(up.positions()).containsEntry("3V1", "a");
        assertThat(off.open()).containsEntry("0V9", false);
        assertThat(up.open()).containsEntry("0V9", true);
        assertThat(off.motions()).containsEntry("1A1", CycleChart.Motion.HOLD);
        assertThat(off.loads()).containsEntry("1A1", CycleChart.Load.RETRACT);
        assertThat(up.loads()).isEmpty();
        assertThat(up.pressuresBar()).containsEntry("MP3", 120.0).containsEntry("MP4", 15.0);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "step,0V9%n1,open%n2,half         | line 3, column 2 (0V9): 'half' is neither open nor closed",
                "step,1A1%n1,extend%n2,sideways   | line 3, column 2 (1A1): 'sideways' is none of extend",
                "step,1A1 load%n1,left            | line 2, column 2 (1A1 load): 'left' is none of",
                "step,MP3 bar%n1,much             | line 2, column 2 (MP3 bar): 'much' is no pressure"
            })
    void aCellOfAnotherKindIsNamedByLineAndColumn(String text, String where) {
        assertThatThrownBy(() -> chart(text.replace("%n", "\n")))
                .isInstanceOf(UserError.class)
                .hasMessageContaining(where);
    }
}
