package linewalk.renderer.iso;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import linewalk.drawing.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Whatever a part is and whatever meets it, its symbol stays in its field and can be read. */
class SymbolRulesTest {

    private static final String[] NAMES = {
        "P", "T", "A", "B", "X", "Y", "L", "M", "R", "P1", "T2", "B2", "DR", "Mp", "OUT", "1", "2", "3", "4", "5",
        "Qx9wW"
    };
    private static final String[] HOWS = {" solenoid", " spring", " lever", " pilot", " detent", ""};

    @Test
    void samplesKeepThem() {
        SymbolSamples.all().forEach((title, s) -> new InkRules(title, s.symbol(), s.uses).check());
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void oddPartsKeepThem(Kind kind) {
        for (int ports = 0; ports <= 8; ports++) {
            for (int seed = 0; seed < 8; seed++) {
                Random random = new Random(31L * ports + seed);
                String words = ports(random, ports);
                Sketch s = new Sketch(kind, words);
                positions(random, s);
                String what = kind + " with " + words + ", seed " + seed;
                new InkRules(what, s.symbol(), s.uses).check();
                new InkRules(what + ", changed", s.changed().symbol(), s.uses).check();
            }
        }
    }

    private static String ports(Random random, int count) {
        List<String> names = new ArrayList<>(List.of(NAMES));
        StringBuilder words = new StringBuilder();
        for (int i = 0; i < count; i++) {
            String line = random.nextInt(3) > 0 ? "" : random.nextBoolean() ? "p" : "d";
            words.append(names.remove(random.nextInt(names.size())))
                    .append(random.nextBoolean() ? "^" : "_")
                    .append(line)
                    .append(' ');
        }
        return words.toString();
    }

    private static void positions(Random random, Sketch s) {
        int count = random.nextInt(5);
        for (int i = 0; i < count; i++) {
            String by = i == count / 2 ? "rest" : "Y" + i + (random.nextInt(4) == 0 ? "A/Y19B" : "");
            StringBuilder passages = new StringBuilder();
            for (int n = s.uses.isEmpty() ? 0 : random.nextInt(4); n > 0; n--) {
                passages.append(id(random, s))
                        .append(List.of("-", ">", "~", ">~").get(random.nextInt(4)))
                        .append(id(random, s))
                        .append(List.of("", "", "!pressure", "!pilot").get(random.nextInt(4)))
                        .append(' ');
            }
            s.position(by + HOWS[random.nextInt(HOWS.length)] + ": " + passages);
        }
        if (count > 0 && random.nextBoolean()) {
            s.active(random.nextInt(count)).on("Y0", "Y1");
        }
    }

    /** Now and then a port that there is not. */
    private static String id(Random random, Sketch s) {
        return random.nextInt(12) == 0
                ? "none"
                : s.uses.get(random.nextInt(s.uses.size())).id();
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void theFieldDoesNotDependOnWhatIsEnergised(Kind kind) {
        Sketch off = new Sketch(kind, "P_ A^").position("Y1 solenoid: P-A").position("rest spring: ");
        Symbol still = off.symbol();
        Symbol moved = off.active(0).on("Y1").changed().symbol();
        boolean switches = kind == Kind.DIRECTIONAL_VALVE || kind == Kind.PROPORTIONAL_VALVE;
        if (switches) {
            assertThat(moved.widthPt()).isEqualTo(still.widthPt());
            assertThat(moved.heightPt()).isEqualTo(still.heightPt());
        }
    }
}
