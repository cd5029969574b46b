package linewalk.renderer.iso;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import linewalk.drawing.Component;
import linewalk.drawing.Kind;

/** The symbols of all kinds of parts, after the rules of ISO 1219-1. */
public final class Symbols {

    private static final Map<Kind, Family> FAMILIES = families();

    private Symbols() {}

    /**
     * The symbol of a part with the ports that a picture shows. Any part has one: ports that its symbol has no places for
     * put the symbol into a frame that they meet.
     */
    public static Symbol of(Component part, List<PortUse> ports, Standing standing) {
        Plan plan = FAMILIES.get(part.kind()).plan(new Drafting(part, ports, standing));
        boolean fits = new LetterSides(plan.docks()).fit();
        return new Mounted(fits ? plan : Housing.widened(plan), standing.changed());
    }

    private static Map<Kind, Family> families() {
        Map<Kind, Family> of = new EnumMap<>(Kind.class);
        of.put(Kind.PUMP, Machines::pump);
        of.put(Kind.MOTOR, Machines::motor);
        of.put(Kind.ELECTRIC_MOTOR, Machines::electricMotor);
        of.put(Kind.CYLINDER, Actuators::cylinder);
        of.put(Kind.ROTARY_ACTUATOR, Actuators::rotary);
        of.put(Kind.BRAKE, Actuators::brake);
        of.put(Kind.TANK, Ends::tank);
        of.put(Kind.RELIEF_VALVE, PressureValves::relief);
        of.put(Kind.REDUCING_VALVE, PressureValves::reducing);
        of.put(Kind.SEQUENCE_VALVE, PressureValves::sequence);
        of.put(Kind.UNLOADING_VALVE, PressureValves::unloading);
        of.put(Kind.COUNTERBALANCE_VALVE, Counterbalance::plan);
        of.put(Kind.CHECK_VALVE, CheckSymbols::check);
        of.put(Kind.PILOT_CHECK_VALVE, CheckSymbols::pilotCheck);
        of.put(Kind.DIRECTIONAL_VALVE, Spool::plan);
        of.put(Kind.PROPORTIONAL_VALVE, Spool::plan);
        of.put(Kind.SHUTTLE_VALVE, LogicValves::shuttle);
        of.put(Kind.PREFILL_VALVE, CheckSymbols::prefill);
        of.put(Kind.DECOMPRESSION_VALVE, CheckSymbols::decompression);
        of.put(Kind.CARTRIDGE_VALVE, LogicValves::cartridge);
        of.put(Kind.FLOW_CONTROL, Restrictors::flowControl);
        of.put(Kind.ORIFICE, Restrictors::orifice);
        of.put(Kind.FLOW_DIVIDER, Restrictors::divider);
        of.put(Kind.SHUT_OFF_VALVE, Restrictors::shutOff);
        of.put(Kind.FILTER, Conditioners::filter);
        of.put(Kind.STRAINER, Conditioners::strainer);
        of.put(Kind.COOLER, Conditioners::cooler);
        of.put(Kind.HEATER, Conditioners::heater);
        of.put(Kind.ACCUMULATOR, Ends::accumulator);
        of.put(Kind.INTENSIFIER, Intensifier::plan);
        of.put(Kind.GAUGE, Ends::gauge);
        of.put(Kind.TEST_POINT, Ends::testPoint);
        of.put(Kind.SWITCH, Ends::pressureSwitch);
        of.put(Kind.HOSE, Unions::hose);
        of.put(Kind.SWIVEL, Unions::swivel);
        of.put(Kind.PLUG, Ends::plug);
        of.put(Kind.UNKNOWN, d -> Housing.box(new Body(3, 3, p -> p.text("?", 1.5, 1.5), true), d));
        return of;
    }
}
