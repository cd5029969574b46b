package linewalk.renderer.iso;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.List;
import linewalk.drawing.Kind;
import linewalk.renderer.iso.InkLog.Lettered;
import org.junit.jupiter.api.Test;

/** A directional valve is drawn as it stands: shifted, with what is energised. */
class SpoolStandingTest {

    private static Sketch fourThree() {
        return new Sketch(Kind.DIRECTIONAL_VALVE, "P_ T_ A^ B^")
                .position("rest spring: ")
                .position("Y1A solenoid: P-A B-T")
                .position("Y1B solenoid: P-B A-T");
    }

    /** The one square with heavy lines. */
    private static Rectangle2D active(InkLog ink) {
        List<Rectangle2D> heavy = ink.strokes.stream()
                .filter(s -> s.widthPt() > Pen.LINE_PT)
                .map(s -> s.line().getBounds2D())
                .toList();
        assertThat(heavy).hasSize(1);
        return heavy.get(0);
    }

    private static void meets(Sketch s) {
        Symbol symbol = s.symbol();
        Rectangle2D square = active(InkLog.of(symbol));
        for (PortUse u : s.uses) {
            assertThat(symbol.place(u.id()).offsetPt()).isBetween(square.getMinX(), square.getMaxX());
        }
    }

    @Test
    void linesMeetTheActiveSquare() {
        meets(fourThree());
        meets(fourThree().active(1));
        meets(fourThree().active(2));
    }

    @Test
    void theRowShiftsUnderTheLines() {
        double a = active(InkLog.of(fourThree().active(1).symbol())).getMinX();
        double rest = active(InkLog.of(fourThree().symbol())).getMinX();
        double b = active(InkLog.of(fourThree().active(2).symbol())).getMinX();
        assertThat(a).isLessThan(rest);
        assertThat(rest).isLessThan(b);
    }

    @Test
    void operatorsStandBesideTheirSquares() {
        InkLog ink = InkLog.of(fourThree().symbol());
        Rectangle2D rest = active(ink);
        assertThat(ink.find("Y1A").box().getMaxX()).isLessThan(rest.getMinX());
        assertThat(ink.find("Y1B").box().getMinX()).isGreaterThan(rest.getMaxX());
    }

    @Test
    void energisedSolenoidsAreDarkAndSayOn() {
        InkLog off = InkLog.of(fourThree().symbol());
        assertThat(off.shows("ON")).isFalse();
        InkLog on = InkLog.of(fourThree().active(1).on("Y1A").symbol());
        for (String word : List.of("Y1A", "ON")) {
            Lettered t = on.find(word);
            assertThat(t.color()).isEqualTo(Color.WHITE);
            assertThat(on.fills.stream().anyMatch(f -> f.area().contains(t.box())))
                    .isTrue();
        }
        assertThat(on.find("Y1B").color()).isEqualTo(Color.BLACK);
    }

    @Test
    void supplyAndReturnLieBelowWhateverTheLinesDo() {
        Symbol s = new Sketch(Kind.DIRECTIONAL_VALVE, "P^ T^ A_ B_").symbol();
        assertThat(List.of(s.place("P").side(), s.place("T").side())).containsOnly(Side.BOTTOM);
        assertThat(List.of(s.place("A").side(), s.place("B").side())).containsOnly(Side.TOP);
        assertThat(s.place("P").offsetPt()).isLessThan(s.place("T").offsetPt());
        assertThat(s.place("A").offsetPt()).isEqualTo(s.place("P").offsetPt());
    }

    @Test
    void portsWithoutLettersGoWhereTheirLinesLead() {
        Symbol s = new Sketch(Kind.DIRECTIONAL_VALVE, "1_ 2_").symbol();
        assertThat(s.place("1").side()).isEqualTo(Side.BOTTOM);
        assertThat(s.place("2").side()).isEqualTo(Side.BOTTOM);
    }

    @Test
    void unknownPositionsAsk() {
        assertThat(InkLog.of(new Sketch(Kind.DIRECTIONAL_VALVE, "P_ A^").symbol())
                        .words())
                .containsOnlyOnce("?");
    }

    @Test
    void twoSolenoidsWithoutSpringMoveTwoSquares() {
        Sketch s = new Sketch(Kind.DIRECTIONAL_VALVE, "P_ T_ A^ B^")
                .position("Y1A solenoid: P-A B-T")
                .position("rest detent: P-B A-T")
                .position("Y1B solenoid: P-B A-T");
        InkLog ink = InkLog.of(s.symbol());
        Rectangle2D square = active(ink);
        assertThat(ink.find("Y1A").box().getMaxX()).isLessThan(square.getMinX() - square.getWidth());
        assertThat(ink.find("Y1B").box().getMinX()).isGreaterThan(square.getMaxX());
    }

    @Test
    void aChangeIsMarkedClearOfEverything() {
        InkLog before = InkLog.of(fourThree().active(1).symbol());
        InkLog after = InkLog.of(fourThree().active(1).changed().symbol());
        assertThat(after.fills).hasSize(before.fills.size() + 2);
        for (var mark : after.fills.subList(before.fills.size(), after.fills.size())) {
            Rectangle2D box = mark.area().getBounds2D();
            assertThat(before.strokes.stream().noneMatch(s -> s.area().intersects(box)))
                    .isTrue();
            assertThat(before.texts.stream().noneMatch(t -> t.box().intersects(box)))
                    .isTrue();
        }
    }

    private static long circles(Sketch s) {
        return InkLog.of(s.symbol()).strokes.stream()
                .map(k -> k.line().getPathIterator(null))
                .filter(i -> {
                    i.next();
                    return !i.isDone() && i.currentSegment(new double[6]) == PathIterator.SEG_CUBICTO;
                })
                .count();
    }

    @Test
    void oneWayIsACheckOnlyWhereAnotherPositionOpensIt() {
        Sketch seat = new Sketch(Kind.DIRECTIONAL_VALVE, "P_ A^")
                .position("Y5 solenoid: P-A")
                .position("rest spring: P>A");
        assertThat(circles(seat)).isEqualTo(1);
        Sketch arrows = new Sketch(Kind.DIRECTIONAL_VALVE, "P_ T_ A^ B^")
                .position("Y5 solenoid: P>A B>T")
                .position("rest spring: P-T");
        assertThat(circles(arrows)).isZero();
    }
}
