package linewalk.renderer.iso;

import java.util.LinkedHashMap;
import java.util.Map;
import linewalk.drawing.Kind;

/** Parts as they come in practice, each with what it shows. */
final class SymbolSamples {

    private static final String FOUR = "P_ T_ A^ B^";

    private final Map<String, Sketch> all = new LinkedHashMap<>();

    private SymbolSamples() {
        machines();
        checks();
        pressure();
        restrictors();
        conditioners();
        ends();
        logic();
        directional();
        manyPositions();
        proportional();
    }

    static Map<String, Sketch> all() {
        return new SymbolSamples().all;
    }

    private Sketch add(String title, Kind kind, String ports) {
        Sketch s = new Sketch(kind, ports);
        all.put(title, s);
        return s;
    }

    private void machines() {
        add("pump", Kind.PUMP, "1_ 2^");
        add("pump, letters, drain", Kind.PUMP, "S_ P^ L_d");
        add("variable pump", Kind.PUMP, "S_ P^ L_d").setting("variable 0-71 cm3");
        add("motor", Kind.MOTOR, "A_ B_");
        add("motor with drain", Kind.MOTOR, "A_ B_ L_d");
        add("electric motor", Kind.ELECTRIC_MOTOR, "");
        add("cylinder", Kind.CYLINDER, "A_ B_").drawnAt(5, 50, 55, 50);
        add("cylinder, rod untold", Kind.CYLINDER, "A_ B_").drawnAt(5, 50, 95, 50);
        add("cylinder, two cap ports", Kind.CYLINDER, "A_ C_ B_").drawnAt(5, 50, 8, 50, 55, 50);
        add("rotary actuator", Kind.ROTARY_ACTUATOR, "A_ B_");
        add("brake", Kind.BRAKE, "1_");
        add("tank", Kind.TANK, "1^ 2^ 3^");
    }

    private void checks() {
        add("check, free up", Kind.CHECK_VALVE, "1_ 2^").position("rest: 1>2");
        add("check, free down", Kind.CHECK_VALVE, "A_ B^").position("rest: B>A");
        add("check, untold", Kind.CHECK_VALVE, "1_ 2^");
        add("pilot check, free up", Kind.PILOT_CHECK_VALVE, "A_ B^ X_p")
                .position("rest spring: A>B")
                .position("pilot pilot: A-B");
        add("pilot check, free down", Kind.PILOT_CHECK_VALVE, "1_ 2^ 3_p 4_d").position("rest: 2>1");
        add("pilot check, untold", Kind.PILOT_CHECK_VALVE, "1_ 2^");
        add("prefill valve", Kind.PREFILL_VALVE, "A_ B^ X_p").position("rest: A>B");
        add("decompression valve", Kind.DECOMPRESSION_VALVE, "A_ B^ X_p").position("rest: B>A");
    }

    private void pressure() {
        add("relief, up", Kind.RELIEF_VALVE, "1_ 2^").position("rest: 1>2!pressure");
        add("relief, down", Kind.RELIEF_VALVE, "P^ T_").position("rest: P>T!pressure");
        add("relief, remote", Kind.RELIEF_VALVE, "P_ T_ X_p");
        add("relief, untold", Kind.RELIEF_VALVE, "1_ 2_");
        add("reducing", Kind.REDUCING_VALVE, "P_ A^ L_d").position("rest: P-A");
        add("reducing, to tank", Kind.REDUCING_VALVE, "P_ A^ T_").position("rest: P-A");
        add("reducing, untold", Kind.REDUCING_VALVE, "1_ 2^");
        add("sequence", Kind.SEQUENCE_VALVE, "P_ A^ Y_d").position("rest: P>A!pressure");
        add("unloading", Kind.UNLOADING_VALVE, "P^ T_ X_p").position("rest: P>T!pilot");
        add("counterbalance", Kind.COUNTERBALANCE_VALVE, "1_ 2^ X_p")
                .position("rest: 1>2 2>1!pressure")
                .position("pilot pilot: 2-1");
        add("counterbalance, down", Kind.COUNTERBALANCE_VALVE, "1_ 2^").position("rest: 2>1 1>2!pressure");
        add("counterbalance, untold", Kind.COUNTERBALANCE_VALVE, "1_ 2^");
    }

    private void restrictors() {
        add("throttle", Kind.FLOW_CONTROL, "1_ 2^").position("rest: 1~2");
        add("throttle check", Kind.FLOW_CONTROL, "A_ B^").position("rest: A>B A~B");
        add("throttle check, down", Kind.FLOW_CONTROL, "A_ B^").position("rest: B>A A~B");
        add("flow control, untold", Kind.FLOW_CONTROL, "1_ 2^");
        add("orifice", Kind.ORIFICE, "1_ 2^");
        add("flow divider", Kind.FLOW_DIVIDER, "P_ A^ B^").position("rest: P>A P>B");
        add("flow divider, untold", Kind.FLOW_DIVIDER, "1^ 2_ 3_");
        add("shut-off, open", Kind.SHUT_OFF_VALVE, "1_ 2^").position("rest: 1-2");
        add("shut-off, shut", Kind.SHUT_OFF_VALVE, "1_ 2^").setting("normally closed");
    }

    private void conditioners() {
        add("filter", Kind.FILTER, "1_ 2^");
        add("filter, letters", Kind.FILTER, "A_ B^");
        add("strainer", Kind.STRAINER, "1_ 2^");
        add("cooler", Kind.COOLER, "1_ 2^");
        add("heater", Kind.HEATER, "1_ 2^");
        add("hose", Kind.HOSE, "1_ 2^");
        add("swivel", Kind.SWIVEL, "1_ 2^");
        add("swivel, two ways", Kind.SWIVEL, "1_ 2^ 3_ 4^").position("rest: 1-2 3-4");
    }

    private void ends() {
        add("accumulator", Kind.ACCUMULATOR, "1_");
        add("gauge", Kind.GAUGE, "1_");
        add("test point", Kind.TEST_POINT, "M_");
        add("switch", Kind.SWITCH, "1_");
        add("plug", Kind.PLUG, "1_");
        add("unknown", Kind.UNKNOWN, "1_ A^ 3^");
    }

    private void logic() {
        add("shuttle", Kind.SHUTTLE_VALVE, "1_ 2_ 3^").position("rest: 1>3 2>3");
        add("shuttle, out below", Kind.SHUTTLE_VALVE, "A^ B^ C_").position("rest: A>C B>C");
        add("shuttle, untold", Kind.SHUTTLE_VALVE, "1_ 2_ 3^");
        add("cartridge", Kind.CARTRIDGE_VALVE, "A_ B^ X_p");
        add("cartridge, A above", Kind.CARTRIDGE_VALVE, "A^ B_ X_p");
        add("cartridge, untold", Kind.CARTRIDGE_VALVE, "1_ 2^");
        add("intensifier", Kind.INTENSIFIER, "1_ 2^ L_d").position("rest: 1>2");
        add("intensifier, untold", Kind.INTENSIFIER, "1_ 2^");
    }

    private Sketch fourThree(String title, String centre) {
        return add(title, Kind.DIRECTIONAL_VALVE, FOUR)
                .position("Y1A solenoid: P-A B-T")
                .position("rest spring: " + centre)
                .position("Y1B solenoid: P-B A-T");
    }

    private void directional() {
        fourThree("4/3, at rest", "");
        fourThree("4/3, Y1A on", "P-T").active(0).on("Y1A").changed();
        fourThree("4/3, Y1B on", "P-T A-T B-T").active(2).on("Y1B");
        fourThree("4/3, float", "A-T B-T");
        fourThree("4/3, throttled float", "A~T B~T");
        add("4/2, rest listed first", Kind.DIRECTIONAL_VALVE, FOUR)
                .position("rest spring: P-A B-T")
                .position("Y2 solenoid: P-B A-T");
        add("4/2, two solenoids, held", Kind.DIRECTIONAL_VALVE, FOUR)
                .position("Y3A solenoid: P-A B-T")
                .position("rest detent: P-B A-T")
                .position("Y3B solenoid: P-B A-T")
                .active(0)
                .on("Y3A");
        add("3/2", Kind.DIRECTIONAL_VALVE, "P_ T_ A^")
                .position("Y4 solenoid: P-A")
                .position("rest spring: A-T");
        add("2/2 seat", Kind.DIRECTIONAL_VALVE, "P_ A^")
                .position("Y5 solenoid: P-A")
                .position("rest spring: P>A");
        add("5/2, pilots", Kind.DIRECTIONAL_VALVE, "T1_ P_ T2_ A^ B^ X_p Y_p")
                .position("X pilot: P-A B-T2")
                .position("Z1 pilot: P-B A-T1");
        add("4/3 with pilot lines", Kind.DIRECTIONAL_VALVE, FOUR + " X_p Y_d")
                .position("rest spring: ")
                .position("Y12A solenoid: P-A B-T")
                .position("Y12B solenoid: P-B A-T")
                .active(1)
                .on("Y12A");
        add("lever, detent", Kind.DIRECTIONAL_VALVE, "1_ 2_ 3^ 4^")
                .position("lever lever: 1-3 4-2")
                .position("rest detent: ")
                .position("H2 lever: 1-4 3-2");
        add("unknown, on its side", Kind.DIRECTIONAL_VALVE, "1_ 2_");
        add("any of two solenoids", Kind.DIRECTIONAL_VALVE, "P_ A^")
                .position("Y6/Y7 solenoid: P-A")
                .position("rest spring: ")
                .active(0)
                .on("Y7");
    }

    private void manyPositions() {
        add("lever, four positions", Kind.DIRECTIONAL_VALVE, FOUR)
                .position("lever lever: P-A B-T")
                .position("rest detent: ")
                .position("lever lever: P-B A-T")
                .position("FLOAT lever: A-T B-T")
                .active(3);
        add("4/3, one square not moved by name", Kind.DIRECTIONAL_VALVE, FOUR)
                .position("Y31: P-A B-T")
                .position("rest: ")
                .position("Y32: P-B A-T");
        add("2/2 with gauge port and drain below", Kind.DIRECTIONAL_VALVE, "P_ A^ M^ L_d X_p Y_d")
                .position("Y33 solenoid: P>A")
                .position("rest spring: ");
        add("pilot operated, both sides", Kind.DIRECTIONAL_VALVE, "1_ 2_ 3^ 4^ 5_p 6_p")
                .position("pilot pilot: 1-3 2-4")
                .position("rest spring: 3-2 4-2")
                .position("pilot pilot: 1-4 2-3");
        add("loop above", Kind.DIRECTIONAL_VALVE, FOUR)
                .position("Y34A solenoid: A-B P-T")
                .position("rest spring: A~B");
        add("4/3, told with arrows", Kind.DIRECTIONAL_VALVE, FOUR)
                .position("Y36A solenoid: P>A B>T")
                .position("rest spring: P>T A>T B>T")
                .position("Y36B solenoid: P>B A>T");
        add("2/2, both below", Kind.DIRECTIONAL_VALVE, "P_ T_")
                .position("Y37 solenoid: ")
                .position("rest spring: P>T");
        add("diverter", Kind.DIRECTIONAL_VALVE, "P_ A^ B^")
                .position("Y35 solenoid: P-A")
                .position("rest spring: P-B");
    }

    private void proportional() {
        add("proportional 4/3", Kind.PROPORTIONAL_VALVE, FOUR)
                .position("Y8A solenoid: P~A B~T")
                .position("rest spring: ")
                .position("Y8B solenoid: P~B A~T");
        add("proportional, on", Kind.PROPORTIONAL_VALVE, FOUR)
                .position("Y8A solenoid: P~A B~T")
                .position("rest spring: ")
                .position("Y8B solenoid: P~B A~T")
                .active(2)
                .on("Y8B")
                .changed();
        add("proportional, unknown", Kind.PROPORTIONAL_VALVE, FOUR);
    }
}
