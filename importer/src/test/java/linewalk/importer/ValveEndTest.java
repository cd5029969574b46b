package linewalk.importer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import linewalk.drawing.Point;
import linewalk.drawing.Rule;
import linewalk.drawing.SheetReading;
import linewalk.importer.ValveArt.Hand;
import org.junit.jupiter.api.Test;

/** What stands at the ends of a row moves the square beside it; what is not read surely is left out and said so. */
class ValveEndTest {

    private static final Map<String, double[]> FOUR = Map.of(
            "P", new double[] {0.25, 1},
            "T", new double[] {0.75, 1},
            "A", new double[] {0.25, 0},
            "B", new double[] {0.75, 0});

    private static final double SIDE_PT = 28;

    /** In four turns, mirrored or not: the words of all readings, each once. */
    private static List<SheetReading> readings(Consumer<ValveArt> valve) {
        List<SheetReading> out = new ArrayList<>();
        for (int turn = 0; turn < 4; turn++) {
            for (boolean mirrored : new boolean[] {false, true}) {
                Drawn page = Drawn.page().pen(0.5);
                ValveArt art = new ValveArt(page, new Point(500, 400), SIDE_PT, turn, mirrored, Hand.FILLED_HEADS);
                valve.accept(art);
                double[] longer = {4, 5.8};
                FOUR.forEach((name, p) -> {
                    double out1 = p[0] < 0.5 ? longer[0] : longer[1];
                    art.whole(p[0], p[1], p[0], p[1] == 0 ? -out1 : 1 + out1);
                });
                art.text(1.5, 2, "1V1");
                out.add(page.read());
            }
        }
        return out;
    }

    private static Component valve(SheetReading r) {
        return Said.component(r, "1V1");
    }

    private static List<String> said(Consumer<ValveArt> valve) {
        return readings(valve).stream()
                .map(r -> valve(r).positions().stream()
                        .map(p -> String.join(",", p.by()) + " " + p.how() + " "
                                + p.passages().size())
                        .sorted()
                        .collect(Collectors.joining("; ")))
                .distinct()
                .toList();
    }

    private static void two(ValveArt a) {
        a.squares(2, 1);
        a.square(-1, "P>A B>T", FOUR);
        a.square(0, "P>B A>T", FOUR);
    }

    private static void three(ValveArt a) {
        a.squares(3, 1);
        a.square(-1, "P>A B>T", FOUR);
        a.square(0, "P-T", FOUR);
        a.square(1, "P>B A>T", FOUR);
    }

    @Test
    void namesOfManyForms() {
        for (String name : List.of("Y1", "SOL 1A", "SOL1", "1YA", "YV3", "S12", "a", "-Y3", "SOL A")) {
            assertThat(said(a -> {
                        two(a);
                        a.solenoid(-1, -1, name);
                        a.spring(1, 1, 0.3, 0.7);
                    }))
                    .containsExactly(name + " SOLENOID 2; rest SPRING 2");
        }
    }

    @Test
    void aSolenoidWithoutANameIsASolenoid() {
        assertThat(said(a -> {
                    two(a);
                    a.solenoid(-1, -1, "");
                    a.spring(1, 1, 0.3, 0.7);
                }))
                .containsExactly("rest SPRING 2; solenoid SOLENOID 2");
    }

    @Test
    void aPilotIsATriangleAtTheEndOrInABox() {
        assertThat(said(a -> {
                    two(a);
                    a.filled(-1.3, 0.35, -1.3, 0.65, -1, 0.5);
                    a.spring(1, 1, 0.3, 0.7);
                }))
                .containsExactly("pilot PILOT 2; rest SPRING 2");
        assertThat(said(a -> {
                    two(a);
                    a.box(-1.5, 0.2, -1, 0.8);
                    a.polygon(-1.4, 0.35, -1.4, 0.65, -1.1, 0.5);
                    a.spring(1, 1, 0.3, 0.7);
                }))
                .containsExactly("pilot PILOT 2; rest SPRING 2");
    }

    @Test
    void aPilotStageBelongsToItsSolenoid() {
        assertThat(said(a -> {
                    three(a);
                    for (int out = -1; out < 2; out += 2) {
                        double edge = out < 0 ? -1 : 2;
                        a.box(edge, 0.02, edge + out * 0.4, 0.5);
                        a.filled(edge, 0.26, edge + out * 0.3, 0.12, edge + out * 0.3, 0.4);
                        a.solenoid(edge + out * 0.4, out, out < 0 ? "Y1A" : "Y1B");
                        a.spring(edge, out, 0.6, 0.85);
                    }
                }))
                .containsExactly("Y1A SOLENOID 2; Y1B SOLENOID 2; rest SPRING 1");
    }

    /** Its head, filled and outlined, reaches the row's long side as the arrow of a passage would. */
    @Test
    void anArrowAcrossASolenoidLeadsNowhere() {
        assertThat(said(a -> {
                    three(a);
                    for (int out = -1; out < 2; out += 2) {
                        double edge = out < 0 ? -1 : 2;
                        a.solenoid(edge, out, out < 0 ? "Y1A" : "Y1B");
                        a.whole(edge, 0.5, edge + out * 0.6, 0.02);
                        double[] head = {edge + out * 0.452, 0.075, edge + out * 0.6, 0.02, edge + out * 0.514, 0.153};
                        a.filled(head);
                        a.polygon(head);
                        a.spring(edge, out, 0.6, 0.85);
                    }
                }))
                .containsExactly("Y1A SOLENOID 2; Y1B SOLENOID 2; rest SPRING 1");
    }

    @Test
    void theLeaderOfABalloonIsNoPassage() {
        assertThat(said(a -> {
                    two(a);
                    a.solenoid(-1, -1, "Y1");
                    a.spring(1, 1, 0.3, 0.7);
                    a.circle(-0.6, -1.8, 0.5);
                    a.text(-0.6, -1.8, "27");
                    a.whole(-0.6, -1.3, -0.5, 0.2);
                }))
                .containsExactly("Y1 SOLENOID 2; rest SPRING 2");
    }

    @Test
    void aLeverAtOneEndMovesEverySquare() {
        assertThat(said(a -> {
                    three(a);
                    a.whole(-1, 0.3, -1.5, -0.3);
                    a.circle(-1.54, -0.34, 0.05);
                    a.spring(-1, -1, 0.6, 0.85);
                    a.spring(2, 1, 0.6, 0.85);
                }))
                .containsExactly("lever LEVER 2; lever LEVER 2; rest SPRING 1");
    }

    @Test
    void twoSolenoidsWithoutSpringsLeaveItWhereItIs() {
        assertThat(said(a -> {
                    two(a);
                    a.solenoid(-1, -1, "Y1A");
                    a.solenoid(1, 1, "Y1B");
                }))
                .containsExactly("Y1A SOLENOID 2; Y1B SOLENOID 2; rest null 2");
    }

    @Test
    void aSolenoidOfTheRowsOwnSizeIsNoSquare() {
        assertThat(said(a -> {
                    two(a);
                    a.box(-2, 0, -1, 1);
                    a.whole(-1.7, 1, -1.3, 0);
                    a.text(-1.5, -0.35, "Y7");
                    a.spring(1, 1, 0.3, 0.7);
                }))
                .containsExactly("Y7 SOLENOID 2; rest SPRING 2");
    }

    @Test
    void anArrowThroughTheSolenoidIsProportional() {
        assertThat(readings(a -> {
                    three(a);
                    for (int out = -1; out < 2; out += 2) {
                        double edge = out < 0 ? -1 : 2;
                        a.solenoid(edge, out, out < 0 ? "Y1A" : "Y1B");
                        a.spring(edge, out, 0.6, 0.85);
                        a.whole(edge + out * 0.15, 0.6, edge + out * 0.62, -0.1);
                        a.filled(edge + out * 0.62, -0.1, edge + out * 0.48, 0.02, edge + out * 0.56, 0.08);
                    }
                }))
                .allSatisfy(r -> {
                    assertThat(valve(r).kind()).isEqualTo(Kind.PROPORTIONAL_VALVE);
                    assertThat(valve(r).positions()).hasSize(3);
                });
    }

    @Test
    void rulesAlongBothSidesAreProportional() {
        assertThat(readings(a -> {
                    three(a);
                    a.whole(-1, -0.12, 2, -0.12);
                    a.whole(-1, 1.12, 2, 1.12);
                    a.solenoid(-1, -1, "Y1A");
                    a.solenoid(2, 1, "Y1B");
                }))
                .allSatisfy(r -> assertThat(valve(r).kind()).isEqualTo(Kind.PROPORTIONAL_VALVE));
    }

    @Test
    void fourEndsThatMeetWithoutADotAreNotRead() {
        assertDoubted(a -> {
            a.squares(3, 1);
            a.square(-1, "P>A B>T", FOUR);
            for (double[] p : FOUR.values()) {
                a.whole(p[0], p[1], 0.5, 0.5);
            }
            a.square(1, "P>B A>T", FOUR);
        });
    }

    @Test
    void aSquareThatSaysNothingOfAPortIsNotRead() {
        assertDoubted(a -> {
            a.squares(3, 1);
            a.square(-1, "P>A B>T", FOUR);
            a.square(0, "P-T", Map.of("P", FOUR.get("P"), "T", FOUR.get("T")));
            a.square(1, "P>B A>T", FOUR);
        });
    }

    @Test
    void aMarkThatIsNotUnderstoodIsNotRead() {
        assertDoubted(a -> {
            three(a);
            a.whole(0.4, 0.3, 0.6, 0.35, 0.45, 0.45, 0.6, 0.5);
        });
    }

    private static void assertDoubted(Consumer<ValveArt> squares) {
        assertThat(readings(a -> {
                    squares.accept(a);
                    a.solenoid(-1, -1, "Y1A");
                    a.solenoid(2, 1, "Y1B");
                }))
                .allSatisfy(r -> {
                    assertThat(valve(r).positions()).isEmpty();
                    assertThat(valve(r).kind()).isEqualTo(Kind.DIRECTIONAL_VALVE);
                    assertThat(r.doubts()).extracting(d -> d.rule()).contains(Rule.DOUBTFUL_READING);
                });
    }
}
