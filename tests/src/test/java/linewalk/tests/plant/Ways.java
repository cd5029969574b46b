package linewalk.tests.plant;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import linewalk.drawing.Kind;
import linewalk.drawing.Passage;
import linewalk.drawing.Position;

/**
 * Positions of parts, written short: {@code P-A} joins, {@code P>A} lets pass one way, {@code P~A} throttles, {@code
 * P/T} is opened by pressure; a port stands for itself.
 */
final class Ways {

    private static final List<String> CENTRES = List.of("", "P-T", "A-T B-T", "P-T A-T B-T", "P-A P-B");
    private static final List<Position.How> HANDS =
            List.of(Position.How.LEVER, Position.How.DETENT, Position.How.PILOT);

    private Ways() {}

    /** A directional valve's ports and positions by chance; none where its squares were not read. */
    static List<Position> ofValve(String tag, String ports, Random random) {
        boolean solenoids = random.nextInt(4) > 0;
        String a = solenoids ? "Y" + tag + "a" : "a";
        String b = solenoids ? "Y" + tag + "b" : "b";
        Position.How how = solenoids ? Position.How.SOLENOID : HANDS.get(random.nextInt(HANDS.size()));
        if (random.nextInt(8) == 0) {
            return List.of();
        }
        return switch (ports) {
            case "P T A B" ->
                random.nextInt(3) == 0
                        ? List.of(at(tag, a, how, "P-A B-T"), at(tag, "rest", Position.How.SPRING, "P-B A-T"))
                        : List.of(
                                at(tag, a, how, "P-A B-T"),
                                at(tag, "rest", Position.How.SPRING, CENTRES.get(random.nextInt(CENTRES.size()))),
                                at(tag, b, how, "P-B A-T"));
            case "P T A" -> List.of(at(tag, a, how, "P-A"), at(tag, "rest", Position.How.SPRING, "A-T"));
            default -> List.of(at(tag, a, how, "P-A"), at(tag, "rest", Position.How.SPRING, ""));
        };
    }

    /** What a part of another kind joins; none where that is not told. */
    static List<Position> of(String tag, Kind kind, Random random) {
        if (random.nextInt(5) == 0) {
            return List.of();
        }
        return switch (kind) {
            case CHECK_VALVE -> List.of(at(tag, "rest", null, random.nextBoolean() ? "A>B" : "B>A"));
            case PILOT_CHECK_VALVE, PREFILL_VALVE ->
                List.of(at(tag, "rest", null, "A>B"), at(tag, "X", Position.How.PILOT, "A-B"));
            case FLOW_CONTROL -> List.of(at(tag, "rest", null, "A>B B~A"));
            case ORIFICE -> List.of(at(tag, "rest", null, "A~B"));
            case RELIEF_VALVE -> List.of(at(tag, "rest", null, "P/T"));
            case COUNTERBALANCE_VALVE -> List.of(at(tag, "rest", null, "A>B B/A"));
            default -> List.of();
        };
    }

    private static Position at(String tag, String by, Position.How how, String ways) {
        List<Passage> passages = new ArrayList<>();
        for (String w : ways.split(" ")) {
            if (!w.isEmpty()) {
                char sign = w.charAt(1);
                passages.add(new Passage(
                        tag + ":" + w.charAt(0),
                        tag + ":" + w.charAt(2),
                        sign == '>' || sign == '/',
                        sign == '~',
                        sign == '/' ? Passage.Opens.PRESSURE : null));
            }
        }
        return new Position(List.of(by), how, passages);
    }
}
