package linewalk.importer.kind;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import linewalk.drawing.Kind;

/** What the letters of a designation say about the kind: ISO 1219-2:1995 and words common in US drawings. */
final class TagHint {

    private static final Pattern LETTERS = Pattern.compile("^(?:\\d+(?:\\.\\d+)?-|\\d+)?([A-Z]+)-?\\d.*");

    private static final Set<Kind> VALVES = EnumSet.of(
            Kind.RELIEF_VALVE,
            Kind.REDUCING_VALVE,
            Kind.SEQUENCE_VALVE,
            Kind.UNLOADING_VALVE,
            Kind.COUNTERBALANCE_VALVE,
            Kind.CHECK_VALVE,
            Kind.PILOT_CHECK_VALVE,
            Kind.DIRECTIONAL_VALVE,
            Kind.PROPORTIONAL_VALVE,
            Kind.SHUTTLE_VALVE,
            Kind.PREFILL_VALVE,
            Kind.DECOMPRESSION_VALVE,
            Kind.CARTRIDGE_VALVE,
            Kind.FLOW_CONTROL,
            Kind.ORIFICE,
            Kind.FLOW_DIVIDER,
            Kind.SHUT_OFF_VALVE);

    private static final Map<String, Set<Kind>> SAID = Map.ofEntries(
            Map.entry("P", EnumSet.of(Kind.PUMP)),
            Map.entry("PMP", EnumSet.of(Kind.PUMP)),
            Map.entry("A", EnumSet.of(Kind.CYLINDER, Kind.ROTARY_ACTUATOR, Kind.BRAKE, Kind.MOTOR, Kind.INTENSIFIER)),
            Map.entry("CYL", EnumSet.of(Kind.CYLINDER)),
            Map.entry("M", EnumSet.of(Kind.ELECTRIC_MOTOR, Kind.MOTOR)),
            Map.entry("MTR", EnumSet.of(Kind.ELECTRIC_MOTOR, Kind.MOTOR)),
            Map.entry("EM", EnumSet.of(Kind.ELECTRIC_MOTOR)),
            Map.entry("HM", EnumSet.of(Kind.MOTOR)),
            Map.entry("S", EnumSet.of(Kind.SWITCH, Kind.GAUGE)),
            Map.entry("PS", EnumSet.of(Kind.SWITCH)),
            Map.entry("PG", EnumSet.of(Kind.GAUGE)),
            Map.entry("MP", EnumSet.of(Kind.TEST_POINT, Kind.GAUGE)),
            Map.entry("TP", EnumSet.of(Kind.TEST_POINT, Kind.GAUGE)),
            Map.entry("V", VALVES),
            Map.entry("RV", EnumSet.of(Kind.RELIEF_VALVE, Kind.REDUCING_VALVE)),
            Map.entry("CV", EnumSet.of(Kind.CHECK_VALVE, Kind.PILOT_CHECK_VALVE, Kind.COUNTERBALANCE_VALVE)),
            Map.entry("CBV", EnumSet.of(Kind.COUNTERBALANCE_VALVE)),
            Map.entry("PRV", EnumSet.of(Kind.REDUCING_VALVE, Kind.RELIEF_VALVE)),
            Map.entry("SV", EnumSet.of(Kind.DIRECTIONAL_VALVE, Kind.SHUTTLE_VALVE, Kind.SEQUENCE_VALVE)),
            Map.entry("ACC", EnumSet.of(Kind.ACCUMULATOR)),
            Map.entry("FLT", EnumSet.of(Kind.FILTER, Kind.STRAINER)),
            Map.entry("F", EnumSet.of(Kind.FILTER, Kind.STRAINER)),
            Map.entry("HX", EnumSet.of(Kind.COOLER, Kind.HEATER)),
            Map.entry("OR", EnumSet.of(Kind.ORIFICE)));

    private TagHint() {}

    /** 1 where the letters name the kind's group, -1 where they name another, 0 where they say nothing. */
    static int agrees(String tag, Kind kind) {
        Matcher m = LETTERS.matcher(tag == null ? "" : tag.toUpperCase(Locale.ROOT));
        Set<Kind> said = m.matches() ? SAID.get(m.group(1)) : null;
        return said == null ? 0 : said.contains(kind) ? 1 : -1;
    }

    static String letters(String tag) {
        Matcher m = LETTERS.matcher(tag.toUpperCase(Locale.ROOT));
        return m.matches() ? m.group(1) : "";
    }
}
