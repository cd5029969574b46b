package linewalk.samples.machine;

import java.util.ArrayList;
import java.util.List;

/** Flow paths written from the machine, in the order of flow. */
final class Journeys {
    private static final String PUMP1 = "0P1 0V1 101 0Z4 ";
    static final String PUMP2 = "0P2 0V2 102 0Z5 120 ";
    static final String TO_TANK = " 0Z3 0Z2 135 TANK";

    private Journeys() {}

    static List<Journey> all() {
        List<Journey> out = new ArrayList<>();
        out.add(journey(Cycle.STANDBY, PUMP1 + "0V7 131" + TO_TANK));
        out.add(journey(
                Cycle.RAISE, PUMP1 + "110 1V7 1V1 140 1V8 142 1V3 1A1 1V2 144 1V9 141 1V1 132" + TO_TANK, "1A1"));
        out.add(journey(
                Cycle.RAISE, PUMP1 + "110 1V7 1V1 140 1V8 143 1V5 1A2 1V4 145 1V9 141 1V1 132" + TO_TANK, "1A2"));
        out.add(journey(
                Cycle.LOWER, PUMP1 + "110 1V7 1V1 141 1V9 144 1V2 1A1 1V3 142 1V8 140 1V1 132" + TO_TANK, "1A1"));
        out.add(journey(
                Cycle.LOWER, PUMP1 + "110 1V7 1V1 141 1V9 145 1V4 1A2 1V5 143 1V8 140 1V1 132" + TO_TANK, "1A2"));
        out.add(journey(Cycle.RAISE, PUMP1 + "0V5 131" + TO_TANK, "0V5"));
        out.add(journey(Cycle.STANDBY, PUMP2 + "121 2V2 2V1 151 2V6 153 2V3 2A1 152 2V5 150 2V1 133" + TO_TANK, "2A1"));
        out.add(journey(
                Cycle.WITHDRAW, PUMP2 + "121 2V2 2V1 150 2V5 152 2A1 2V3 153 2V6 151 2V1 133" + TO_TANK, "2A1"));
        out.add(journey(
                Cycle.WITHDRAW, PUMP2 + "121 2V2 2V1 150 2V5 152 2A2 2V4 153 2V6 151 2V1 133" + TO_TANK, "2A2"));
        out.add(journey(
                Cycle.FLAP_UP,
                PUMP2 + "121 3V1 154 3V5 156 158 3V2 3V4 3A1 3V3 159 157 3V6 155 3V1 133" + TO_TANK,
                "3A1"));
        out.add(journey(
                Cycle.FLAP_DOWN,
                PUMP2 + "121 3V1 155 3V6 157 159 3V3 3A1 3V4 3V2 158 156 3V5 154 3V1 133" + TO_TANK,
                "3A1"));
        out.add(journey(Cycle.HEAVE, PUMP2 + "122 4V1 160 4V3 4M1 4V4 161 4V1 134" + TO_TANK, "4M1"));
        out.add(journey(Cycle.VEER, PUMP2 + "122 4V1 161 4V4 4M1 4V3 160 4V1 134" + TO_TANK, "4M1"));
        out.add(journey(Cycle.HEAVE, PUMP2 + "122 4V1 160 4V3 4V5 4V4 161 4V1 134" + TO_TANK, "4V5"));
        out.add(journey(Cycle.HEAVE, PUMP2 + "122 4V2 162 4A1"));
        return out;
    }

    static Journey journey(String state, String steps, String... via) {
        return new Journey(state, List.of(steps.split(" ")), List.of(via));
    }
}
