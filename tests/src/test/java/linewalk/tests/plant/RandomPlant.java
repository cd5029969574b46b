package linewalk.tests.plant;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.Kind;
import linewalk.drawing.LineKind;
import linewalk.drawing.Part;

/**
 * A hydraulic circuit by chance over some sheets: pumps and tanks, valves of all kinds on the way to actuators and back,
 * what hangs on lines, drains and pilots. The same seed gives the same circuit.
 */
public final class RandomPlant {

    private static final int PARTS_A_SHEET = 11;
    private static final List<String> VALVES = List.of("P T A B", "P T A B", "P T A B", "P T A", "P A");
    private static final List<Kind> IN_LINE = List.of(
            Kind.CHECK_VALVE,
            Kind.PILOT_CHECK_VALVE,
            Kind.PILOT_CHECK_VALVE,
            Kind.FLOW_CONTROL,
            Kind.FLOW_CONTROL,
            Kind.COUNTERBALANCE_VALVE,
            Kind.ORIFICE,
            Kind.SHUT_OFF_VALVE,
            Kind.HOSE,
            Kind.SWIVEL,
            Kind.REDUCING_VALVE,
            Kind.SEQUENCE_VALVE,
            Kind.CARTRIDGE_VALVE,
            Kind.PREFILL_VALVE,
            Kind.DECOMPRESSION_VALVE,
            Kind.UNKNOWN);
    private static final List<Kind> HANGING =
            List.of(Kind.GAUGE, Kind.TEST_POINT, Kind.TEST_POINT, Kind.SWITCH, Kind.ACCUMULATOR, Kind.PLUG);
    private static final List<Kind> ON_RETURN = List.of(Kind.FILTER, Kind.COOLER, Kind.CHECK_VALVE, Kind.HEATER);
    private static final List<Kind> BESIDE =
            List.of(Kind.RELIEF_VALVE, Kind.UNLOADING_VALVE, Kind.SHUT_OFF_VALVE, Kind.ORIFICE);
    private static final List<Kind> ACTUATORS =
            List.of(Kind.CYLINDER, Kind.CYLINDER, Kind.CYLINDER, Kind.MOTOR, Kind.ROTARY_ACTUATOR);
    private static final List<String> WORDS = List.of(
            "hoist", "gate", "left", "right", "main", "slewing", "return", "clamp", "lifting", "emergency", "lowering");

    /** A net as it grows. */
    private static final class Net {
        final LineKind kind;
        final Set<String> ports = new LinkedHashSet<>();

        Net(LineKind kind, String... ports) {
            this.kind = kind;
            this.ports.addAll(Arrays.asList(ports));
        }
    }

    private final Random random;
    private final int count;
    private final int sheetCount;
    private final MadeSet made;
    private final List<Net> nets = new ArrayList<>();
    private final Map<String, Part> parts = new HashMap<>();
    private final Map<String, Integer> items = new HashMap<>();
    private final Net supply = net(LineKind.WORKING);
    private final Net back = net(LineKind.WORKING);
    private final Net drain = net(LineKind.DRAIN);
    private int branch;

    /** @param count of parts, tank and pump among them; 5 or more */
    public RandomPlant(long seed, int count) {
        random = new Random(seed);
        this.count = count;
        sheetCount = 1 + count / PARTS_A_SHEET;
        made = new MadeSet(sheetCount, random);
        source();
        while (left() > 0) {
            grow();
        }
        for (Net n : nets) {
            if (n.ports.size() > 1) {
                made.net(n.kind, random.nextInt(3) == 0 ? "L-" + (100 + random.nextInt(900)) : null, n.ports);
            }
        }
    }

    /** From 5 to 60 parts. */
    public static RandomPlant of(long seed) {
        return new RandomPlant(seed, 5 + new Random(seed).nextInt(56));
    }

    public DrawingSet set() {
        return made.set();
    }

    public Map<String, Integer> items() {
        return items;
    }

    public Map<String, Part> parts() {
        return parts;
    }

    private int left() {
        return count - made.size();
    }

    private void source() {
        add(Kind.TANK, "TANK", 1, "S R L");
        back.ports.add("TANK:R");
        drain.ports.add("TANK:L");
        pump();
        branch(2);
    }

    private void pump() {
        boolean drained = random.nextBoolean();
        String pump = add(Kind.PUMP, "P", 1, drained ? "P S L" : "P S");
        net(LineKind.WORKING, "TANK:S", pump + ":S");
        if (drained) {
            drain.ports.add(pump + ":L");
        }
        if (supply.ports.isEmpty() || left() < 1) {
            supply.ports.add(pump + ":P");
        } else {
            supply.ports.add(chain(pump + ":P", sheet(), random.nextInt(2)));
        }
    }

    private void grow() {
        int what = random.nextInt(10);
        if (what < 4 && left() >= 2) {
            branch(left());
        } else if (what < 6) {
            hang();
        } else if (what < 7) {
            onReturn();
        } else if (what < 9) {
            beside();
        } else if (random.nextInt(3) == 0) {
            pump();
        } else {
            odd();
        }
    }

    /** A valve, what stands in its lines, and an actuator. */
    private void branch(int most) {
        branch++;
        int sheet = sheet();
        String ports = VALVES.get(random.nextInt(VALVES.size()));
        Kind kind = random.nextInt(4) == 0 ? Kind.PROPORTIONAL_VALVE : Kind.DIRECTIONAL_VALVE;
        String valve = add(kind, "V", sheet, ports);
        supply.ports.add(valve + ":P");
        if (ports.contains("T")) {
            (random.nextInt(6) == 0 ? drain : back).ports.add(valve + ":T");
        }
        int far = random.nextInt(3) == 0 ? sheet() : sheet;
        boolean two = ports.contains("B");
        String a = chain(valve + ":A", far, Math.min(most - 2, random.nextInt(4)));
        String b = two ? chain(valve + ":B", far, Math.min(left() - 1, random.nextInt(4))) : null;
        Kind actuator = two ? ACTUATORS.get(random.nextInt(ACTUATORS.size())) : single();
        boolean drained = actuator == Kind.MOTOR && random.nextBoolean();
        String moved = add(actuator, actuator == Kind.MOTOR ? "M" : "A", far, two ? drained ? "A B L" : "A B" : "A");
        net(LineKind.WORKING, a, moved + ":A");
        if (two) {
            net(LineKind.WORKING, b, moved + ":B");
        }
        if (drained) {
            drain.ports.add(moved + ":L");
        }
    }

    private Kind single() {
        return random.nextBoolean() ? Kind.BRAKE : Kind.CYLINDER;
    }

    /** Parts one behind the other; their pilots come from anywhere. Gives the port at which the chain ends. */
    private String chain(String from, int sheet, int length) {
        String at = from;
        for (int i = 0; i < length && left() > 1; i++) {
            Kind kind = IN_LINE.get(random.nextInt(IN_LINE.size()));
            boolean piloted = kind == Kind.PILOT_CHECK_VALVE
                    || kind == Kind.COUNTERBALANCE_VALVE
                    || kind == Kind.PREFILL_VALVE
                    || kind == Kind.DECOMPRESSION_VALVE && random.nextBoolean();
            boolean drained = kind == Kind.REDUCING_VALVE || kind == Kind.SEQUENCE_VALVE;
            String part = add(kind, "V", sheet, piloted ? "A B X" : drained ? "A B L" : "A B");
            net(LineKind.WORKING, at, part + ":A");
            if (piloted) {
                pilot(part + ":X");
            }
            if (drained && random.nextBoolean()) {
                drain.ports.add(part + ":L");
            }
            at = part + ":B";
        }
        return at;
    }

    /**
     * A pilot branches off a line, or comes in a line of its own through an orifice. A port has one line, as in every
     * set that was read or tagged: what meets at a port is one line.
     */
    private void pilot(String port) {
        if (left() > 1 && random.nextBoolean()) {
            String orifice = add(Kind.ORIFICE, "V", sheet(), "A B");
            any().ports.add(orifice + ":A");
            net(LineKind.PILOT, orifice + ":B", port);
        } else {
            any().ports.add(port);
        }
    }

    private void hang() {
        Kind kind = HANGING.get(random.nextInt(HANGING.size()));
        any().ports.add(add(kind, "Z", sheet(), "A") + ":A");
    }

    /** All return lines come together before the part, once. */
    private void onReturn() {
        if (back.ports.remove("TANK:R")) {
            String part = add(ON_RETURN.get(random.nextInt(ON_RETURN.size())), "Z", 1, "A B");
            net(LineKind.WORKING, "TANK:R", part + ":B");
            back.ports.add(part + ":A");
        } else {
            hang();
        }
    }

    private void beside() {
        Kind kind = BESIDE.get(random.nextInt(BESIDE.size()));
        boolean two = kind == Kind.RELIEF_VALVE || kind == Kind.UNLOADING_VALVE;
        String part = add(kind, "V", sheet(), two ? kind == Kind.UNLOADING_VALVE ? "P T X" : "P T" : "A B");
        any().ports.add(part + (two ? ":P" : ":A"));
        back.ports.add(part + (two ? ":T" : ":B"));
        if (kind == Kind.UNLOADING_VALVE) {
            pilot(part + ":X");
        }
    }

    private void odd() {
        int what = random.nextInt(5);
        if (what == 0) {
            String divider = add(Kind.FLOW_DIVIDER, "V", sheet(), "P A B");
            any().ports.add(divider + ":P");
            any().ports.add(divider + ":A");
            any().ports.add(divider + ":B");
        } else if (what == 1) {
            String shuttle = add(Kind.SHUTTLE_VALVE, "V", sheet(), "A B C");
            any().ports.add(shuttle + ":A");
            any().ports.add(shuttle + ":B");
            pilot(shuttle + ":C");
        } else if (what == 2) {
            String intensifier = add(Kind.INTENSIFIER, "Z", sheet(), "A B C");
            any().ports.add(intensifier + ":A");
            back.ports.add(intensifier + ":B");
            any().ports.add(intensifier + ":C");
        } else if (what == 3) {
            String strainer = add(Kind.STRAINER, "Z", 1, "A B");
            net(LineKind.WORKING, "TANK:S", strainer + ":A");
            any().ports.add(strainer + ":B");
        } else {
            String unread = add(Kind.UNKNOWN, "Q", sheet(), "?1 ?2 ?3 ?4");
            for (int i = 1; i <= 4; i++) {
                any().ports.add(unread + ":?" + i);
            }
        }
    }

    private Net any() {
        List<Net> some = nets.stream().filter(n -> !n.ports.isEmpty()).toList();
        return some.get(random.nextInt(some.size()));
    }

    private Net net(LineKind kind, String... ports) {
        Net net = new Net(kind, ports);
        nets.add(net);
        return net;
    }

    private int sheet() {
        return 1 + random.nextInt(sheetCount);
    }

    private String add(Kind kind, String letter, int sheet, String ports) {
        String tag = kind == Kind.TANK ? letter : branch + letter + (made.size() + 1);
        boolean valve = kind == Kind.DIRECTIONAL_VALVE || kind == Kind.PROPORTIONAL_VALVE;
        String setting = random.nextInt(3) == 0 ? (10 + random.nextInt(340)) + " bar" : null;
        made.part(
                sheet,
                tag,
                kind,
                setting,
                ports,
                valve ? Ways.ofValve(tag, ports, random) : Ways.of(tag, kind, random));
        items.put(tag, items.size() + 1);
        if (random.nextInt(3) > 0) {
            String point = random.nextInt(6) == 0 ? "M" + made.size() + ": " + random.nextInt(300) + " bar" : null;
            parts.put(tag, new Part(tag, description(), kind, setting, point));
        }
        return tag;
    }

    private String description() {
        List<String> words = new ArrayList<>();
        for (int i = 0; i < 1 + random.nextInt(6); i++) {
            words.add(WORDS.get(random.nextInt(WORDS.size())));
        }
        return String.join(" ", words);
    }
}
