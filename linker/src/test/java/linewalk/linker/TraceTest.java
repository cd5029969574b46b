package linewalk.linker;

import static linewalk.linker.Drawn.from;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import linewalk.drawing.UserError;
import org.junit.jupiter.api.Test;

/** Where the oil flows: from least to most resistance, in the position that the machine is in. */
class TraceTest {

    /** A pump, a 4/3 valve with closed centre, a cylinder, a relief valve; facts.md's path logic of a training text. */
    private static Drawn press() {
        return Drawn.of("""
                        sheet 1
                        ref a B4 > 2/C1 L-1 out
                        ref b C4 > 2/D1 L-2 in
                        part T1 tank D1 S R1 R2
                        part P1 pump C1 P S
                        part V0 relief-valve C2 P T
                        line T1:S P1:S
                        line P1:P V0:P a
                        line V0:T T1:R1
                        line b T1:R2
                        sheet 2
                        ref c C1 > 1/B4 L-1 in
                        ref d D1 > 1/C4 L-2 out
                        part V1 directional-valve C2 P T A B
                        pos V1 rest
                        pos V1 Y1A P-A B-T
                        pos V1 Y1B P-B A-T
                        part A1 cylinder A2 A B
                        line c V1:P
                        line V1:T d
                        line V1:A A1:A
                        line V1:B A1:B
                        """).step("extend", "Y1A").step("retract", "Y1B").step("hold");
    }

    private static Question in(String step, String from, String... via) {
        return new Question(from, List.of(via), null, step, false, false, 1);
    }

    @Test
    void aSolenoidOpensTheWayOverTheCylinderToTheTank() {
        assertThat(press().walk(in("extend", "P1"))).isEqualTo("P1 a>c V1 A1 V1 d>b T1");
    }

    @Test
    void stepsAreFoundByNumberToo() {
        assertThat(press().walk(in("2", "P1"))).isEqualTo(press().walk(in("retract", "P1")));
    }

    /** Common practice, no source: oil in a return line goes to the tank, never back through the other pump's relief. */
    @Test
    void oilOnItsWayHomeDoesNotTurnBackIntoAnotherPumpsCircuit() {
        Drawn twoPumps = Drawn.of("""
                        sheet 1
                        part T1 tank D1 S1 S2 R1 R2
                        part P1 pump C1 P S
                        part P2 pump C3 P S
                        part V1 directional-valve B1 P T
                        part V2 relief-valve C4 A B
                        part A1 cylinder A3 A B
                        part V3 flow-control A4 A B
                        pos V1 rest P-T
                        line T1:S1 P1:S
                        line T1:S2 P2:S
                        line P1:P V1:P
                        line V1:T V2:B T1:R1
                        line V3:B T1:R2
                        line P2:P V2:A A1:A
                        line A1:B V3:A
                        """);
        assertThat(twoPumps.walk(from("P2", "A1"))).isEqualTo("P2 A1 V3 T1");
        assertThat(twoPumps.walk(from("P1", "A1"))).startsWith("stopped: ");
    }

    /** Common practice, no source: a pump that is unloaded to the tank drives no motor by the return port of its valve. */
    @Test
    void oilOnItsWayHomeDoesNotEnterAnotherValveByItsReturnPort() {
        Drawn twoPumps = Drawn.of("""
                        sheet 1
                        part T1 tank D1 S1 S2 R1
                        part P1 pump C1 P S
                        part P2 pump C3 P S
                        part V1 directional-valve B1 P T
                        part V2 directional-valve B3 P T A B
                        part V4 relief-valve C4 A B
                        part M1 motor A3 A B
                        pos V1 rest P-T
                        pos V2 rest
                        pos V2 Y1 P-A B-T
                        line T1:S1 P1:S
                        line T1:S2 P2:S
                        line P1:P V1:P
                        line V1:T V2:T V4:B T1:R1
                        line P2:P V2:P V4:A
                        line V2:A M1:A
                        line V2:B M1:B
                        """).step("turn", "Y1");
        assertThat(twoPumps.walk(in("turn", "P2", "M1"))).isEqualTo("P2 V2 M1 V2 T1");
        assertThat(twoPumps.walk(in("turn", "P1", "M1")))
                .startsWith("stopped: ")
                .endsWith("; in this step M1 is fed by P2");
        assertThat(twoPumps.walk(in("turn", "P1"))).isEqualTo("P1 V1 T1");
    }

    @Test
    void inTheClosedCentreThePumpGoesOverTheReliefValve() {
        assertThat(press().walk(from("P1"))).isEqualTo("P1 V0 T1");
    }

    @Test
    void aReliefValveMayBeNamed() {
        assertThat(press().walk(in("extend", "P1", "V0"))).isEqualTo("P1 V0 T1");
    }

    @Test
    void whereThereIsNoWayTheAnswerSaysWhereItEndsAndWhy() {
        assertThat(press().walk(in("hold", "P1", "A1")))
                .isEqualTo(
                        "stopped: ends at V1 port P on sheet 2, C2: in the position at rest (step hold) it joins this port to nothing");
    }

    @Test
    void anyPositionSaysWhichValveMustShift() {
        Answer answer = press().trace(new Question("P1", List.of("A1"), null, null, true, false, 1));
        List<Leg> legs = ((Answer.Found) answer).traces().get(0).legs();
        assertThat(legs)
                .filteredOn(l -> l instanceof Leg.Through t && t.shift() != null)
                .extracting(l -> ((Leg.Through) l).shift().by())
                .containsExactly(List.of("Y1A"), List.of("Y1A"));
    }

    @Test
    void severalWaysAreListedTheEasiestFirst() {
        Answer answer = press().trace(new Question("P1", List.of(), null, "extend", false, false, 5));
        assertThat(((Answer.Found) answer).traces())
                .extracting(Drawn::walk)
                .containsExactly("P1 a>c V1 A1 V1 d>b T1", "P1 V0 T1");
    }

    @Test
    void sheetsAreTheOnesPassedInOrder() {
        Answer answer = press().trace(in("extend", "P1"));
        assertThat(((Answer.Found) answer).traces().get(0).sheets()).containsExactly("1", "2", "1");
    }

    @Test
    void whatIsNotThereIsTheUsersErrorWithTheNearestNames() {
        assertThatThrownBy(() -> press().trace(from("P2")))
                .isInstanceOf(UserError.class)
                .hasMessageContaining("P1");
        assertThatThrownBy(() -> press().trace(from("P1:X")))
                .isInstanceOf(UserError.class)
                .hasMessageContaining("P, S");
        assertThatThrownBy(() -> press().trace(in("extnd", "P1")))
                .isInstanceOf(UserError.class)
                .hasMessageContaining("extend");
    }

    @Test
    void aCheckBesideAThrottleIsTakenWhereItOpens() {
        Drawn meterOut = Drawn.of("""
                sheet 1
                part P1 pump A1 P
                part V2 flow-control B1 A B
                pos V2 rest A~B B>A
                part T1 tank C1 R
                line P1:P V2:B
                line V2:A T1:R
                """);
        Answer answer = meterOut.trace(from("P1"));
        Leg.Through valve =
                (Leg.Through) ((Answer.Found) answer).traces().get(0).legs().get(2);
        assertThat(valve.passage().throttled()).isFalse();
    }

    @Test
    void aCheckStopsWhatComesTheOtherWay() {
        Drawn check = Drawn.of("""
                sheet 1
                part P1 pump A1 P
                part V2 check-valve B1 A B
                pos V2 rest A>B
                part T1 tank C1 R
                line P1:P V2:B
                line V2:A T1:R
                """);
        assertThat(check.walk(from("P1"))).startsWith("stopped: ends at V2 port B on sheet 1, B1");
    }

    @Test
    void workingLinesGoBeforeDrainAndPilotLines() {
        Drawn two = Drawn.of("""
                sheet 1
                part P1 pump A1 P
                part H1 hose B1 A B
                part H2 hose B2 A B
                part H3 hose B3 A B
                part H4 hose B4 A B
                part T1 tank C1 R D X
                line P1:P H1:A H2:A H3:A
                line drain H1:B T1:D
                line pilot H2:B T1:X
                line H3:B H4:A
                line H4:B T1:R
                """);
        assertThat(two.walk(from("P1"))).isEqualTo("P1 H3 H4 T1");
    }

    @Test
    void threePortsWithoutKnownPassagesStopTheOil() {
        Drawn unknown = Drawn.of("""
                sheet 1
                part P1 pump A1 P
                part V1 directional-valve B1 P A T
                part T1 tank C1 R
                line P1:P V1:P
                line V1:T T1:R
                """);
        assertThat(unknown.walk(from("P1"))).contains("V1 port P on sheet 1, B1", "not known");
    }

    /** Oil goes in through one check, and comes back through the other, which its pilot opens. */
    @Test
    void twoPilotChecksInOneBlockArePassedOneAfterTheOther() {
        Drawn drawn = Drawn.of("""
                sheet 1
                part P1 pump A1 P
                part V1 pilot-check-valve B1 V1 V2 C1 C2
                pos V1 rest V1>C1 V2>C2
                pos V1 pilot V1-C1 V2-C2
                part A1 cylinder C1 A B
                part T1 tank D1 R
                line P1:P V1:V1
                line V1:C1 A1:A
                line A1:B V1:C2
                line V1:V2 T1:R
                """);
        assertThat(drawn.walk(from("P1", "A1"))).isEqualTo("P1 V1 A1 V1 T1");
    }

    @Test
    void pilotAndDrainPortsDoNotCountAmongTheTwo() {
        Drawn lift = Drawn.of("""
                sheet 1
                part P1 pump A1 P
                part V3 counterbalance-valve B1 V C X L
                part T1 tank C1 R D
                line P1:P V3:V V3:X
                line V3:C T1:R
                line drain V3:L T1:D
                """);
        assertThat(lift.walk(from("P1"))).isEqualTo("P1 V3 T1");
    }

    @Test
    void aPumpDrawsFromTheTankAndNeverPassesOilBackwards() {
        Drawn two = Drawn.of("""
                sheet 1
                part P1 pump A1 P S
                part P2 pump A2 P S
                part T1 tank C1 S1 S2
                line P1:P P2:P
                line P1:S T1:S1
                line P2:S T1:S2
                """);
        assertThat(two.walk(from("P1"))).startsWith("stopped: ends at P2 port P");
        assertThat(two.walk(new Question("T1", List.of(), "P1", null, false, false, 1)))
                .isEqualTo("T1 P1");
    }

    @Test
    void aNormallyClosedShutOffIsPassedOnlyWhenNamed() {
        Drawn dump = Drawn.of("""
                sheet 1
                part P1 pump A1 P
                part V8 shut-off-valve B1 A B set=closed
                part T1 tank C1 R
                line P1:P V8:A
                line V8:B T1:R
                """);
        assertThat(dump.walk(from("P1"))).contains("normally closed");
        assertThat(dump.walk(from("P1", "V8"))).isEqualTo("P1 V8 T1");
    }

    @Test
    void onePartDrawnOnTwoSheetsIsOnePart() {
        Drawn split = Drawn.of("""
                sheet 1
                part P1 pump A1 P
                part A1 cylinder B1 A
                line P1:P A1:A
                sheet 2
                part A1 cylinder B1 B
                part T1 tank C1 R
                line A1:B T1:R
                """);
        assertThat(split.walk(from("P1"))).isEqualTo("P1 A1 T1");
    }
}
