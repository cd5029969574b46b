package linewalk.drawing;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import java.util.Locale;
import java.util.Optional;

/** What a component is. */
public enum Kind {
    PUMP,
    MOTOR,
    ELECTRIC_MOTOR,
    CYLINDER,
    ROTARY_ACTUATOR,
    BRAKE,
    TANK,
    RELIEF_VALVE,
    REDUCING_VALVE,
    SEQUENCE_VALVE,
    UNLOADING_VALVE,
    COUNTERBALANCE_VALVE,
    CHECK_VALVE,
    PILOT_CHECK_VALVE,
    DIRECTIONAL_VALVE,
    PROPORTIONAL_VALVE,
    SHUTTLE_VALVE,
    PREFILL_VALVE,
    DECOMPRESSION_VALVE,
    CARTRIDGE_VALVE,
    FLOW_CONTROL,
    ORIFICE,
    FLOW_DIVIDER,
    SHUT_OFF_VALVE,
    FILTER,
    STRAINER,
    COOLER,
    HEATER,
    ACCUMULATOR,
    INTENSIFIER,
    GAUGE,
    TEST_POINT,
    SWITCH,
    HOSE,
    SWIVEL,
    PLUG,
    UNKNOWN;

    public static Optional<Kind> find(String word) {
        String plain = word.strip().toUpperCase(Locale.ROOT).replace('-', '_').replace(' ', '_');
        for (Kind k : values()) {
            if (k.name().equals(plain)) {
                return Optional.of(k);
            }
        }
        return Optional.empty();
    }

    @JsonCreator
    static Kind fromJson(String word) {
        return find(word).orElse(UNKNOWN);
    }

    /** The word used in files, such as {@code check-valve}. */
    @JsonValue
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Moves something: its working ports are joined by the oil that goes in and the other oil that comes out. */
    public boolean isActuator() {
        return this == CYLINDER || this == MOTOR || this == ROTARY_ACTUATOR;
    }
}
