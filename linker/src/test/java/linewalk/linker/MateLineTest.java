package linewalk.linker;

import static linewalk.linker.Drawn.findings;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Sizes and kinds of the two lines that mates join, and far parts that references name. */
class MateLineTest {

    private static Drawn pair(String one, String other) {
        return Drawn.of("sheet 1\nref a B4 > 2/C1 L-7\npart V1 check-valve B2 A B\nline " + one + " V1:B a\n"
                + "sheet 2\nref b C1 > 1/B4 L-7\npart V2 filter C3 A B\nline " + other + " b V2:A");
    }

    @Test
    void sizesThatDiffer() {
        assertThat(findings(pair("size=DN25", "size=DN20").link())).contains("size-differs a b");
        assertThat(findings(pair("size=25x3", "size=25x2.5").link())).contains("size-differs a b");
    }

    @Test
    void sizesThatAgreeOrCannotBeCompared() {
        assertThat(findings(pair("size=DN25", "size=DN25").link())).doesNotContain("size-differs a b");
        assertThat(findings(pair("size=25x3", "size=25x3.0").link())).doesNotContain("size-differs a b");
        assertThat(findings(pair("size=DN25", "size=1\"").link())).doesNotContain("size-differs a b");
        assertThat(findings(pair("size=DN25", "").link())).doesNotContain("size-differs a b");
    }

    @Test
    void aHeaderWithSeveralMatesMayHaveThinnerBranches() {
        assertThat(findings(Drawn.of("""
                                sheet 1
                                ref a B4 > 2/C1,3/C1 L-7
                                part V1 check-valve B2 A B
                                line size=DN25 V1:B a
                                sheet 2
                                ref b C1 > 1/B4 L-7
                                part V2 filter C3 A B
                                line size=DN20 b V2:A
                                sheet 3
                                ref c C1 > 1/B4 L-7
                                part V3 filter C3 A B
                                line size=DN20 c V3:A
                                """).link())).noneMatch(f -> f.contains("differs"));
    }

    @Test
    void aWorkingLineThatGoesOnAsADrain() {
        assertThat(findings(pair("", "drain").link())).contains("kind-differs a b");
        assertThat(findings(pair("drain", "drain").link())).doesNotContain("kind-differs a b");
        assertThat(findings(pair("pilot", "drain").link()))
                .as("dash lengths alone do not tell pilot from drain")
                .doesNotContain("kind-differs a b");
    }

    private static Drawn far(String one, String other) {
        return Drawn.of("sheet 1\nref a B4 > 2/C1 " + one + "\npart V1 check-valve B2 A B\nline V1:B a\n"
                + "sheet 2\nref b C1 > 1/B4 " + other + "\npart V2 filter C3 A B\nline b V2:A");
    }

    @Test
    void eachEndNamesTheOthersPart() {
        assertThat(findings(far("V2:A", "V1:B").link())).noneMatch(f -> f.contains("differs"));
    }

    @Test
    void aPortThatDoesNotFit() {
        assertThat(findings(far("V2:B", "V1:B").link())).contains("far-part-differs a b");
        assertThat(findings(far("V2:A", "V2:B").link())).contains("far-part-differs a b");
    }

    @Test
    void drainsThatStandUnderReturnPressure() {
        String parts = "sheet 1\npart P1 pump B1 L P\npart V1 directional-valve B2 P T A B\npart F1 filter C2 A B\n"
                + "part T1 tank D2 R\n";
        assertThat(findings(
                        Drawn.of(parts + "line P1:L V1:T F1:A\nline F1:B T1:R").link()))
                .anyMatch(f -> f.startsWith("drain-on-return"));
        assertThat(findings(Drawn.of(parts + "line P1:L T1:R\nline V1:T F1:A\nline F1:B T1:R")
                        .link()))
                .noneMatch(f -> f.startsWith("drain-on-return"));
        assertThat(findings(Drawn.of(parts + "line P1:L V1:T T1:R").link()))
                .noneMatch(f -> f.startsWith("drain-on-return"));
    }
}
