package linewalk.importer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.drawing.ReferenceReading;
import linewalk.drawing.SheetReading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The same drawing under every page option reads the same, in points as displayed. */
class PageGeometryTest {

    private static Drawn drawing() {
        return Drawn.page(842, 595)
                .circle(200, 300, 20)
                .text(230, 320, "0P1")
                .line(200, 280, 200, 150, 500, 150)
                .flag(500, 140, 570, 160)
                .text(505, 153, "2/B4")
                .pen(1, 8, 3)
                .line(220, 300, 400, 300);
    }

    private static Arguments option(String name, UnaryOperator<Drawn> option) {
        return Arguments.of(name, option);
    }

    static Stream<Arguments> options() {
        return Stream.of(
                option("turned 90", d -> d.turned(90)),
                option("turned 180", d -> d.turned(180)),
                option("turned 270", d -> d.turned(270)),
                option("cropped", d -> d.cropAt(100, 37)),
                option("user unit 2", d -> d.userUnit(2)),
                option("single glyphs", Drawn::glyphByGlyph),
                option("turned 90, cropped", d -> d.turned(90).cropAt(100, 37)),
                option("turned 180, cropped", d -> d.turned(180).cropAt(100, 37)),
                option(
                        "turned 270, cropped, user unit",
                        d -> d.turned(270).cropAt(100, 37).userUnit(1.5)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("options")
    void readsAsThePlainPage(String name, UnaryOperator<Drawn> option) {
        SheetReading plain = drawing().read();
        SheetReading other = option.apply(drawing()).read();

        assertThat(Said.lines(other)).isEqualTo(Said.lines(plain)).containsExactly("0P1 - open", "0P1 - to 2/B4");
        assertThat(Said.references(other)).isEqualTo(Said.references(plain));
        assertThat(other.widthPt()).isCloseTo(842, within(0.01));
        assertThat(other.heightPt()).isCloseTo(595, within(0.01));
        assertThat(places(other))
                .zipSatisfy(places(plain), (a, b) -> assertThat(a.distancePt(b)).isLessThan(0.05));
        assertThat(other.lines().get(0).kind()).isEqualTo(plain.lines().get(0).kind());
    }

    /** ISO 32000-1, 14.11.2 and table 30: CropBox and UserUnit; the corner of the CropBox is what is displayed. */
    @ParameterizedTest(name = "turned {0}")
    @ValueSource(ints = {0, 90, 180, 270})
    void theWayBackLeadsIntoTheCropBox(int turned) {
        SheetReading r = drawing().turned(turned).cropAt(100, 37).userUnit(2).read();

        Box onPage =
                Box.around(List.of(r.toPage().apply(new Point(0, 0)), r.toPage().apply(new Point(842, 595))));

        double wide = turned % 180 == 0 ? 421 : 297.5;
        double high = turned % 180 == 0 ? 297.5 : 421;
        assertThat(onPage).isEqualTo(new Box(100, 37, 100 + wide, 37 + high));
    }

    @Test
    void upOnAPageTurnedByNinetyLiesToTheRightOfItsUserSpace() {
        SheetReading r = Drawn.page(842, 595).turned(90).read();

        assertThat(r.toPage().apply(new Point(0, 0))).isEqualTo(new Point(0, 0));
        assertThat(r.toPage().apply(new Point(842, 0))).isEqualTo(new Point(0, 842));
    }

    private static List<Point> places(SheetReading r) {
        Stream<Point> references = r.references().stream().map(ReferenceReading::place);
        Stream<Point> parts = r.components().stream().map(c -> c.place());
        Stream<Point> ends = r.lines().stream().flatMap(l -> l.ends().stream()).map(e -> e.place());
        return Stream.of(references, parts, ends).flatMap(s -> s).toList();
    }
}
