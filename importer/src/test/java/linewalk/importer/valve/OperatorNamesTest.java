package linewalk.importer.valve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Position.How;
import linewalk.importer.lettering.Label;
import linewalk.importer.lettering.Label.Reading;
import org.junit.jupiter.api.Test;

/** What the coils of a valve are called. */
class OperatorNamesTest {

    private static final Operator LEFT =
            new Operator(How.SOLENOID, true, false, false, false, new Box(80, 100, 100, 115));
    private static final Operator RIGHT =
            new Operator(How.SOLENOID, true, false, false, false, new Box(200, 100, 220, 115));

    private static Label label(String text, double xPt, Reading... readings) {
        return new Label(text, new Box(xPt, 90, xPt + 15, 97), 7, 0, List.of(), List.of(readings));
    }

    private static OperatorNames names(Label... labels) {
        return new OperatorNames(List.of(labels), Lie.LEVEL);
    }

    @Test
    void theNameNearestToTheCoil() {
        OperatorNames names = names(label("Y4A", 82), label("Y4B", 202));
        assertThat(names.of(LEFT, RIGHT)).contains("Y4A");
        assertThat(names.of(RIGHT, LEFT)).contains("Y4B");
    }

    /** A voltage or a word may stand nearer, but is no name. */
    @Test
    void aUsualNameMayStandFurtherOffThanAnother() {
        Label far = new Label("-MB5", new Box(75, 135, 90, 142), 7, 0, List.of(), List.of());
        Label word = new Label("QX7", new Box(75, 135, 90, 142), 7, 0, List.of(), List.of());
        assertThat(names(far).of(LEFT, RIGHT)).contains("-MB5");
        assertThat(names(word).of(LEFT, RIGHT)).isEmpty();
    }

    @Test
    void anotherReadingThatIsAUsualNameIsLikelierThanAnUnusualOne() {
        Label speck = label("LY4A", 82, new Reading("LY4A", 0.09), new Reading("-Y4A", 0.09));
        assertThat(names(speck).of(LEFT, RIGHT)).contains("-Y4A");
    }

    @Test
    void anUnlikelyReadingIsNone() {
        Label other = label("LY4A", 82, new Reading("LY4A", 0.8), new Reading("-Y4A", 0.01));
        assertThat(names(other).of(LEFT, RIGHT)).contains("LY4A");
    }

    @Test
    void whatATextLayerTellsStands() {
        assertThat(names(label("LY4A", 82)).of(LEFT, RIGHT)).contains("LY4A");
    }
}
