package linewalk.importer.stroke;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import linewalk.drawing.Point;
import linewalk.importer.lettering.Cell;
import linewalk.importer.page.Dash;
import linewalk.importer.page.Marks;
import linewalk.importer.page.Stroke;
import org.junit.jupiter.api.Test;

/** Signs by their shapes: equal ones are one, whatever their place, size and turn; votes decide what they are. */
class SignTest {

    private static Row only(Marks marks) {
        List<Row> rows = PageInk.of(marks).rows();
        assertThat(rows).hasSize(1);
        return rows.get(0);
    }

    private static Row row(double highPt, double deg, String text) {
        return only(new Written().text(600, 600, highPt, deg, text).marks());
    }

    private static List<Integer> shapes(ShapeBook book, Row row) {
        return row.signs().stream().map(s -> book.of(s, row).id).toList();
    }

    @Test
    void equalShapesAreOneWhateverTheirSizeAndTurn() {
        ShapeBook book = new ShapeBook();

        List<Integer> first = shapes(book, row(10, 0, "PUMP"));

        assertThat(first.get(0)).isEqualTo(first.get(3)).isNotEqualTo(first.get(1));
        assertThat(shapes(book, row(17, 0, "PUMP"))).isEqualTo(first);
        assertThat(shapes(book, row(10, 270, "PUMP"))).isEqualTo(first);
        assertThat(shapes(book, row(10, 30, "PUMP"))).isEqualTo(first);
    }

    @Test
    void lettersThatLookAlikeButAreNotStayApart() {
        ShapeBook book = new ShapeBook();

        List<Integer> both = shapes(book, row(10, 0, "PR"));

        assertThat(both.get(0)).isNotEqualTo(both.get(1));
    }

    @Test
    void aReadingThatAnotherShapeOwnsIsNoCandidate() {
        ShapeBook book = new ShapeBook();
        Row row = row(10, 0, "2S");
        ShapeClass two = book.of(row.signs().get(0), row);
        ShapeClass s = book.of(row.signs().get(1), row);
        s.vote("S", 9);
        two.vote("S", 3);
        two.vote("2", 2);

        book.settle();

        assertThat(two.candidates()).containsExactly("2");
        assertThat(s.candidates()).containsExactly("S");
    }

    @Test
    void readingsThatNoOtherShapeOwnsStayOpen() {
        ShapeBook book = new ShapeBook();
        Row row = row(10, 0, "DB");
        ShapeClass shape = book.of(row.signs().get(0), row);
        shape.vote("D", 1.2);
        shape.vote("0", 0.8);

        book.settle();

        assertThat(shape.candidates()).containsExactly("D", "0");
        assertThat(shape.likelihood("D")).isBetween(0.5, 0.9);
    }

    @Test
    void moreLooksMakeSurer() {
        ShapeBook book = new ShapeBook();
        Row row = row(10, 0, "DB");
        ShapeClass shape = book.of(row.signs().get(0), row);
        shape.vote("D", 1);
        book.settle();
        double once = shape.likelihood("D");
        shape.vote("D", 4);
        book.settle();

        assertThat(shape.likelihood("D")).isGreaterThan(once).isGreaterThan(0.99);
    }

    @Test
    void anArrowPointsWhereItsHeadIs() {
        assertThat(ArrowSign.of(arrow(0).signs().get(0), arrow(0))).isEqualTo("\u2192");
        assertThat(ArrowSign.of(arrow(180).signs().get(0), arrow(180))).isEqualTo("\u2190");
    }

    private static Row arrow(double deg) {
        Turn turn = Turn.of(deg);
        Point a = turn.back(-5, 0);
        Point tip = turn.back(5, 0);
        List<Piece> pieces = List.of(piece(a, tip), piece(turn.back(2, -2), tip), piece(turn.back(2, 2), tip));
        Placed sign = Placed.of(Blob.of(pieces), Turn.of(0));
        return new Row(Turn.of(0), List.of(sign), 10, 5, 0, Cell.NONE);
    }

    private static Piece piece(Point a, Point b) {
        return Piece.of(0, new Stroke(List.of(a, b), false, false, 1, Dash.SOLID, false));
    }
}
